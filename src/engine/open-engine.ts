import {
  type Injector,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import type { FunctionSpec } from "../functions/define";
import { CallLog } from "./call-log";
import { computed } from "./computed";
import { applyFixes, fixedFunctions } from "./fixes";
import { attachCallLog, herdFunctions } from "./register";

/** An engine without a screen, with one workbook open. */
export interface OpenEngine {
  readonly workbook: Workbook;
  readonly injector: Injector;
  readonly log: CallLog;
  /** Waits until what was last changed is computed. */
  settled(): Promise<void>;
  close(): void;
}

/** Opens a workbook and begins to compute it. `specs` are the worksheet functions, all of them where left out. */
export function openEngine(snapshot: IWorkbookData, specs?: readonly FunctionSpec[]): OpenEngine {
  applyFixes();
  const log = new CallLog();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, {
    function: [...fixedFunctions, ...herdFunctions(log, specs)] as never,
  });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  univer.registerPlugin(UniverSheetsTablePlugin);
  const injector = univer.__getInjector();
  const workbook = univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, snapshot);
  attachCallLog(injector, log);
  return {
    workbook,
    injector,
    log,
    settled: () => computed(injector),
    close: () => univer.dispose(),
  };
}
