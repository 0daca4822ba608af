import type { Area, CellContent } from "../model";
import type { FreshSheet } from "../save/patch-sheet";

/** A sheet as it stands after it was worked on. Rows, columns and sheets are still where they were. */
export interface EditedSheet {
  readonly name: string;
  /** Every cell with a content of its own: a formula, or what was typed. Not those that another cell fills. */
  readonly contents: readonly EditedCell[];
  readonly tables: readonly { readonly name: string; readonly area: Area }[];
  /** What the sheet shows now. */
  readonly fresh: FreshSheet;
}

export interface EditedCell {
  readonly row: number;
  readonly column: number;
  /** As typed, without "=". */
  readonly formula?: string;
  /** What was typed; of no account beside a formula. A blank empties the cell. */
  readonly value: CellContent;
  /** Number of its style in the file, where it has one. Only cells that the file does not format yet take it on. */
  readonly style?: number;
  /** Its number format, where it has one that is not of the file. */
  readonly numberFormat?: string;
}
