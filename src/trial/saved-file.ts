import type { ComputedWorkbook } from "../engine/results";
import { changed, packed } from "../xlsx/change-package";
import { setWidths } from "../xlsx/edit/column-widths";
import { markCells } from "../xlsx/edit/mark-cells";
import type { WorkbookModel } from "../xlsx/model";
import { openPackage } from "../xlsx/package";
import { putEdits } from "../xlsx/save-edits";
import { addTables, withAddedSheets, withoutAddedTables, withoutTakenParts } from "./added-parts";
import { changedWidths } from "./changed-widths";
import { editedSheets, type OpenGrid } from "./edited-sheets";
import { styledCells } from "./styled-cells";

/** The bytes of a workbook file with all that was changed in the grid since it was opened. */
export function savedFile(
  { bytes, model: opened }: { readonly bytes: Uint8Array; readonly model: WorkbookModel },
  grid: OpenGrid,
  results: ComputedWorkbook,
  ids: readonly string[],
): Uint8Array {
  const sheets = editedSheets(grid, results);
  const names = sheets.map(({ name }) => name);
  const start = { file: openPackage(bytes), model: opened };
  const { file, model } = withAddedSheets(withoutTakenParts(start, sheets, ids), names, ids);
  const saved = changed(file, (changing) => {
    markCells(changing, styledCells(grid.workbook, model));
    for (const { sheet, widths } of changedWidths(grid.workbook, model)) setWidths(changing, sheet, widths);
    putEdits(changing, model, ids, withoutAddedTables(sheets, model));
    addTables(changing, sheets, model, ids);
  });
  return packed(saved);
}
