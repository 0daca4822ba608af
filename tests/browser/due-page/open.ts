import { createRequire } from "node:module";
import { join } from "node:path";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import webpack, { type Configuration } from "webpack";
import type { DueBook } from "./entry";
import { serve, type TrialServer } from "../../../src/entries/trial-build/server";

declare global {
  interface Window {
    due: DueBook;
  }
}

/** The days in which the invented herds live. */
const SAMPLE_TODAY = new Date("2026-09-01T07:00:00");
const LARGE_TODAY = new Date("2024-03-20T07:00:00");
const ROOT = join(__dirname, "../../..");
const BUILT = join(ROOT, ".cache/due-page");

/** The pane alone on its page, built as it ships, under the policy that the trial's server sends. */
export class DuePage {
  private constructor(
    private readonly server: TrialServer,
    private readonly browser: Browser,
  ) {}

  static async start(): Promise<DuePage> {
    await build();
    const mounts = [
      { path: "/sample-workbooks/", folder: join(ROOT, "sample-workbooks") },
      { path: "/", folder: __dirname },
      { path: "/", folder: BUILT },
    ];
    const browser = await chromium.connect(process.env["BROWSER_ENDPOINT"]!);
    return new DuePage(await serve(mounts, 0), browser);
  }

  /** A page of a new user, with what it complained about. On the sample the Due screen is opened. */
  async open(query = "", options: BrowserContextOptions = {}): Promise<{ page: Page; errors: string[] }> {
    const context = await this.browser.newContext({ viewport: { width: 350, height: 800 }, ...options });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on("pageerror", ({ message }) => errors.push(message));
    page.on("console", (message) => {
      if (message.type() === "error") errors.push(message.text());
    });
    await page.clock.setFixedTime(query === "?large" ? LARGE_TODAY : SAMPLE_TODAY);
    await page.goto(`${this.server.address}index.html${query}`);
    await page.getByRole("tab", { name: "Due" }).waitFor();
    if (query === "") {
      await page.getByRole("tab", { name: "Due" }).click();
      await page.locator(".due-summary").waitFor();
    }
    return { page, errors };
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.server.close();
  }
}

async function build(): Promise<void> {
  const configurations = createRequire(__filename)(join(ROOT, "webpack.config.js")) as Configuration[];
  const trial = configurations.find(({ name }) => name === "trial")!;
  const compiler = webpack({
    ...trial,
    name: "due-page",
    mode: "production",
    entry: { "due-page": join(__dirname, "entry.ts") },
    output: { path: BUILT, filename: "[name].js", publicPath: "auto" },
    cache: false,
    module: { rules: trial.module!.rules!.map((rule) => withoutFolder(rule)) },
  })!;
  await new Promise<void>((resolve, reject) => {
    compiler.run((error, stats) => {
      if (error) reject(error);
      else if (stats?.hasErrors() === true) reject(new Error(stats.toString({ preset: "errors-only" })));
      else resolve();
    });
  });
  await new Promise<void>((resolve) => compiler.close(() => resolve()));
}

/** The rules of the project for TypeScript, on the test's own files too. */
function withoutFolder(rule: unknown): object {
  return { ...(rule as object), include: undefined };
}
