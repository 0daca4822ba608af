/** Rows and columns of a sheet. Source: ECMA-376 Part 1, 18.3.1.73 (row) and 18.3.1.13 (col). */
export const SHEET_ROWS = 1_048_576;
export const SHEET_COLUMNS = 16_384;

/**
 * What is read at most of one file. A million rows of a list with its texts stay below; what is above would only fill
 * the memory of the program that opens it.
 */
export const MOST_BYTES_OF_PART = 400_000_000;
export const MOST_BYTES_OF_FILE = 800_000_000;
/** Letters of a cell. Source: Microsoft, "Excel specifications and limits". */
export const LONGEST_TEXT = 32_767;
/** Cells of one sheet. */
export const MOST_CELLS = 10_000_000;
/** Places of one sheet up to the last cell of each row, empty ones too. */
export const MOST_PLACES = 30_000_000;
/** Tags of one part outside the cells. */
export const MOST_TAGS = 8_000_000;
/** Packing makes bytes at most so many times fewer. Source: zlib, "Technical Details", maximum compression factor. */
export const MOST_TIMES_SMALLER = 1032;

/** Whether a sheet has a cell there, counted from 0. */
export function isOnSheet(row: number, column: number): boolean {
  return (
    Number.isInteger(row) &&
    Number.isInteger(column) &&
    row >= 0 &&
    column >= 0 &&
    row < SHEET_ROWS &&
    column < SHEET_COLUMNS
  );
}
