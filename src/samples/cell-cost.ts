import { topCows } from "../blocks/cells/top-cows";
import { yearlyBill } from "../blocks/cells/yearly-bill";
import { computeBlock } from "../blocks/compute";
import { BlockData } from "../blocks/data";
import type { SpecOf } from "../blocks/expression/run";
import type { LaidOutBlock } from "../blocks/laid-out";
import { layOutBlock } from "../blocks/layout";
import { ownReferences } from "../blocks/references/own";
import { defaultRecheckRules } from "../core/claws/recheck-rules";
import { day } from "../core/shared/days";
import { registry } from "../functions/registry";
import { inputColumns, numberFormatOf, type TableDefinition } from "../workbook/table-definition";
import type { TableContent } from "../workbook/table-port";
import { testsTable } from "../workbook/tables";
import { cellAddress } from "../xlsx/address";
import type { NewWorkbook } from "../xlsx/write-model";
import { inventedHerd } from "./herd/invented-herd";
import { ACCENTS, COLOURS, STYLES, withFormat } from "./look";
import { ALIGNED, Page } from "./page";
import { TABLE_STYLE } from "./sheets/data-sheet";
import { putCells } from "./sheets/block-sheet";

const MADE = day("2026-09-01");
const SHEET = "Bill";
/** An invented price, currency a litre. */
const MILK_PRICE = 0.46;
const FIRST_ROW = 4;
/** Columns of the bill, the cows, and the test that is pasted in. */
const BILL = { row: FIRST_ROW - 1, column: 0 };
const [COWS, TEST] = [5, 14];

const columns = inputColumns(testsTable as TableDefinition).filter(({ key }) => key !== "daysInMilk");
const specs = new Map(registry.map((spec) => [spec.id, spec]));
const specOf: SpecOf = (id) => specs.get(id)!;

/** The latest test of the invented herd. */
function testRows(): readonly (readonly (number | string | null)[])[] {
  const { tests } = inventedHerd(defaultRecheckRules);
  const latest = Math.max(...tests.map(({ date }) => date));
  return tests
    .filter(({ date }) => date === latest)
    .map((test) => columns.map(({ key }) => test[key as keyof typeof test] ?? null));
}

/** The farmer's bill on one sheet: a milk test at the right, what its counts cost and which cows make it at the left. */
export function cellCost(): NewWorkbook {
  const page = new Page(
    SHEET,
    "What high cell counts cost",
    "All numbers are invented: write your own test over the list at the right, and your milk price into the sand cell.",
  );
  const rows = testRows();
  const test: TableContent = {
    name: testsTable.name,
    sheet: SHEET,
    columns: columns.map(({ heading }) => ({ heading, calculated: false })),
    rowCount: rows.length,
    rows,
  };
  const data = new BlockData({ tables: new Map([[test.name, test]]), asOf: MADE, scale: "0-3" });
  const options = { references: ownReferences([test], false), specOf };
  const given = { milkPrice: MILK_PRICE };
  const { parts } = computeBlock(yearlyBill, data, specOf, given);
  const bill = layOutBlock(yearlyBill, { ...options, at: BILL, given, computed: parts });
  putCells(page, bill.cells, BILL);
  const linked = sameInputs(bill, ["test", "milkPrice"]);
  const high = layOutBlock(topCows, { ...options, at: BILL, linked });
  // The headings of both lists stand in one row.
  const at = { row: BILL.row + bill.places["summary"]!.row - high.places["cows"]!.row, column: COWS };
  const cows = layOutBlock(topCows, { ...options, at, linked });
  const cowsEnd = lastFilled(cows);
  putCells(page, cows.cells.slice(0, cowsEnd), at);
  // Notes run over the whole width below both; what both say is said once.
  const said = new Set(bill.cells.map(([first]) => first?.value));
  const more = cows.cells.slice(cowsEnd).filter(([first]) => first != null && !said.has(first.value));
  putCells(page, more, { row: BILL.row + bill.cells.length, column: BILL.column });
  addTest(page, rows);
  return {
    title: "What high cell counts cost",
    description: "One sheet. All data are invented.",
    author: "Evenfoot",
    made: MADE,
    accents: ACCENTS,
    names: [],
    sheets: [
      page.sheet({
        tabColour: COLOURS.deep,
        widths: [34, 15, 13, 48, 3, 18, 12, 13, 13, 13, 13, 14, 14, 3, 12, 9, 11, 10, 10],
        frozenRows: 2,
        print: { landscape: true, area: `A1:M${FIRST_ROW + bill.cells.length + more.length}`, pagesDown: 1 },
      }),
    ].map((sheet) => ({ ...sheet, print: { ...sheet.print, footer: "&LInvented data&RPage &P of &N" } })),
  };
}

/** Rows down to the last one that is not only a note. */
function lastFilled({ cells }: LaidOutBlock): number {
  const isFilled = (row: LaidOutBlock["cells"][number]): boolean =>
    row.some((cell) => cell !== null && cell.look !== "note");
  return cells.reduce((end, row, index) => (isFilled(row) ? index + 1 : end), 0);
}

/** Inputs that follow the cells of the bill, so that each is written once. */
function sameInputs({ inputPlaces }: LaidOutBlock, names: readonly string[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    names.map((name) => {
      const { row, column } = inputPlaces[name]!;
      return [name, cellAddress(BILL.row + row, BILL.column + column)];
    }),
  );
}

function addTest(page: Page, rows: ReturnType<typeof testRows>): void {
  page.section(cellAddress(FIRST_ROW - 1, TEST), "The milk test", columns.length);
  page.put(cellAddress(FIRST_ROW, TEST), "Paste the rows of a test over these. Counts in thousands.", STYLES.note);
  page.addTable({
    name: testsTable.name,
    at: cellAddress(FIRST_ROW + 1, TEST),
    styleName: TABLE_STYLE,
    columns: columns.map((column) => ({
      heading: column.heading,
      headingStyle: { ...STYLES.heading, ...ALIGNED.number, vertical: "middle" },
      style: { ...withFormat(STYLES.label, numberFormatOf(column)), ...ALIGNED.number },
    })),
    rows,
  });
}
