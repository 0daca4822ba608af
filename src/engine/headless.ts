import { LocaleType, LogLevel, Univer, UniverInstanceType, type Workbook } from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, FormulaCalculationSessionService, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import type { WorkbookModel } from "../xlsx/model";
import { CallLog } from "./call-log";
import { applyFixes, fixedFunctions } from "./fixes";
import { attachCallLog, herdFunctions } from "./register";
import { type ComputedWorkbook, readResults } from "./results";
import { toSnapshot } from "./snapshot";

/** A workbook that computes longer than this does not end, or is far larger than any herd's. */
const LONGEST_CALCULATION_MS = 300_000;
/** Results may be longer than anything in the workbook. */
const SPARE_ROWS = 10_000;

let workbooksOpened = 0;

/** Computes a whole workbook without a screen. */
export async function recalculate(model: WorkbookModel): Promise<ComputedWorkbook> {
  applyFixes();
  const log = new CallLog();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  try {
    univer.registerPlugin(UniverFormulaEnginePlugin, { function: [...fixedFunctions, ...herdFunctions(log)] as never });
    univer.registerPlugin(UniverSheetsPlugin);
    univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
    univer.registerPlugin(UniverSheetsTablePlugin);
    const injector = univer.__getInjector();
    const snapshot = toSnapshot(model, {
      id: `workbook-${workbooksOpened++}`,
      savedValues: false,
      spareRows: SPARE_ROWS,
    });
    const workbook = univer.createUnit<typeof snapshot, Workbook>(UniverInstanceType.UNIVER_SHEET, snapshot);
    attachCallLog(injector, log);
    await injector.get(FormulaCalculationSessionService).waitForLatestApplied(LONGEST_CALCULATION_MS);
    return readResults(workbook, injector, log);
  } finally {
    univer.dispose();
  }
}
