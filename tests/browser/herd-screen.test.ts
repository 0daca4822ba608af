import { TestPage } from "./test-page";
import type { HerdPage } from "./herd-page/entry";

declare global {
  interface Window {
    herd: HerdPage;
  }
}

/** The build may take long on a small machine. */
const SLOW = 180_000;
const SHOTS = process.env["SHOTS"];

let pages: TestPage;
beforeAll(async () => {
  pages = await TestPage.start({ name: "herd-page", today: new Date("2026-09-01T07:00:00") });
}, SLOW);
afterAll(() => pages.close());

test(
  "sample",
  async () => {
    const { page, errors } = await pages.open();
    await page.waitForFunction(() => "herd" in window);
    await page.evaluate(() => window.herd.open());
    await page.locator(".herd[aria-busy=false] section").first().waitFor();
    if (SHOTS !== undefined) await page.screenshot({ path: `${SHOTS}/herd-light.png`, fullPage: true });
    expect(errors).toEqual([]);
  },
  SLOW,
);
