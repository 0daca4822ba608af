import { createRequire } from "node:module";
import { join } from "node:path";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import webpack, { type Configuration } from "webpack";
import { serve, type TrialServer } from "../../src/entries/trial-build/server";

const ROOT = join(__dirname, "../..");

export interface TestPageOptions {
  /** Folder beside this file with the page's entry.tsx or entry.ts; also the name of its build. */
  readonly name: string;
  /** The day that the page's clock stands at. */
  readonly today: Date;
}

/** A page with what it complained about. */
export interface OpenedPage {
  readonly page: Page;
  readonly errors: string[];
}

/**
 * A page of a test's own, built as the pane ships but for the shortening of its scripts, under the policy that the
 * trial's server sends.
 */
export class TestPage {
  private constructor(
    private readonly server: TrialServer,
    private readonly browser: Browser,
    private readonly today: Date,
  ) {}

  static async start({ name, today }: TestPageOptions): Promise<TestPage> {
    const built = join(ROOT, ".cache", name);
    await build(name, built);
    const mounts = [
      { path: "/sample-workbooks/", folder: join(ROOT, "sample-workbooks") },
      { path: "/", folder: join(__dirname, "page") },
      { path: "/", folder: built },
    ];
    const browser = await chromium.connect(process.env["BROWSER_ENDPOINT"]!);
    return new TestPage(await serve(mounts, 0), browser, today);
  }

  /** The page as a new user opens it, with what it complained about. */
  async open(query = "", options: BrowserContextOptions = {}, today = this.today): Promise<OpenedPage> {
    const context = await this.browser.newContext({ viewport: { width: 350, height: 800 }, ...options });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on("pageerror", ({ message }) => errors.push(message));
    page.on("console", (message) => {
      if (message.type() === "error") errors.push(message.text());
    });
    await page.clock.setFixedTime(today);
    await page.goto(`${this.server.address}index.html${query}`);
    return { page, errors };
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.server.close();
  }
}

async function build(name: string, path: string): Promise<void> {
  const configurations = createRequire(__filename)(join(ROOT, "webpack.config.js")) as Configuration[];
  const trial = configurations.find((configuration) => configuration.name === "trial")!;
  const compiler = webpack({
    ...trial,
    name,
    mode: "production",
    entry: { page: join(__dirname, name, "entry") },
    output: { path, filename: "[name].js", publicPath: "auto" },
    cache: false,
    // A script of this size takes seconds to shorten, and runs no otherwise.
    optimization: { ...trial.optimization, minimize: false },
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
