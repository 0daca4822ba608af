import { ICommandService, type IDisposable, type Injector } from "@univerjs/core";
import { SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  ReorderRangeMutation,
} from "@univerjs/sheets";
import type { CallLog } from "./call-log";

/** Changes after which a cell stands elsewhere than before. */
const MOVING = new Set<string>([
  InsertColMutation.id,
  InsertRowMutation.id,
  MoveColsMutation.id,
  MoveRangeMutation.id,
  MoveRowsMutation.id,
  RemoveColMutation.id,
  RemoveRowMutation.id,
  ReorderRangeMutation.id,
]);

/**
 * The log knows cells by their place. Where cells move, what it knows would be told of the wrong ones: it forgets
 * everything, and all formulas are computed anew.
 */
export function forgetMovedCells(injector: Injector, log: CallLog): IDisposable {
  const commands = injector.get(ICommandService);
  return commands.onCommandExecuted(({ id }) => {
    if (!MOVING.has(id)) return;
    log.clear();
    void commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, EVERYTHING, { onlyLocal: true });
  });
}

/** What the engine is told has changed, where everything may have. */
const EVERYTHING = {
  forceCalculation: true,
  dirtyRanges: [],
  dirtyNameMap: {},
  dirtyDefinedNameMap: {},
  dirtySuperTableMap: {},
  dirtyUnitFeatureMap: {},
  dirtyUnitOtherFormulaMap: {},
  clearDependencyTreeCache: {},
};
