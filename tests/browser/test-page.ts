import { join } from "node:path";
import { type Browser, type BrowserContext, type BrowserContextOptions, type Page } from "playwright-core";
import "./test-worker";
import { serve, type TrialServer } from "../../src/entries/trial-build/server";

const ROOT = join(__dirname, "../..");
const BUILT = join(ROOT, ".cache/pages");

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

/** A page of a test's own, as it was built before the tests began, under the policy that the trial's server sends. */
export class TestPage {
  private readonly contexts: BrowserContext[] = [];

  private constructor(
    private readonly server: TrialServer,
    private readonly browser: Browser,
    private readonly today: Date,
  ) {}

  static async start({ name, today }: TestPageOptions): Promise<TestPage> {
    const mounts = [
      { path: "/sample-workbooks/", folder: join(ROOT, "sample-workbooks") },
      { path: "/chunks/", folder: join(BUILT, "chunks") },
      { path: "/", folder: join(__dirname, "page") },
      { path: "/", folder: join(BUILT, name) },
    ];
    const browser = await testWorker.browser();
    return new TestPage(await serve(mounts, 0), browser, today);
  }

  /** The page as a new user opens it, with what it complained about. */
  async open(query = "", options: BrowserContextOptions = {}, today = this.today): Promise<OpenedPage> {
    const context = await this.browser.newContext({ viewport: { width: 350, height: 800 }, ...options });
    this.contexts.push(context);
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
    for (const context of this.contexts) await context.close();
    await this.server.close();
  }
}
