import type { ICellData, IMutationInfo, Injector, IObjectMatrixPrimitiveType, IRange, Nullable } from "@univerjs/core";
import { IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import { FormulaDataModel, LexerTreeBuilder } from "@univerjs/engine-formula";
import {
  type ISetRangeValuesMutationParams,
  SetRangeValuesCommand,
  SetRangeValuesMutation,
  SheetInterceptorService,
} from "@univerjs/sheets";
import { SetSheetTableMutation, TableManager } from "@univerjs/sheets-table";

type Cells = IObjectMatrixPrimitiveType<Nullable<ICellData>>;
interface Mutations {
  readonly redos: IMutationInfo[];
  readonly undos: IMutationInfo[];
}
const NOTHING: Mutations = { redos: [], undos: [] };

/**
 * Makes a table take in what is typed right below it, and fills its calculated columns down, as part of the same
 * step of undo and before anything else can happen, so that fast typing meets no half-grown table.
 */
export function growTablesBelow(injector: Injector): void {
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations({ id, params }) {
      if (id !== SetRangeValuesCommand.id) return NOTHING;
      return growth(injector, params as ISetRangeValuesMutationParams);
    },
  });
}

function growth(injector: Injector, { unitId, subUnitId, cellValue }: ISetRangeValuesMutationParams): Mutations {
  const redos: IMutationInfo[] = [];
  const undos: IMutationInfo[] = [];
  for (const table of injector.get(TableManager).getTablesBySubunitId(unitId, subUnitId)) {
    const range = table.getRangeInfo();
    const rows = rowsTypedBelow(cellValue ?? {}, range);
    if (rows === 0) continue;
    const grown = { ...range, endRow: range.endRow + rows };
    const place = { unitId, subUnitId };
    const resize = (newRange: IRange) => ({
      id: SetSheetTableMutation.id,
      params: { ...place, tableId: table.getId(), config: { updateRange: { newRange } } },
    });
    const filled = filledRows(injector, place, range, rows, cellValue ?? {});
    redos.push(resize(grown), { id: SetRangeValuesMutation.id, params: { ...place, cellValue: filled.after } });
    undos.unshift({ id: SetRangeValuesMutation.id, params: { ...place, cellValue: filled.before } }, resize(range));
  }
  return { redos, undos };
}

/** How many rows without a gap were written right below a table, inside its columns. */
function rowsTypedBelow(cells: Cells, { startColumn, endColumn, endRow }: IRange): number {
  let rows = 0;
  while (holdsText(cells[endRow + 1 + rows], startColumn, endColumn)) rows++;
  return rows;
}

function holdsText(row: Cells[number] | undefined, startColumn: number, endColumn: number): boolean {
  if (!row) return false;
  for (let column = startColumn; column <= endColumn; column++) {
    const cell = row[column];
    if (cell && ((cell.v !== undefined && cell.v !== null && cell.v !== "") || cell.f || cell.p)) return true;
  }
  return false;
}

interface Place {
  readonly unitId: string;
  readonly subUnitId: string;
}

/** The formats of the last row carried on, and its formulas where they fill the column. */
function filledRows(injector: Injector, place: Place, range: IRange, rows: number, typed: Cells) {
  const after: Cells = {};
  const before: Cells = {};
  const sheet = injector
    .get(IUniverInstanceService)
    .getUnit<Workbook>(place.unitId, UniverInstanceType.UNIVER_SHEET)
    ?.getSheetBySheetId(place.subUnitId);
  for (let column = range.startColumn; sheet && column <= range.endColumn; column++) {
    const formula = columnFormula(injector, place, range, column);
    const style = sheet.getCellRaw(range.endRow, column)?.s;
    for (let step = 1; step <= rows; step++) {
      const row = range.endRow + step;
      const present = sheet.getCellRaw(row, column);
      const fill: ICellData = {};
      if (style && !present?.s) fill.s = style;
      if (formula !== undefined && !holdsText(typed[row], column, column))
        fill.f = injector.get(LexerTreeBuilder).moveFormulaRefOffset(formula, 0, step);
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

/** The formula of the last row of a column, where the row above it has the same one. */
function columnFormula(injector: Injector, place: Place, { startRow, endRow }: IRange, column: number) {
  const formulas = injector.get(FormulaDataModel);
  const at = (row: number) => formulas.getFormulaStringByCell(row, column, place.subUnitId, place.unitId) ?? undefined;
  const last = at(endRow);
  if (last === undefined || endRow - startRow < 2) return last;
  const above = at(endRow - 1);
  return above !== undefined && injector.get(LexerTreeBuilder).moveFormulaRefOffset(above, 0, 1) === last
    ? last
    : undefined;
}
