import type { CellModel, WorkbookModel } from "../xlsx/model";
import { errorMessage } from "./error-messages";
import type { ComputedCell, ComputedWorkbook } from "./results";

/** What a workbook shows in which nothing is computed. */
export function typedValues({ sheets }: WorkbookModel): ComputedWorkbook {
  return { sheets: sheets.map(({ name, cells }) => ({ name, cells: cells.flatMap(shown), spills: [] })) };
}

function shown({ row, column, value }: CellModel): ComputedCell[] {
  if (value === null || value === "") return [];
  if (typeof value !== "object") return [{ row, column, value }];
  return [{ row, column, value, message: errorMessage(value.error, undefined, undefined) }];
}

export function hasFormulas({ sheets }: WorkbookModel): boolean {
  return sheets.some(
    ({ cells, tables }) =>
      cells.some(({ formula }) => formula !== undefined) ||
      tables.some(({ columns }) => columns.some(({ formula }) => formula !== undefined)),
  );
}
