import type { PlainArea, PlainBook, PlainSheet } from "../../../../src/workbook/plain-book";
import type { PlainCell } from "../../../../src/workbook/port";

type Rows = readonly (readonly PlainCell[])[];

function sheet(name: string, rows: Rows, merges: readonly PlainArea[] = []): PlainSheet {
  return { name, rows, tables: [], days: [], formulas: [], merges };
}

const over = (row: number, firstColumn: number, lastColumn: number): PlainArea => ({ firstRow: row, lastRow: row, firstColumn, lastColumn }); // oxfmt-ignore

const VISITS: Rows = Array.from({ length: 12 }, (_, index) => [
  `0${(index % 9) + 1}/03/2026`,
  100 + index,
  "DD",
  300 + index,
]);

/** A herd's milk tests with so many mistakes that no list of them fits a screen. */
function manyDoubts(): PlainBook {
  const ROWS = 6000;
  const rows = Array.from({ length: ROWS }, (_, index): PlainCell[] => [1000 + index, 46_100 + (index % 28), 25, index % 2 === 0 ? String(100 + (index % 300)) : 0]); // oxfmt-ignore
  const days = [{ firstRow: 1, lastRow: ROWS, firstColumn: 1, lastColumn: 1 }];
  return { sheets: [{ ...sheet("Milk", [["Cow", "Test date", "Milk kg", "Cell count (thousand)"], ...rows]), days }] };
}

/** Workbooks that cannot be read as a herd's, or only with a word about it. */
export const badBooks: Readonly<Record<string, () => PlainBook>> = {
  empty: () => ({ sheets: [sheet("Sheet1", [])] }),
  pictures: () => ({ sheets: [sheet("Photos", []), sheet("More photos", [])] }),
  fifty: () => ({ sheets: Array.from({ length: 50 }, (_, index) => sheet(`Week ${index + 1}`, [["Milk price", "Day"], [0.45, "Monday"]])) }), // oxfmt-ignore
  merged: () => ({
    sheets: [
      sheet("Feet", [["Trimming", null, null, null], ["Date", "Cow", "Lesion", "Pen"], ...VISITS], [over(0, 0, 3)]),
      sheet("Merged", [["Date", "Cow", "What was found", null], ...VISITS.map((row) => [...row])], [over(0, 2, 3)]),
    ],
  }),
  "two rows": () => ({
    sheets: [
      sheet("Feet", [["Visit", "Animal", "Found", null], ["Date", "Cow", "Lesion", "Pen"], ...VISITS], [over(0, 2, 3)]),
    ],
  }),
  many: manyDoubts,
};
