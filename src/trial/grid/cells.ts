import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from "@univerjs/core";
import type { TableManager } from "@univerjs/sheets-table";

/** Cells by row and column, as the grid hands them about. */
export type Cells = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

/** A table as the grid holds it. */
export type GridTable = ReturnType<TableManager["getTablesBySubunitId"]>[number];

/** Whether one of these cells of a row was given a content. */
export function holdsSomething(row: Cells[number] | undefined, startColumn: number, endColumn: number): boolean {
  if (!row) return false;
  for (let column = startColumn; column <= endColumn; column++) {
    const cell = row[column];
    if (cell && ((cell.v !== undefined && cell.v !== null && cell.v !== "") || cell.f || cell.p)) return true;
  }
  return false;
}
