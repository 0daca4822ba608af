import type { WorkbookModel } from "../xlsx/model";
import { openEngine } from "./open-engine";
import { type ComputedWorkbook, readResults } from "./results";
import { toSnapshot } from "./snapshot";

/** Results may be longer than anything in the workbook. */
const SPARE_ROWS = 10_000;

let workbooksOpened = 0;

/** Computes a whole workbook without a screen. */
export async function recalculate(model: WorkbookModel): Promise<ComputedWorkbook> {
  const id = `workbook-${workbooksOpened++}`;
  const engine = openEngine(toSnapshot(model, { id, savedValues: false, spareRows: SPARE_ROWS }));
  try {
    await engine.settled();
    return readResults(engine.workbook, engine.injector, engine.log);
  } finally {
    engine.close();
  }
}
