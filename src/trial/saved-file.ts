import type { ComputedWorkbook } from "../engine/results";
import { setWidths } from "../xlsx/edit/column-widths";
import { markCells } from "../xlsx/edit/mark-cells";
import { saveEdits } from "../xlsx/save-edits";
import {
  withAddedSheets,
  withAddedTables,
  withoutAddedTables,
  withoutTakenParts,
  type WorkbookFile,
} from "./added-parts";
import { changedWidths } from "./changed-widths";
import { editedSheets, type OpenGrid } from "./edited-sheets";
import { styledCells } from "./styled-cells";

/** The bytes of a workbook file with all that was changed in the grid since it was opened. */
export function savedFile(
  file: WorkbookFile,
  grid: OpenGrid,
  results: ComputedWorkbook,
  ids: readonly string[],
): Uint8Array {
  const sheets = editedSheets(grid, results);
  const names = sheets.map(({ name }) => name);
  const { bytes, model } = withAddedSheets(withoutTakenParts(file, sheets, ids), names, ids);
  const marked = markCells(bytes, styledCells(grid.workbook, model));
  const widened = changedWidths(grid.workbook, model).reduce(
    (start, { sheet, widths }) => setWidths(start, sheet, widths),
    marked,
  );
  const saved = saveEdits(widened, model, ids, withoutAddedTables(sheets, model));
  return withAddedTables(saved, sheets, model, ids);
}
