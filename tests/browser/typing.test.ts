import fc from "fast-check";
import type { Page } from "playwright-core";
import { readTable } from "./sample";
import { recomputed, select, selected, shown, typeInto, trialForAllTests } from "./trial-page";

const trial = trialForAllTests();

const formulaAt = (address: string): Promise<string> =>
  trial.page.evaluate(
    (at) => window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName("Start")!.getRange(at).getFormula(),
    address,
  );

/** Waits until the table of findings ends with a row. */
async function untilFindingsEnd(page: Page, row: number): Promise<void> {
  await page.waitForFunction(
    (lastRow) =>
      window
        .trialSession!.grid!.api.getActiveWorkbook()!
        .getSheetByName("Findings")!
        .getSubTableInfos()
        .some(({ name, range }) => name === "Findings" && range.endRow + 1 === lastRow),
    row,
  );
}

/** All but the last leave the table as it was; so they share one workbook. */
describe("under the table", () => {
  beforeAll(() => trial.startAnew());

  test("a table that grew is taken back with what was typed, in one step, and typing goes on", async () => {
    const { page } = trial;
    const before = await readTable(page, "Findings", "Findings");
    await typeInto(page, "Findings", `${before.columns["Date"]!}${before.lastRow + 1}`, "2026-09-01");
    expect((await readTable(page, "Findings", "Findings")).lastRow).toBe(before.lastRow + 1);
    await page.click("#undo");
    await untilFindingsEnd(page, before.lastRow);
    expect(await readTable(page, "Findings", "Findings")).toEqual(before);
    await select(page, "Findings", "A5");
    await page.keyboard.press("ArrowDown");
    expect(await selected(page)).toBe("A6");
  });

  test("rows pasted under the table are taken in as typed ones are, and taken back in one step", async () => {
    const { page } = trial;
    const before = await readTable(page, "Findings", "Findings");
    const headings = Object.keys(before.columns);
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await select(page, "Findings", `${before.columns["Date"]!}${before.lastRow + 1}`);
    await page.evaluate(() => navigator.clipboard.writeText("2026-08-30\t101\n2026-08-31\t102\n2026-09-01\t103"));
    await page.keyboard.press("ControlOrMeta+V");
    await page.waitForFunction(
      (lastRow) =>
        window
          .trialSession!.grid!.api.getActiveWorkbook()!
          .getSheetByName("Findings")!
          .getRange(lastRow + 2, 0)
          .getDisplayValue() !== "",
      before.lastRow,
    );
    await recomputed(page);
    const after = await readTable(page, "Findings", "Findings");
    expect(after.lastRow).toBe(before.lastRow + 3);
    const cell = (heading: string, row: number) =>
      shown(page, "Findings", `${before.columns[heading]!}${before.lastRow + 1 + row}`);
    expect(await Promise.all([0, 1, 2].map((row) => cell("Date", row)))).toEqual([
      "2026-08-30",
      "2026-08-31",
      "2026-09-01",
    ]);
    expect(headings.slice(0, 2)).toEqual(["Date", "Cow"]);
    expect(after.rows.slice(-3).map(({ Cow }) => Cow)).toEqual([101, 102, 103]);
    await page.click("#undo");
    await untilFindingsEnd(page, before.lastRow);
    expect(await readTable(page, "Findings", "Findings")).toEqual(before);
  });

  test("findings typed under the table as fast as keys can be sent all arrive, and the table takes them in", async () => {
    const { page } = trial;
    const before = await readTable(page, "Findings", "Findings");
    const cow = fc.integer({ min: 100, max: 999 }).map(String);
    const day = fc.integer({ min: 1, max: 28 }).map((number) => `2026-08-${String(number).padStart(2, "0")}`);
    const findings = fc.sample(fc.tuple(day, cow), { numRuns: 8, seed: 20_260_901 });
    await select(page, "Findings", `${before.columns["Date"]!}${before.lastRow + 1}`);
    for (const [date, name] of findings) {
      await page.keyboard.type(date);
      await page.keyboard.press("Tab");
      await page.keyboard.type(name);
      await page.keyboard.press("Enter");
    }
    await recomputed(page);
    const after = await readTable(page, "Findings", "Findings");
    expect(after.lastRow).toBe(before.lastRow + findings.length);
    const typed = findings.map((_, index) => {
      const row = before.lastRow + 1 + index;
      const at = (heading: string): Promise<string> => shown(page, "Findings", `${before.columns[heading]!}${row}`);
      return Promise.all([at("Date"), at("Cow")]);
    });
    expect(await Promise.all(typed)).toEqual(findings);
  });
});

describe("into a cell", () => {
  beforeAll(() => trial.startAnew());

  /** Keys a second: from a slow typist to one who is hardly human. The list of functions comes up in between. */
  test.each([
    [0, "F30"],
    [60, "F31"],
    [150, "F32"],
  ] as const)("a formula typed at %d ms a key stands as it was typed", async (delay, cell) => {
    const { page } = trial;
    const formula = '=HERD.CELL.SCORE(400)-HERD.CELL.SCORE(100)&"x"';
    await select(page, "Start", cell);
    // A pause after the first letters lets the list of functions open on them.
    await page.keyboard.type(formula.slice(0, 4), { delay });
    await page.waitForTimeout(400);
    await page.keyboard.type(formula.slice(4), { delay });
    await page.keyboard.press("Enter");
    await recomputed(page);
    expect(await formulaAt(cell)).toBe(formula);
    // Scores 5 and 3, worked by hand: log2(400 / 100) + 3 and log2(100 / 100) + 3.
    expect(await shown(page, "Start", cell)).toBe("2x");
  });

  test("a function can be taken from the list, and its arguments are told", async () => {
    const { page } = trial;
    await select(page, "Start", "F33");
    await page.keyboard.type("=HERD.CELL.SCO");
    await page.getByText("Somatic cell score of a cell count").first().waitFor();
    await page.keyboard.press("Tab");
    await page.getByText("Cell count of the milk test").first().waitFor();
    await page.keyboard.type("200)");
    await page.keyboard.press("Enter");
    await recomputed(page);
    expect(await formulaAt("F33")).toBe("=HERD.CELL.SCORE(200)");
    expect(await shown(page, "Start", "F33")).toBe("4");
  });
});
