import type { BrowserContextOptions } from "playwright-core";
import { type OpenedPage, TestPage } from "../test-page";
import type { DueBook } from "./entry";

declare global {
  interface Window {
    due: DueBook;
  }
}

/** The days in which the invented herds live. */
const SAMPLE_TODAY = new Date("2026-09-01T07:00:00");
const LARGE_TODAY = new Date("2024-03-20T07:00:00");

/** The pane alone on its page, on the sample or, with "?large", on a large herd. */
export class DuePage {
  private constructor(private readonly host: TestPage) {}

  static async start(): Promise<DuePage> {
    return new DuePage(await TestPage.start({ name: "due-page", today: SAMPLE_TODAY }));
  }

  /** A page of a new user. On the sample the Due screen is opened. */
  async open(query = "", options: BrowserContextOptions = {}): Promise<OpenedPage> {
    const opened = await this.host.open(query, options, query === "?large" ? LARGE_TODAY : SAMPLE_TODAY);
    const { page } = opened;
    await page.getByRole("tab", { name: "Due" }).waitFor();
    if (query === "") {
      await page.getByRole("tab", { name: "Due" }).click();
      await page.locator(".due-summary").waitFor();
    }
    return opened;
  }

  close(): Promise<void> {
    return this.host.close();
  }
}
