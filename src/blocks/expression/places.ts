import type { Expression } from "./expression";

/** The value of an input of the block: its cell in the sheet. */
export function input(name: string): Expression {
  return { text: (names) => names.input(name), compute: (run) => run.input(name) };
}

/** The value of a figure that stands further up in the block. */
export function part(id: string): Expression {
  return { text: (names) => names.part(id), compute: (run) => run.part(id) };
}

/** A column of a series further up, headings left out, counted from 0. */
export function seriesColumn(series: string, column: number): Expression {
  return part(columnOfSeries(series, column));
}

/** How the cells and columns of a series are called among the parts. */
export function cellOfSeries(series: string, row: number, column: number): string {
  return `${series} row ${row} column ${column}`;
}

export function columnOfSeries(series: string, column: number): string {
  return `${series} column ${column}`;
}

/** The day that the workbook counts from. */
export const asOf: Expression = { text: (names) => names.asOf, compute: (run) => run.data.asOf };

/** The scale of the mobility scores, as the functions take it. */
export const scale: Expression = { text: (names) => `"${names.scale}"`, compute: (run) => run.data.scale };
