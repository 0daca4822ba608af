import type { BrowserContextOptions } from "playwright-core";
import { type OpenedPage, TestPage } from "../test-page";

/** The pane alone on its page, on an invented herd that lives in March 2026. */
export class RecordPage {
  private constructor(private readonly host: TestPage) {}

  static async start(): Promise<RecordPage> {
    return new RecordPage(await TestPage.start({ name: "record-page", today: new Date("2026-03-10T09:00:00") }));
  }

  /** A page of a new user, once Record can be used. */
  async open(query = "", options: BrowserContextOptions = {}): Promise<OpenedPage> {
    const opened = await this.host.open(query, options);
    await opened.page.getByText("Number or name, then Enter").waitFor();
    return opened;
  }

  close(): Promise<void> {
    return this.host.close();
  }
}
