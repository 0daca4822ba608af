import { readFileSync } from "node:fs";
import { join } from "node:path";
import { recalculate } from "../../src/engine/headless";
import type { ComputedWorkbook } from "../../src/engine/results";
import { registry } from "../../src/functions/registry";
import { cellAddress } from "../../src/xlsx/address";
import type { CellContent } from "../../src/xlsx/model";
import { readWorkbook } from "../../src/xlsx/read";
import { cellWhere, dayAfter, readTable } from "./sample";
import { shown, trialForAllTests } from "./trial-page";

const SAMPLE = join(__dirname, "../../sample-workbooks/herd-workbook.xlsx");

// It is looked at before anything is typed.
const trial = trialForAllTests();
let headless: ComputedWorkbook;

beforeAll(async () => {
  const ids = registry.map(({ id }) => id);
  headless = await recalculate(readWorkbook(readFileSync(SAMPLE), ids));
});

/** Every cell of every sheet by its address. */
function valuesOf({ sheets }: ComputedWorkbook): Record<string, Record<string, CellContent>> {
  const bySheet = sheets.map(({ name, cells }) => {
    const byAddress = cells.map(({ row, column, value }) => [cellAddress(row, column), value] as const);
    return [name, Object.fromEntries(byAddress)] as const;
  });
  return Object.fromEntries(bySheet);
}

/** Logarithms of two versions of a JavaScript engine may differ in the last bit of a double, about 1 in 10^16. */
const LAST_BITS = 1e-13;

function agrees(a: CellContent, b: CellContent): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= LAST_BITS * Math.max(1, Math.abs(a));
  return JSON.stringify(a) === JSON.stringify(b);
}

test("every cell of the sample has the same value in the browser as without one", async () => {
  const inBrowser = valuesOf(await trial.page.evaluate(() => window.trialSession!.results()));
  const expected = valuesOf(headless);
  expect(Object.keys(inBrowser)).toEqual(Object.keys(expected));
  for (const [sheet, cells] of Object.entries(expected)) {
    expect(Object.keys(inBrowser[sheet]!)).toEqual(Object.keys(cells));
    const differing = Object.entries(cells).filter(([at, value]) => !agrees(value, inBrowser[sheet]![at]!));
    expect({ [sheet]: differing.map(([at, value]) => [at, value, inBrowser[sheet]![at]]) }).toEqual({ [sheet]: [] });
  }
  expect(Object.values(expected).flatMap(Object.values).length).toBeGreaterThan(10_000);
});

test("computed cells show in the grid, filled ones too, in their format", async () => {
  const { page } = trial;
  const findings = await readTable(page, "Findings", "Findings");
  const isUlcer = (row: Readonly<Record<string, unknown>>): boolean => row["Lesion"] === "SU";
  // Sole ulcers of the sample are looked at again after 7 days.
  const recheck = dayAfter(findings.rows.find(isUlcer)!["Date"], 7);
  expect(await shown(page, "Findings", cellWhere(findings, "Recheck", isUlcer))).toBe(recheck);
  expect(await shown(page, "Due", "D12")).toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(await page.textContent("#file-name")).toBe("herd-workbook.xlsx");
  expect(await page.textContent("#sample-note")).toContain("invented");
});
