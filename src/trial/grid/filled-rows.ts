import {
  type ICellData,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { FormulaDataModel, LexerTreeBuilder } from "@univerjs/engine-formula";
import { type Cells, type GridTable, holdsSomething } from "./cells";
import type { SheetPlace } from "./mutations";
import { nameTheTable } from "./this-table";

/** What a table's new rows are filled with: the formats of its last row, and the formulas of its calculated columns. */
export function filledRows(
  injector: Injector,
  { unitId, subUnitId }: SheetPlace,
  table: GridTable,
  rows: number,
  typed: Cells,
): { readonly after: Cells; readonly before: Cells } {
  const after: Cells = {};
  const before: Cells = {};
  const range = table.getRangeInfo();
  const sheet = injector
    .get(IUniverInstanceService)
    .getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)
    ?.getSheetBySheetId(subUnitId);
  for (let column = range.startColumn; sheet && column <= range.endColumn; column++) {
    const formula = columnFormula(injector, { unitId, subUnitId }, table, column);
    const style = sheet.getCellRaw(range.endRow, column)?.s;
    for (let step = 1; step <= rows; step++) {
      const row = range.endRow + step;
      const present = sheet.getCellRaw(row, column);
      const fill: ICellData = {};
      if (style && !present?.s) fill.s = style;
      if (formula !== undefined && !holdsSomething(typed[row], column, column)) fill.f = formula(step);
      if (Object.keys(fill).length === 0) continue;
      (after[row] ??= {})[column] = fill;
      (before[row] ??= {})[column] = {
        ...(fill.s ? { s: null } : {}),
        ...(fill.f ? { f: present?.f ?? null, v: present?.v ?? null } : {}),
      };
    }
  }
  return { after, before };
}

type FormulaBelow = (rowsBelow: number) => string;

/** The formula of a calculated column, so many rows below the last one; undefined where the column has none. */
function columnFormula(
  injector: Injector,
  { unitId, subUnitId }: SheetPlace,
  table: GridTable,
  column: number,
): FormulaBelow | undefined {
  const { startRow, startColumn, endRow } = table.getRangeInfo();
  const formulas = injector.get(FormulaDataModel);
  const lexer = injector.get(LexerTreeBuilder);
  const at = (row: number) => formulas.getFormulaStringByCell(row, column, subUnitId, unitId) ?? undefined;
  const last = at(endRow);
  const declared = table.getTableColumnByIndex(column - startColumn)?.formula;
  const above = endRow - 1 > startRow ? at(endRow - 1) : undefined;
  // One formula alone may be a note of somebody's: the last two rows agree, or the table has no more than one.
  const fills = above === undefined ? endRow - 1 === startRow : lexer.moveFormulaRefOffset(above, 0, 1) === last;
  if (last !== undefined && fills) return (rowsBelow) => lexer.moveFormulaRefOffset(last, 0, rowsBelow);
  return declared ? () => nameTheTable(declared, table.getDisplayName()) : undefined;
}
