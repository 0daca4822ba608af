import type { Injector } from "@univerjs/core";
import { ICalculateFormulaService } from "@univerjs/engine-formula";
import { FormulaCalculationSessionService, TriggerCalculationController } from "@univerjs/sheets-formula";
import { isRunning } from "./fixes/runs-in-turn";
import type { TriggerInternals } from "./internals";

/** A workbook that computes longer than this does not end, or is far larger than any herd's. */
const LONGEST_CALCULATION_MS = 300_000;

/** How often it is looked. Short against a calculation, long against the looking. */
const LOOK_EVERY_MS = 4;

/** Ends when all that was changed in the open workbook is computed and stands in its cells. */
export async function computed(injector: Injector): Promise<void> {
  const end = performance.now() + LONGEST_CALCULATION_MS;
  // A run that is asked for begins in the next step of the page's work, so that it takes two looks to know.
  for (let idleLooks = 0; idleLooks < 2; idleLooks = isAtWork(injector) ? 0 : idleLooks + 1) {
    if (performance.now() > end) throw new Error(`the workbook was not computed within ${LONGEST_CALCULATION_MS} ms`);
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
}

function isAtWork(injector: Injector): boolean {
  // The first run is asked for by what watches the commands. If that were made here, before its time, nothing would
  // note yet that the run begins, and a workbook without a formula, which has no second run, would never be computed.
  if (!injector.get(FormulaCalculationSessionService).state.started) return true;
  const trigger = injector.get(TriggerCalculationController) as unknown as TriggerInternals;
  return trigger._waitingCommandQueue.length > 0 || isRunning(injector.get(ICalculateFormulaService));
}
