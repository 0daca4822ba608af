import type { Injector, IRange } from "@univerjs/core";
import { ISheetClipboardService, PREDEFINED_HOOK_NAME_PASTE } from "@univerjs/preset-sheets-core";
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
 * Makes a table take in what is typed or pasted right below it, and fills its calculated columns down, as part of the
 * same step of undo and before anything else can happen, so that fast typing meets no half-grown table.
 */
export function growTablesBelow(injector: Injector): void {
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations({ id, params }) {
      if (id !== SetRangeValuesCommand.id) return NO_MUTATIONS;
      const { unitId, subUnitId, cellValue = {} } = params as ISetRangeValuesMutationParams;
      return growths(injector, { unitId, subUnitId }, cellValue);
    },
  });
  // What is pasted comes by the clipboard's own way, past the command.
  injector.get(ISheetClipboardService).addClipboardHook({
    id: "grow-tables",
    onPasteCells(_from, { unitId, subUnitId, range }, matrix, { pasteType }) {
      if (!BRINGS_CONTENT.has(pasteType)) return NO_MUTATIONS;
      const pasted: Cells = {};
      matrix.forValue((row, column, cell) => {
        (pasted[range.rows[row]!] ??= {})[range.cols[column]!] = cell;
      });
      return growths(injector, { unitId, subUnitId }, pasted);
    },
  });
}

/** Ways of pasting that bring what stands in the cells, and not their looks alone. */
const BRINGS_CONTENT: ReadonlySet<string> = new Set([
  PREDEFINED_HOOK_NAME_PASTE.DEFAULT_PASTE,
  PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_VALUE,
  PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_FORMULA,
  PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_BESIDES_BORDER,
]);

function growths(injector: Injector, place: SheetPlace, written: Cells): Mutations {
  const tables = injector.get(TableManager).getTablesBySubunitId(place.unitId, place.subUnitId);
  return inSequence(tables.map((table) => growth(injector, place, table, written)));
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
