import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import type { SetUpBook } from "./set-up-page/entry";
import { TestPage } from "./test-page";
import { axeFindings, overhang, smallTargets } from "./well-made";

declare global {
  interface Window {
    setUp: SetUpBook;
  }
}

/** The build may take long on a small machine. */
const SLOW = 300_000;
const OLD_BOOK = readFileSync(join(__dirname, "../../sample-workbooks/own-headings.xlsx"));
const SHOTS = process.env["SHOTS"];

let pages: TestPage;
beforeAll(async () => {
  pages = await TestPage.start({ name: "set-up-page", today: new Date("2026-09-01T07:00:00") });
}, SLOW);
afterAll(() => pages.close());

async function shot(page: Page, name: string): Promise<void> {
  if (SHOTS !== undefined) await page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
}

const part = (page: Page, name: string) => page.getByRole("button", { name: new RegExp(`^${name}`) });
const done = (page: Page) => page.getByRole("heading", { name: "Done" }).waitFor();

describe.each([
  ["light", 350],
  ["dark", 350],
  ["light", 320],
  // 350 pixels at a zoom of 200 %.
  ["light", 175],
] as const)("in %s at %d px", (colorScheme, width) => {
  test(
    "axe finds nothing, targets are large enough and nothing runs out at the side, in every part",
    async () => {
      const { page, errors } = await pages.open("", { colorScheme, viewport: { width, height: 900 }, bypassCSP: true });
      const look = async (name: string): Promise<void> => {
        await shot(page, `${name}-${colorScheme}-${width}`);
        expect([name, await axeFindings(page)]).toEqual([name, []]);
        expect([name, await smallTargets(page, ".set-up")]).toEqual([name, []]);
        expect([name, await overhang(page)]).toEqual([name, 0]);
      };
      await page.getByText("8 columns read").waitFor();
      await look("lists");
      await page.getByText("13 columns read").click();
      await look("columns");
      await page.getByRole("button", { name: "Keep this" }).click();
      await done(page);
      await look("kept");
      await part(page, "Your words").click();
      await look("words");
      await page.getByRole("button", { name: /^Keep \d+ words/ }).click();
      await done(page);
      await part(page, "Check the workbook").click();
      await page.getByRole("button", { name: "Check now" }).click();
      await page.locator(".set-up-summary").waitFor();
      await look("check");
      await page.getByRole("button", { name: /^Values in another unit/ }).click();
      await page.getByRole("button", { name: /^Repair all/ }).click();
      await look("repair");
      await part(page, "Formulas").click();
      await page.getByText("No formula shows").waitFor();
      await look("formulas");
      await part(page, "Copy from an old book").click();
      await look("copy");
      await page.locator("input[type=file]").setInputFiles({ name: "old.xlsx", mimeType: "", buffer: OLD_BOOK });
      await page.getByRole("button", { name: "Show what would come over" }).click();
      await page.getByRole("columnheader", { name: "Stay behind" }).waitFor();
      await page.getByText("Rows that stay behind, and why").click();
      await look("copy-preview");
      await part(page, "Blocks and templates").click();
      await page
        .getByRole("button", { name: /^Put in the sheet/ })
        .first()
        .waitFor();
      await look("blocks");
      expect(errors).toEqual([]);
      await page.context().close();
    },
    SLOW,
  );
});

test(
  "by keyboard alone: lists kept, a count repaired and taken back; the keyboard is never lost",
  async () => {
    const { page, errors } = await pages.open();
    await page.getByText("8 columns read").waitFor();
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? "");
    const tabTo = async (text: RegExp): Promise<void> => {
      for (let press = 0; press < 200; press++) {
        await page.keyboard.press("Tab");
        if (text.test(await focused())) return;
      }
      throw new Error(`the keyboard does not come to ${String(text)}`);
    };
    await tabTo(/^Keep this$/);
    await page.keyboard.press("Enter");
    await done(page);
    // The keyboard comes back when what was written has been read again.
    await page.waitForFunction(() => document.activeElement !== document.body);
    await tabTo(/Check the workbook/);
    await page.keyboard.press("Enter");
    await tabTo(/^Check now$/);
    await page.keyboard.press("Enter");
    await page.locator(".set-up-summary").waitFor();
    await tabTo(/^Values in another unit/);
    await page.keyboard.press("Space");
    await tabTo(/^Write 240000$/);
    await page.keyboard.press("Enter");
    await done(page);
    await page
      .getByRole("button", { name: /^Check again/ })
      .and(page.locator(":enabled"))
      .waitFor();
    // And so does it here; a keyboard that is lost never comes back.
    await page.waitForFunction(() => document.activeElement !== document.body);
    await page.getByText("Done here (2)").waitFor();
    await page.getByText("Done here (2)").focus();
    await page.keyboard.press("Enter");
    await tabTo(/^Take back$/);
    await page.keyboard.press("Enter");
    await page
      .getByText(/^Taken back/)
      .last()
      .waitFor();
    await page.getByText("Done here (1)").waitFor();
    expect(errors).toEqual([]);
    await page.context().close();
  },
  SLOW,
);

test(
  "Go to cell selects it in the workbook",
  async () => {
    const { page } = await pages.open();
    await part(page, "Check the workbook").click();
    await page.getByRole("button", { name: "Check now" }).click();
    await page
      .getByRole("button", { name: /^Counts of zero|zero/i })
      .first()
      .click();
    await page
      .getByRole("button", { name: /^Go to cell/ })
      .first()
      .click();
    await page.waitForFunction(() => window.setUp.shown() !== undefined);
    expect(await page.evaluate(() => window.setUp.shown())).toMatchObject({ sheet: "Milk recording" });
    await page.context().close();
  },
  SLOW,
);

test(
  "thousands of doubts: forty of a kind are drawn, more when asked for",
  async () => {
    const { page, errors } = await pages.open("?book=many");
    await part(page, "Check the workbook").click();
    await page.getByRole("button", { name: "Check now" }).click();
    await page.locator(".set-up-summary").waitFor();
    await shot(page, "many");
    await page
      .getByRole("button", { name: /^Counts? of zero|zero/i })
      .first()
      .click();
    expect(await page.locator(".set-up-lines > li").count()).toBe(40);
    await page.getByRole("button", { name: "Show more: 2,960 are left" }).click();
    expect(await page.locator(".set-up-lines > li").count()).toBe(80);
    await page.getByRole("button", { name: /^Repair all 3,000/ }).click();
    await page.getByRole("button", { name: "Change 3,000 cells" }).waitFor();
    await page.getByRole("button", { name: "Leave them" }).click();
    expect(errors).toEqual([]);
    await page.context().close();
  },
  SLOW,
);

test.each([
  ["empty", "No cell of the workbook holds anything"],
  ["pictures", "No cell of the workbook holds anything"],
  ["fifty", "The workbook has 50 sheets"],
  ["merged", "lies over 2 columns"],
  ["two rows", "the headings stand in two rows"],
])(
  "a workbook that is %s gets a plain sentence",
  async (book, sentence) => {
    const { page, errors } = await pages.open(`?book=${encodeURIComponent(book)}`);
    await page.getByText(sentence).first().waitFor();
    await shot(page, `bad-${book}`);
    expect(errors).toEqual([]);
    await page.context().close();
  },
  SLOW,
);
