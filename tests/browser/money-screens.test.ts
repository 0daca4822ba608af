import type { Page } from "playwright-core";
import type { FiguresPage } from "./figures-page/entry";
import { type OpenedPage, TestPage } from "./test-page";
import { axeFindings, overhang, smallTargets } from "./well-made";

declare global {
  interface Window {
    figures: FiguresPage;
  }
}

/** The build may take long on a small machine. */
const SLOW = 180_000;
jest.setTimeout(SLOW);
/** The days in which the invented herds live. */
const SAMPLE_TODAY = new Date("2026-09-01T07:00:00");
const BOOKS_TODAY = new Date("2024-03-20T07:00:00");

let pages: TestPage;
beforeAll(async () => {
  pages = await TestPage.start({ name: "figures-page", today: SAMPLE_TODAY });
}, SLOW);
afterAll(() => pages.close());

type Screen = "cells" | "costs" | "report";
const SCREENS: readonly Screen[] = ["cells", "costs", "report"];

async function open(screen: Screen, book?: string, options: Parameters<TestPage["open"]>[1] = {}): Promise<OpenedPage> {
  const query = book === undefined ? "" : `?book=${encodeURIComponent(book)}`;
  const opened = await pages.open(query, options, book === undefined ? SAMPLE_TODAY : BOOKS_TODAY);
  await opened.page.waitForFunction(() => "figures" in window);
  await opened.page.evaluate((name) => window.figures.open(name), screen);
  return opened;
}

/** Waits until everything is computed. */
async function settled(page: Page, screen: Screen): Promise<void> {
  if (screen === "report") await page.locator(".report-things, .report .note").first().waitFor();
  else await page.locator(`.${screen}[aria-busy=false] :is(.fold, .note)`).first().waitFor();
}

async function openAll(page: Page): Promise<void> {
  for (;;) {
    const closed = page.locator(".fold button[aria-expanded=false]").first();
    if ((await closed.count()) === 0) return;
    await closed.click();
  }
}

describe.each(["light", "dark"] as const)("in %s", (colorScheme) => {
  test.each(SCREENS)("%s is open to all, at 350 and at 320 pixels and at twice the size of text", async (screen) => {
    const { page, errors } = await open(screen, undefined, { colorScheme, bypassCSP: true });
    await settled(page, screen);
    await openAll(page);
    for (const [width, size] of [
      [350, "100%"],
      [320, "100%"],
      [320, "200%"],
    ] as const) {
      await page.setViewportSize({ width, height: 800 });
      await page.evaluate((text) => (document.documentElement.style.fontSize = text), size);
      expect(await axeFindings(page)).toEqual([]);
      expect(await overhang(page)).toBe(0);
    }
    expect(await smallTargets(page, "main")).toEqual([]);
    expect(errors).toEqual([]);
    await page.context().close();
  });
});

describe("a book that lacks something gets what it can have, and a sentence about the rest", () => {
  test.each([
    ["no tables", "cells", "The workbook has no list of milk tests that Evenfoot knows."],
    ["empty", "cells", "The list of milk tests holds no test up to 2024-03-20."],
    ["one cow", "cells", "in 365 days."],
    ["no lactations", "cells", "A cow with a count has no lactation number"],
    ["mixed units", "cells", "looks like cells/mL"],
    ["capped", "cells", "in 365 days."],
    ["no price", "cells", "About 723 litres in 365 days."],
    ["no milk", "cells", "in 365 days."],
    ["no costs", "costs", "The workbook has no table Costs with a cost for a lesion"],
    ["two currencies", "costs", "The two are in different currencies: EUR for lesions, USD for milk."],
    ["no tables", "costs", "The workbook has no table Costs with a cost for a lesion"],
    ["empty", "report", "What stands out cannot be told: the workbook has no findings, no cows"],
    ["no tables", "report", "What stands out cannot be told: the workbook has no findings, no cows"],
  ] as const)("%s: %s", async (book, screen, sentence) => {
    const { page, errors } = await open(screen, book);
    await settled(page, screen);
    await page.getByText(sentence).first().waitFor();
    await openAll(page);
    expect(errors).toEqual([]);
    await page.context().close();
  });
});

test("the keyboard alone: the test is chosen, the price typed, a section opened, and the figures follow", async () => {
  const { page, errors } = await open("cells");
  await settled(page, "cells");
  const before = await page.locator(".cells-first").textContent();
  await page.keyboard.press("Tab");
  await page.keyboard.press("ArrowDown");
  await page.waitForFunction((old) => document.querySelector(".cells-first")?.textContent !== old, before);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.type("1");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("1");
  // At a price of 1 the money is the litres.
  await page.waitForFunction(() => {
    const [, money, litres] =
      /About ([\d,]+) USD: ([\d,]+) litres/.exec(document.querySelector(".cells-first")?.textContent ?? "") ?? [];
    return money !== undefined && money === litres;
  });
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  expect(await page.locator(".fold button").first().getAttribute("aria-expanded")).toBe("false");
  expect(errors).toEqual([]);
  await page.context().close();
});

test("what is typed wrong is said beside its field, which keeps the keyboard", async () => {
  const { page } = await open("cells");
  await settled(page, "cells");
  const field = page.getByLabel("Cows to list");
  await field.fill("0");
  await page.getByText('Cows to list must be a whole number from 1 to 1000; got "0".').waitFor();
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
  await field.fill("3");
  await page.getByText("3 cows (").waitFor();
  await page.context().close();
});

describe("the report on paper", () => {
  const SHORT = "Footbath looked at.\nHeifers go through it from next week.";
  /** As many letters as the field takes. */
  const LONG = "Looked at the stalls with the herdsman. ".repeat(25);

  test.each([
    ["A4", SHORT],
    ["Letter", SHORT],
    ["A4", LONG],
    ["Letter", LONG],
  ] as const)("fills two pages of %s at most", async (format, notes) => {
    const { page, errors } = await open("report");
    await settled(page, "report");
    await page.getByLabel("Heading of the report").fill("No-Such-Place Farm, invented data");
    await page.getByLabel("Your notes").fill(notes);
    await page.evaluate(() => (window.print = () => undefined));
    await page.getByRole("button", { name: "Print" }).click();
    await page.locator(".report-print").waitFor({ state: "attached" });
    await page.waitForFunction(() => document.querySelector(".report-print footer p")?.textContent?.includes("Wilson"));
    const pdf = await page.pdf({ format, ...(SHOTS === undefined ? {} : { path: `${SHOTS}/report-${format}.pdf` }) });
    const pageCount = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pageCount).toBeGreaterThan(0);
    expect(pageCount).toBeLessThanOrEqual(2);
    expect(errors).toEqual([]);
    await page.context().close();
  });

  test("is written onto a sheet of its own, and a second one beside it", async () => {
    const { page } = await open("report");
    await settled(page, "report");
    await page.getByRole("button", { name: "Write as a sheet" }).click();
    await page.getByText("The report stands on sheet Visit 2026-09-01.").first().waitFor();
    await page.getByRole("button", { name: "Write as a sheet" }).click();
    await page.getByText("The report stands on sheet Visit 2026-09-01 2.").first().waitFor();
    expect(await page.evaluate(() => window.figures.sheets())).toEqual(
      expect.arrayContaining(["Visit 2026-09-01", "Visit 2026-09-01 2"]),
    );
    await page.getByRole("button", { name: /^Take back the report on sheet/ }).click();
    await page
      .getByText("Taken back: the report on sheet Visit 2026-09-01 2 is out of the workbook.")
      .first()
      .waitFor();
    await page.context().close();
  });

  test("names other things when they are chosen, never more than three", async () => {
    const { page } = await open("report");
    await settled(page, "report");
    const boxes = page.locator(".report-thing input");
    expect(await page.locator(".report-thing input:checked").count()).toBe(3);
    await boxes.first().uncheck();
    await boxes.last().check();
    expect(await page.locator(".report-thing input:checked").count()).toBe(3);
    expect(await boxes.first().isDisabled()).toBe(true);
    await page.context().close();
  });

  test("days in the wrong order give no report, and a sentence", async () => {
    const { page } = await open("report");
    await settled(page, "report");
    await page.getByLabel("Visit before").fill("2026-09-01");
    await page.getByText("The visit before must be earlier than 2026-09-01; got 2026-09-01.").waitFor();
    await page.context().close();
  });
});

const SHOTS = process.env["SHOTS"];
