import type { IRange } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { SelectedCell } from "../port";

/** Reads the active cell of the grid, with the formula that fills it. */
export function readSelection(api: FUniver, formulas: FormulaDataModel): SelectedCell | undefined {
  const workbook = api.getActiveWorkbook();
  const active = workbook?.getActiveSheet().getSelection()?.getCurrentCell();
  if (!workbook || !active) return undefined;
  const sheet = workbook.getActiveSheet();
  const [unitId, sheetId] = [workbook.getId(), sheet.getSheetId()];
  const { actualRow: row, actualColumn: column } = active;
  const cell = sheet.getRange(row, column);
  const anchor = spillAnchor(formulas.getArrayFormulaRange()[unitId]?.[sheetId], row, column);
  const [sourceRow, sourceColumn] = anchor ?? [row, column];
  const formula = formulas.getFormulaStringByCell(sourceRow, sourceColumn, sheetId, unitId) ?? undefined;
  const spill = anchor && {
    anchor: sheet.getRange(sourceRow, sourceColumn).getA1Notation(),
    row: row - sourceRow,
    column: column - sourceColumn,
  };
  return {
    sheet: sheet.getSheetName(),
    address: cell.getA1Notation(),
    shown: cell.getDisplayValue(),
    ...(formula === undefined ? {} : { formula }),
    ...(spill === undefined ? {} : { spill }),
  };
}

type Spills = Readonly<Record<number, Readonly<Record<number, IRange>>>>;

/** The cell whose result fills this one from elsewhere. */
function spillAnchor(spills: Spills | undefined, row: number, column: number): [number, number] | undefined {
  for (const spillRow of Object.values(spills ?? {})) {
    for (const { startRow, startColumn, endRow, endColumn } of Object.values(spillRow)) {
      const inside = row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;
      if (inside && (row !== startRow || column !== startColumn)) return [startRow, startColumn];
    }
  }
  return undefined;
}
