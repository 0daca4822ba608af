import { cellAddress } from "./cell-address";
import type { PlainCell } from "./port";

/** A block of cells counted from 0, its last row and column included. */
export interface PlainArea {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

/** A table that the workbook knows as such. */
export interface PlainTable {
  readonly name: string;
  /** Headings and rows, without a totals row. */
  readonly area: PlainArea;
  /** Headings of columns that a formula fills. */
  readonly calculated: readonly string[];
}

export interface PlainSheet {
  readonly name: string;
  /** Rows from the first of the sheet on, each from column A on; a row may end early or be blank. */
  readonly rows: readonly (readonly PlainCell[])[];
  readonly tables: readonly PlainTable[];
  /** Cells whose numbers are shown as days. */
  readonly days: readonly PlainArea[];
  /** Cells that a formula fills. */
  readonly formulas: readonly PlainArea[];
  /** Those of them that one formula fills together, its own cell included; absent where there are none. */
  readonly spills?: readonly PlainArea[];
  readonly merges: readonly PlainArea[];
  /** The sheet is hidden; absent where it is not, or where the host cannot tell. */
  readonly hidden?: boolean;
}

/** A workbook as plain values, whatever host or file it comes from. */
export interface PlainBook {
  readonly sheets: readonly PlainSheet[];
  /** Days are counted from 1904 instead of 1900. */
  readonly from1904?: boolean;
}

/** What a cell holds; text of nothing but spaces is a blank. */
export function cellAt({ rows }: Pick<PlainSheet, "rows">, row: number, column: number): PlainCell {
  const cell = rows[row]?.[column] ?? null;
  return typeof cell === "string" && cell.trim() === "" ? null : cell;
}

export function holds({ firstRow, lastRow, firstColumn, lastColumn }: PlainArea, row: number, column: number): boolean {
  return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
}

/** Whether an area is more than one cell. */
export function isSeveral({ firstRow, firstColumn, lastRow, lastColumn }: PlainArea): boolean {
  return lastRow > firstRow || lastColumn > firstColumn;
}

/** B3, or B3:C9 for several cells. */
export function areaText({ firstRow, firstColumn, lastRow, lastColumn }: PlainArea): string {
  const first = cellAddress({ row: firstRow, column: firstColumn });
  const last = cellAddress({ row: lastRow, column: lastColumn });
  return first === last ? first : `${first}:${last}`;
}

/** Letters of a column: "B". */
export function columnLetters(column: number): string {
  return cellAddress({ row: 0, column }).slice(0, -1);
}
