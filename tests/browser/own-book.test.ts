import type { Page } from "playwright-core";
import type { BookPort } from "../../src/workbook/book-port";
import { TestPage } from "./test-page";

declare global {
  interface Window {
    farmBook: BookPort;
  }
}

/** The build may take long on a small machine. */
const SLOW = 600_000;
const SHOTS = process.env["SHOTS"];

let pages: TestPage;
beforeAll(async () => {
  pages = await TestPage.start({ name: "own-book-page", today: new Date("2026-09-01T07:00:00") });
}, SLOW);
afterAll(() => pages.close());

async function shot(page: Page, name: string): Promise<void> {
  if (SHOTS !== undefined) await page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
}

const done = (page: Page) => page.getByRole("heading", { name: "Done" }).waitFor();

test(
  "the secretary maps her own book, records a finding in it, finds its recheck under Due, and takes it back",
  async () => {
    const { page, errors } = await pages.open();
    await shot(page, "1-record-unmapped");
    await page.getByRole("tab", { name: "Set up" }).click();
    await page.getByText("8 columns read").waitFor();
    await page.getByRole("button", { name: "Keep this" }).click();
    await done(page);
    await page
      .getByRole("button", { name: /Your words/ })
      .first()
      .click();
    await page.getByRole("button", { name: /^Keep \d+ words/ }).click();
    await done(page);
    await shot(page, "2-set-up");

    await page.getByRole("tab", { name: "Record" }).click();
    await page.getByLabel(/^Cow/).first().click();
    await page.keyboard.type("369");
    await page.keyboard.press("Enter");
    await page.keyboard.type("0lho");
    await page.keyboard.press("Enter");
    await page.keyboard.type("dd");
    await page.keyboard.press("Enter");
    await shot(page, "3-record");
    // The lists named a moment ago are being read; until then nothing can be saved, and the screen says so.
    await page.getByText("Tables missing").waitFor({ state: "hidden" });
    await page.getByRole("button", { name: /^Save/ }).first().click();
    await page.getByRole("heading", { name: "Saved. Cow 369, 1 finding" }).waitFor();
    await shot(page, "4-saved");
    const last = await page.evaluate(async () => (await window.farmBook.readSheet("Feet 2026")).rows.at(-1));
    expect(last!.slice(0, 5)).toEqual(["01/09/2026", 369, "left back", "outside", "DD"]);

    await page.getByRole("tab", { name: "Due" }).click();
    await page.getByText("first recheck LH outer DD").locator("visible=true").last().waitFor();
    await shot(page, "5-due");

    await page.getByRole("tab", { name: "Record" }).click();
    await page.getByRole("button", { name: "Take it back" }).click();
    await page.getByRole("heading", { name: "Saved. Cow 369, 1 finding" }).waitFor({ state: "hidden" });
    const before = await page.evaluate(async () => (await window.farmBook.readSheet("Feet 2026")).rows.at(-1));
    expect(before!.filter((cell) => cell !== null).slice(0, 2)).not.toEqual(["01/09/2026", 369]);
    expect(errors).toEqual([]);
  },
  SLOW,
);
