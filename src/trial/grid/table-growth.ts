import type { Injector, IRange } from "@univerjs/core";
import {
  type ISetRangeValuesMutationParams,
  SetRangeValuesCommand,
  SetRangeValuesMutation,
  SheetInterceptorService,
} from "@univerjs/sheets";
import { SetSheetTableMutation, TableManager } from "@univerjs/sheets-table";
import { type Cells, type GridTable, holdsSomething } from "./cells";
import { filledRows } from "./filled-rows";
import { inSequence, type Mutations, NO_MUTATIONS, type SheetPlace } from "./mutations";
import { growRules } from "./rule-growth";

/**
 * Makes a table take in what is typed right below it, and fills its calculated columns down, as part of the same
 * step of undo and before anything else can happen, so that fast typing meets no half-grown table.
 */
export function growTablesBelow(injector: Injector): void {
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations({ id, params }) {
      if (id !== SetRangeValuesCommand.id) return NO_MUTATIONS;
      const { unitId, subUnitId, cellValue = {} } = params as ISetRangeValuesMutationParams;
      const tables = injector.get(TableManager).getTablesBySubunitId(unitId, subUnitId);
      return inSequence(tables.map((table) => growth(injector, { unitId, subUnitId }, table, cellValue)));
    },
  });
}

function growth(injector: Injector, place: SheetPlace, table: GridTable, typed: Cells): Mutations {
  const range = table.getRangeInfo();
  const rows = rowsTypedBelow(typed, range);
  if (rows === 0) return NO_MUTATIONS;
  const resize = (newRange: IRange) => ({
    id: SetSheetTableMutation.id,
    params: { ...place, tableId: table.getId(), config: { updateRange: { newRange } } },
  });
  const write = (cellValue: Cells) => ({ id: SetRangeValuesMutation.id, params: { ...place, cellValue } });
  const filled = filledRows(injector, place, table, rows, typed);
  return inSequence([
    { redos: [resize({ ...range, endRow: range.endRow + rows })], undos: [resize(range)] },
    { redos: [write(filled.after)], undos: [write(filled.before)] },
    ...growRules(injector, place, range, rows),
  ]);
}

/** How many rows without a gap were written right below a table, inside its columns. */
function rowsTypedBelow(cells: Cells, { startColumn, endColumn, endRow }: IRange): number {
  let rows = 0;
  while (holdsSomething(cells[endRow + 1 + rows], startColumn, endColumn)) rows++;
  return rows;
}
