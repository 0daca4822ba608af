import type { PlainCell } from "../../workbook/port";
import { cellAt, holds, type PlainArea, type PlainSheet } from "../../workbook/plain-book";

/** A column of a block: its heading as written, "" where none is. */
export interface BlockColumn {
  readonly heading: string;
  /** Column of the sheet, counted from 0. */
  readonly column: number;
  /** A formula fills it. */
  readonly calculated: boolean;
}

/** Headings with rows below them: a table, or a plain range that looks like one. */
export interface Block {
  readonly sheet: PlainSheet;
  /** Name of the table; undefined for a plain range. */
  readonly table: string | undefined;
  /** The row of the sheet that holds the headings, the lowest one where there are two; counted from 0. */
  readonly headingRow: number;
  readonly columns: readonly BlockColumn[];
  /** First and last row below the headings. */
  readonly firstRow: number;
  readonly lastRow: number;
  /** What the reader of the block should know: merged headings, two rows of headings. Plain sentences. */
  readonly remarks: readonly string[];
}

/** The cells of a column of a block, row by row. */
export function columnCells({ sheet, firstRow, lastRow }: Block, { column }: BlockColumn): PlainCell[] {
  const cells: PlainCell[] = [];
  for (let row = firstRow; row <= lastRow; row++) cells.push(cellAt(sheet, row, column));
  return cells;
}

/** Whether most of a column's rows lie in the areas. */
export function mostlyIn(areas: readonly PlainArea[], column: number, firstRow: number, lastRow: number): boolean {
  let rows = 0;
  for (const area of areas) {
    if (!holds(area, area.firstRow, column)) continue;
    rows += Math.max(0, Math.min(area.lastRow, lastRow) - Math.max(area.firstRow, firstRow) + 1);
  }
  return rows * 2 > lastRow - firstRow + 1;
}

/** Longest text that is taken for a heading; longer ones are sentences. */
const LONGEST_HEADING = 60;

/** Whether a cell could be a heading: a short text that is no number and no date. */
export function isLabel(cell: PlainCell): cell is string {
  if (typeof cell !== "string" || cell.length > LONGEST_HEADING) return false;
  return /[\p{L}%]/u.test(cell) && !/^[\d\s.,:/-]+\p{L}{0,4}$/u.test(cell.trim());
}
