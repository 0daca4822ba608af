import { mergeWith } from "@univerjs/core";
import { CalculateFormulaService, FormulaExecutedStateType } from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import type { Changes, RunsOfFormulas, TriggerInternals } from "../internals";

interface Turn {
  /** What changed since the run that is on began. */
  waiting: Changes | undefined;
}

const turns = new WeakMap<object, Turn>();

/**
 * A change during a calculation made the engine begin a second one in the memory of the first, or stop the first and
 * then forget what had changed, so that cells kept former values, or none, for good. Here one run follows the other,
 * and what a stopped run left uncomputed is computed by the next.
 */
export function fixRunsInTurn(): void {
  askForEachRun();
  const prototype = CalculateFormulaService.prototype as unknown as RunsOfFormulas;
  const { execute } = prototype;
  prototype.execute = async function (this: RunsOfFormulas, changes) {
    const before = turns.get(this);
    if (before !== undefined) {
      before.waiting = together(before.waiting, changes);
      this._runtimeService.stopExecution();
      return;
    }
    const turn: Turn = { waiting: undefined };
    turns.set(this, turn);
    try {
      for (let next: Changes | undefined = changes; next !== undefined;) {
        const isStopped = await runToEnd(this, execute, next);
        next = isStopped && turn.waiting !== undefined ? together(next, turn.waiting) : turn.waiting;
        turn.waiting = undefined;
      }
    } finally {
      // A run that breaks must not keep all later ones waiting.
      turns.delete(this);
    }
  };
}

/** Whether a calculation is on or waits for another to end. */
export function isRunning(service: object): boolean {
  return turns.has(service);
}

/** What the engine locks while a run is on. */
const RUN = "FORMULA_EXECUTION_LOCK";

/** Runs once, and says whether the run was stopped. */
async function runToEnd(
  service: RunsOfFormulas,
  execute: RunsOfFormulas["execute"],
  changes: Changes,
): Promise<boolean> {
  let isStopped = false;
  const watch = service.executionCompleteListener$.subscribe(({ functionsExecutedState }) => {
    isStopped = functionsExecutedState === FormulaExecutedStateType.STOP_EXECUTION;
  });
  await execute.call(service, changes);
  // The engine does not wait for its own run; the lock is free when it is over.
  await service._executeLock.acquire(RUN, () => undefined);
  watch.unsubscribe();
  return isStopped;
}

/** All that changed before and after. The contents of the cells are the later ones. */
function together(before: Changes | undefined, after: Changes): Changes {
  if (before === undefined) return after;
  const both = {
    forceCalculate: before.forceCalculate || after.forceCalculate,
    dirtyRanges: [...before.dirtyRanges, ...after.dirtyRanges],
  };
  for (const map of MAPS_OF_CHANGES) {
    const isMarked = (mark: unknown, later: unknown) => (later === false ? mark : undefined);
    Object.assign(both, { [map]: mergeWith({}, before[map], after[map], isMarked) as unknown });
  }
  return { ...after, ...both };
}

const MAPS_OF_CHANGES = [
  "dirtyNameMap",
  "dirtyDefinedNameMap",
  "dirtySuperTableMap",
  "dirtyUnitFeatureMap",
  "dirtyUnitOtherFormulaMap",
  "clearDependencyTreeCache",
] as const satisfies readonly (keyof Changes)[];

/** Lets the engine ask for a run at each change, with what is new in it, whether another is on or not. */
function askForEachRun(): void {
  const prototype = TriggerCalculationController.prototype as unknown as TriggerInternals;
  prototype._mergeDirty = function (this: TriggerInternals, _executing, changed) {
    this._executionInProgressParams = null;
    return changed;
  };
}
