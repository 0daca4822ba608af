import { fromCol, toCol } from "@borgar/fx";
import { isOnSheet, SHEET_COLUMNS } from "./limits";
import type { Area } from "./model";

/** A1 of a cell counted from 0. */
export function cellAddress(row: number, column: number): string {
  return `${toCol(column)}${row + 1}`;
}

/** A number that no other cell of a sheet has, for maps of very many cells. */
export function cellNumber(row: number, column: number): number {
  return row * SHEET_COLUMNS + column;
}

/** A1, or A1:B2 for several cells. */
export function areaAddress({ firstRow, firstColumn, lastRow, lastColumn }: Area): string {
  const first = cellAddress(firstRow, firstColumn);
  return firstRow === lastRow && firstColumn === lastColumn ? first : `${first}:${cellAddress(lastRow, lastColumn)}`;
}

/** The cell at A1 ("$" signs are passed over); undefined where the text is no cell of a sheet. */
export function parseCell(address: string): { readonly row: number; readonly column: number } | undefined {
  const parts = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})$/.exec(address);
  if (parts === null) return undefined;
  const [row, column] = [Number(parts[2]) - 1, fromCol(parts[1]!)];
  return isOnSheet(row, column) ? { row, column } : undefined;
}

/** The block A1 or A1:B2, its corners in any order. */
export function parseArea(reference: string): Area | undefined {
  const [first, last = first] = reference.split(":");
  const from = parseCell(first ?? "");
  const to = parseCell(last ?? "");
  if (from === undefined || to === undefined) return undefined;
  return {
    firstRow: Math.min(from.row, to.row),
    firstColumn: Math.min(from.column, to.column),
    lastRow: Math.max(from.row, to.row),
    lastColumn: Math.max(from.column, to.column),
  };
}

/** The blocks of a list such as "A1:A9 C1:C9"; whole rows and columns are left out. */
export function parseAreas(list: string): Area[] {
  return list
    .trim()
    .split(/\s+/)
    .map(parseArea)
    .filter((area) => area !== undefined);
}
