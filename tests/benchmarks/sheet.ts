import type { ColumnOfCells } from "./herd-data";

/** What a formula engine computes: columns of cells under their headings, and formulas to the right of them. */
export interface BenchSheet {
  readonly headings: readonly string[];
  readonly columns: readonly ColumnOfCells[];
  readonly formulas: readonly string[];
  /** Column of the formulas, counted from 0; they stand one below the other from the first row on. */
  readonly formulaColumn: number;
}

/** What engines do not have in common: each gets the form that it computes rightly. */
export interface Spelling {
  /** The natural logarithm of max(count, base) / base for every cell of a range; a blank is no count. */
  logarithms(range: string, base: number): string;
}

export const SPREADSHEET: Spelling = {
  logarithms: (range, base) => `LN(((${range}>${base})*(${range}-${base})+${base})/${base})`,
};

/** What contenders of one task must agree on, by name. */
export type Figures = Readonly<Record<string, number>>;

/** A sheet that is open in a formula engine. */
export interface OpenSheet {
  /** Computes every formula anew. */
  recalculate(): Promise<void>;
  /** Values of the formulas, in their order. */
  values(): readonly unknown[];
  close(): Promise<void>;
}

/** Empty columns between the cells and the formulas. */
const GAP = 2;

/** Formulas are written with the ranges of the columns, such as A2:A101. */
export function benchSheet(
  columns: Readonly<Record<string, ColumnOfCells>>,
  formulas: (ranges: readonly string[], formulaAddress: (index: number) => string) => readonly string[],
): BenchSheet {
  const lists = Object.values(columns);
  const lastRow = lists[0]!.length + 1;
  const ranges = lists.map((_, index) => `$${letter(index)}$2:$${letter(index)}$${lastRow}`);
  const formulaColumn = lists.length + GAP;
  const address = (index: number): string => `${letter(formulaColumn)}${index + 1}`;
  return { headings: Object.keys(columns), columns: lists, formulas: formulas(ranges, address), formulaColumn };
}

export function letter(column: number): string {
  return String.fromCharCode("A".charCodeAt(0) + column);
}
