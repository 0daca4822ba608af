import { TableError } from "./table-error";

/** A cell by its place, counted from 0. */
export interface CellPosition {
  readonly row: number;
  readonly column: number;
}

const LETTERS = 26;
const CODE_BEFORE_A = 64;

/** Rows and columns of a sheet. Source: Microsoft, "Excel specifications and limits". */
export const SHEET_ROWS = 1_048_576;
export const SHEET_COLUMNS = 16_384;

/** Place of a cell such as "B3". */
export function cellPosition(address: string): CellPosition {
  const [, letters, digits] = /^([A-Z]{1,3})([1-9]\d{0,6})$/.exec(address) ?? [];
  if (letters === undefined || digits === undefined) {
    throw new TableError("unwritable", `the address must be that of a cell, such as B3; got "${address}"`);
  }
  let column = 0;
  for (const letter of letters) column = column * LETTERS + letter.charCodeAt(0) - CODE_BEFORE_A;
  if (column > SHEET_COLUMNS || Number(digits) > SHEET_ROWS) {
    throw new TableError("unwritable", `the address must lie on a sheet, from A1 to XFD1048576; got "${address}"`);
  }
  return { row: Number(digits) - 1, column: column - 1 };
}

/** "B3" of a place. */
export function cellAddress({ row, column }: CellPosition): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / LETTERS)) {
    letters = String.fromCharCode(CODE_BEFORE_A + 1 + ((rest - 1) % LETTERS)) + letters;
  }
  return `${letters}${row + 1}`;
}
