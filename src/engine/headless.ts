import { LocaleType, LogLevel, Univer, type Workbook } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-formula/facade";
import { FormulaDataModel, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import type { WorkbookModel } from "../xlsx/model";
import { CallLog } from "./call-log";
import { applyFixes } from "./fixes";
import { attachCallLog, herdFunctions } from "./register";
import { toSnapshot } from "./snapshot";

export async function recalculate(model: WorkbookModel): Promise<Workbook> {
  applyFixes();
  const log = new CallLog();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: herdFunctions(log) as never });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  univer.registerPlugin(UniverSheetsTablePlugin);
  const injector = univer.__getInjector();
  const api = FUniver.newAPI(univer);
  attachCallLog(injector, log);
  const book = api.createWorkbook(toSnapshot(model, { savedValues: false }));
  await api.getFormula().onCalculationResultApplied(60000);
  const data = injector.get(FormulaDataModel);
  console.log(JSON.stringify(data.getArrayFormulaRange()));
  return book.getWorkbook();
}
