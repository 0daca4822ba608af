import type { WorkbookModel } from "../xlsx/model";
import { openEngine } from "./open-engine";
import { type ComputedWorkbook, readResults } from "./results";
import { toSnapshot } from "./snapshot";
import { hasFormulas, typedValues } from "./typed-values";

/** Results may be longer than anything in the workbook. */
const SPARE_ROWS = 10_000;

let workbooksOpened = 0;

/**
 * Computes a whole workbook without a screen. One without formulas is not given to the engine, which would wait for a
 * calculation that never ends and fail once it is closed.
 */
export async function recalculate(model: WorkbookModel): Promise<ComputedWorkbook> {
  const id = `workbook-${workbooksOpened++}`;
  const snapshot = toSnapshot(model, { id, savedValues: false, spareRows: SPARE_ROWS });
  if (!hasFormulas(model)) return typedValues(model);
  const engine = openEngine(snapshot);
  try {
    await engine.settled();
    return readResults(engine.workbook, engine.injector, engine.log);
  } finally {
    engine.close();
  }
}
