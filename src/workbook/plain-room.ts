import type { Room } from "./book-port";
import { cellAddress, type CellPosition, SHEET_COLUMNS, SHEET_ROWS } from "./cell-address";
import { cellAt, type PlainArea, type PlainSheet } from "./plain-book";

/** Whether every cell of an area is blank and belongs to no table, formula or merged cell. */
export function isFreeOn(sheet: PlainSheet, area: PlainArea): boolean {
  if ([...sheet.tables.map((table) => table.area), ...sheet.formulas, ...sheet.merges].some(meets(area))) return false;
  const lastRow = Math.min(area.lastRow, sheet.rows.length - 1);
  for (let row = area.firstRow; row <= lastRow; row++) {
    const lastColumn = Math.min(area.lastColumn, (sheet.rows[row] ?? []).length - 1);
    for (let column = area.firstColumn; column <= lastColumn; column++) {
      if (cellAt(sheet, row, column) !== null) return false;
    }
  }
  return true;
}

/** First cell of free cells beside, or else below, all that a sheet holds; undefined where there is no room. */
export function roomOn(sheet: PlainSheet, { rows, columns }: Room): string | undefined {
  const used = usedArea(sheet);
  if (used === undefined) return fits(0, 0, rows, columns) ? "A1" : undefined;
  // One row or column stays free, so that nothing written grows into what is there.
  const [below, beside] = [used.lastRow + 2, used.lastColumn + 2];
  if (fits(0, beside, rows, columns)) return cellAddress({ row: 0, column: beside });
  return fits(below, 0, rows, columns) ? cellAddress({ row: below, column: 0 }) : undefined;
}

function fits(row: number, column: number, rows: number, columns: number): boolean {
  return row + rows <= SHEET_ROWS && column + columns <= SHEET_COLUMNS;
}

/** Down and right to the last cell in use. */
function usedArea(sheet: PlainSheet): Pick<PlainArea, "lastRow" | "lastColumn"> | undefined {
  let lastRow = -1;
  let lastColumn = -1;
  sheet.rows.forEach((cells, row) => {
    for (let column = cells.length - 1; column >= 0; column--) {
      if (cellAt(sheet, row, column) === null) continue;
      lastRow = row;
      lastColumn = Math.max(lastColumn, column);
      break;
    }
  });
  for (const area of [...sheet.tables.map((table) => table.area), ...sheet.formulas, ...sheet.merges]) {
    lastRow = Math.max(lastRow, area.lastRow);
    lastColumn = Math.max(lastColumn, area.lastColumn);
  }
  return lastRow < 0 ? undefined : { lastRow, lastColumn };
}

/** The area of so many rows and columns from a cell on. */
export function areaFrom({ row, column }: CellPosition, rows: number, columns: number): PlainArea {
  return { firstRow: row, firstColumn: column, lastRow: row + rows - 1, lastColumn: column + columns - 1 };
}

export function meets(area: PlainArea): (other: PlainArea) => boolean {
  return (other) =>
    other.firstRow <= area.lastRow &&
    other.lastRow >= area.firstRow &&
    other.firstColumn <= area.lastColumn &&
    other.lastColumn >= area.firstColumn;
}
