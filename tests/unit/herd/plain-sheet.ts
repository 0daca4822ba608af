import type { PlainArea, PlainBook, PlainSheet } from "../../../src/workbook/plain-book";
import type { PlainCell } from "../../../src/workbook/port";

export type Rows = readonly (readonly PlainCell[])[];

interface Extras {
  readonly table?: string;
  readonly merges?: readonly PlainArea[];
  /** Columns whose numbers are shown as days. */
  readonly days?: readonly number[];
}

/** A sheet of which all rows are one table, or a plain range. */
export function sheet(name: string, rows: Rows, { table, merges = [], days = [] }: Extras = {}): PlainSheet {
  const lastRow = rows.length - 1;
  const area = { firstRow: 0, firstColumn: 0, lastRow, lastColumn: Math.max(...rows.map((row) => row.length)) - 1 };
  return {
    name,
    rows,
    merges,
    formulas: [],
    tables: table === undefined ? [] : [{ name: table, area, calculated: [] }],
    days: days.map((column) => ({ firstRow: 1, lastRow, firstColumn: column, lastColumn: column })),
  };
}

export function book(...sheets: readonly PlainSheet[]): PlainBook {
  return { sheets };
}
