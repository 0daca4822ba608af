import type { Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { InsertSheetMutation, RemoveSheetMutation } from "@univerjs/sheets";
import { cellAddress, type CellPosition } from "../../cell-address";
import {
  filledCells,
  refuseChangedBlock,
  type StandingCell,
  standingCells,
  type WrittenBlock,
} from "../../saving/written-block";
import { sheetGone, sheetProtected } from "../../table-error";
import type { CellBlock } from "../../table-port";
import { hasFormula, shownValue } from "./cells";
import { plainChanges } from "./looks";
import type { Change } from "./mutations";
import type { OpenGrid } from "./open-grid";

/** The cells of a block as they stand; undefined where its sheet is gone. */
export function blockCells(grid: OpenGrid, block: CellBlock): StandingCell[][] | undefined {
  const sheet = grid.workbook.getSheetBySheetName(block.sheet);
  return sheet ? standingCells(block, (at) => standingCell(grid, sheet, at)) : undefined;
}

function standingCell({ workbook, injector }: OpenGrid, sheet: Worksheet, { row, column }: CellPosition): StandingCell {
  const cell = sheet.getCellRaw(row, column);
  if (!hasFormula(cell)) return shownValue(cell);
  const formulas = injector.get(FormulaDataModel);
  const formula = formulas.getFormulaStringByCell(row, column, sheet.getSheetId(), workbook.getUnitId());
  return { formula: (formula ?? "").replace(/^=/, "") };
}

/** The changes that take a block out. */
export function removalOf(grid: OpenGrid, block: WrittenBlock): readonly Change[] {
  const { workbook } = grid;
  const sheet = workbook.getSheetBySheetName(block.sheet);
  if (!sheet) throw sheetGone(block.sheet);
  if (grid.protectedSheets.has(block.sheet)) throw sheetProtected(block.sheet);
  refuseChangedBlock(block, (at) => standingCell(grid, sheet, at));
  const plain = plainChanges(grid, sheet.getSheetId(), block);
  const isLast = workbook.getSheets().at(-1) === sheet;
  // Sheets are told apart by their place in the workbook: only the last one can go.
  if (!block.madeSheet || !isLast || !isBareBut(sheet, block)) return plain;
  const place = { unitId: workbook.getUnitId(), subUnitId: sheet.getSheetId(), subUnitName: block.sheet };
  const index = workbook.getSheets().length - 1;
  const again = { unitId: place.unitId, index, sheet: structuredClone(sheet.getConfig()) };
  return [{ redo: { id: RemoveSheetMutation.id, params: place }, undo: { id: InsertSheetMutation.id, params: again } }];
}

function isBareBut(sheet: Worksheet, block: WrittenBlock): boolean {
  const own = new Set(filledCells(block).map(({ at }) => cellAddress(at)));
  let isBare = true;
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const isOther = !own.has(cellAddress({ row, column }));
    if (isOther && (hasFormula(cell) || shownValue(cell) !== null)) isBare = false;
  });
  return isBare;
}
