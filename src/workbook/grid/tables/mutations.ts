import { ICommandService, type IMutationInfo, type IRange, type Injector, IUndoRedoService } from "@univerjs/core";
import {
  type ISetRangeValuesMutationParams,
  SetRangeValuesCommand,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SheetInterceptorService,
} from "@univerjs/sheets";
import {
  AddSheetTableMutation,
  DeleteSheetTableMutation,
  SetSheetTableMutation,
  TableColumnDataTypeEnum,
} from "@univerjs/sheets-table";
import { hostFailed, hostUncertain } from "../../table-error";
import type { Cells } from "./cells";
import type { SheetTable } from "./known-table";
import type { OpenGrid } from "./open-grid";

/** Changes of the grid's data, in the order in which they run, and what takes each back. */
export interface Change {
  readonly redo: IMutationInfo;
  /** Absent where taking back what came before takes this back too. */
  readonly undo?: IMutationInfo;
}

/** Puts contents or formats into cells of a sheet. */
export function cellsChange({ workbook, injector }: OpenGrid, sheetId: string, cells: Cells): Change {
  const params: ISetRangeValuesMutationParams = {
    unitId: workbook.getUnitId(),
    subUnitId: sheetId,
    cellValue: cells,
  };
  const redo = { id: SetRangeValuesMutation.id, params };
  // A sheet that is still to be made goes with its cells.
  if (!workbook.getSheetBySheetId(sheetId)) return { redo };
  return {
    redo,
    undo: { id: SetRangeValuesMutation.id, params: SetRangeValuesUndoMutationFactory(injector, params) },
  };
}

/** Lays a table over cells. */
export function addTable(
  { workbook }: OpenGrid,
  table: {
    readonly id: string;
    readonly sheetId: string;
    readonly name: string;
    readonly range: IRange;
    readonly headings: readonly string[];
    /** Formulas, with "=", of the columns that fill themselves. */
    readonly formulas?: readonly (string | undefined)[];
  },
): Change {
  const { id, sheetId, name, range, headings, formulas } = table;
  const place = { unitId: workbook.getUnitId(), subUnitId: sheetId, tableId: id };
  const columns = headings.map((heading, index) => ({
    id: `${id}-${index}`,
    displayName: heading,
    dataType: TableColumnDataTypeEnum.String,
    formula: formulas?.[index] ?? "",
    meta: {},
    style: {},
  }));
  return {
    redo: {
      id: AddSheetTableMutation.id,
      params: { ...place, name, range, header: [...headings], options: { columns } },
    },
    undo: { id: DeleteSheetTableMutation.id, params: place },
  };
}

/** Makes a table longer or shorter. */
export function resizeChange({ workbook }: OpenGrid, table: SheetTable, bodyRows: number): Change {
  const place = { unitId: workbook.getUnitId(), subUnitId: table.sheet.getSheetId(), tableId: table.id };
  const { firstRow, firstColumn, info } = table;
  const resize = (rows: number): IMutationInfo => ({
    id: SetSheetTableMutation.id,
    params: {
      ...place,
      config: {
        updateRange: {
          newRange: {
            startRow: firstRow - 1,
            endRow: firstRow - 1 + rows,
            startColumn: firstColumn,
            endColumn: firstColumn + info.columns.length - 1,
          },
        },
      },
    },
  });
  return { redo: resize(bodyRows), undo: resize(table.bodyRows) };
}

/** What the page does besides when cells are typed into: tables grow with their rules, list boxes and formats. */
export function followingMutations(
  { workbook, injector }: OpenGrid,
  sheetId: string,
  cells: Cells,
): { readonly redos: IMutationInfo[]; readonly undos: IMutationInfo[] } {
  const params: ISetRangeValuesMutationParams = {
    unitId: workbook.getUnitId(),
    subUnitId: sheetId,
    cellValue: cells,
  };
  return injector.get(SheetInterceptorService).onCommandExecute({ id: SetRangeValuesCommand.id, params });
}

/** What several changes do and what takes them back, in the order in which they are to run. */
export function inSequence(changes: readonly Change[]): Mutations {
  return {
    redos: changes.map(({ redo }) => redo),
    undos: [...changes].reverse().flatMap(({ undo }) => undo ?? []),
  };
}

export interface Mutations {
  readonly redos: readonly IMutationInfo[];
  readonly undos: readonly IMutationInfo[];
}

/** Runs mutations one after the other as one step of undo. If one fails, those before it are taken back. */
export function run({ workbook, injector }: OpenGrid, { redos, undos }: Mutations): void {
  try {
    for (const { id, params } of redos) execute(injector, id, params);
  } catch (error) {
    try {
      // An undo of something that was not done changes nothing.
      for (const { id, params } of undos) execute(injector, id, params);
    } catch {
      throw hostUncertain(error);
    }
    throw hostFailed(error);
  }
  injector.get(IUndoRedoService).pushUndoRedo({
    unitID: workbook.getUnitId(),
    undoMutations: [...undos],
    redoMutations: [...redos],
  });
}

function execute(injector: Injector, id: string, params: object | undefined): void {
  const done = injector.get(ICommandService).syncExecuteCommand(id, params);
  if (!done) throw new Error(`the grid refused ${id}`);
}
