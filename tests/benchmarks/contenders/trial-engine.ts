import { ICommandService, type ICellData, type IWorkbookData, LocaleType } from "@univerjs/core";
import { SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { openEngine } from "../../../src/engine/open-engine";
import type { BenchSheet, OpenSheet } from "../sheet";

const SHEET = "sheet";
let opened = 0;

/** The engine of the trial page. */
export async function openInTrialEngine(sheet: BenchSheet): Promise<OpenSheet> {
  const engine = openEngine(snapshot(sheet));
  await engine.settled();
  const commands = engine.injector.get(ICommandService);
  const cells = engine.workbook.getSheetBySheetId(SHEET)!.getCellMatrix();
  return {
    async recalculate() {
      const everything = { commands: null, forceCalculation: true };
      await commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, everything, { onlyLocal: true });
      await engine.settled();
    },
    values: () => sheet.formulas.map((_, row) => cells.getValue(row, sheet.formulaColumn)?.v),
    close: () => Promise.resolve(engine.close()),
  };
}

function snapshot({ headings, columns, formulas, formulaColumn }: BenchSheet): IWorkbookData {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const rowCount = Math.max(columns[0]!.length + 1, formulas.length);
  for (let row = 0; row < rowCount; row++) {
    const cells: Record<number, ICellData> = (cellData[row] = {});
    for (let column = 0; column < columns.length; column++) {
      const value = row === 0 ? headings[column] : columns[column]![row - 1];
      if (value !== null && value !== undefined) cells[column] = { v: value };
    }
    if (row < formulas.length) cells[formulaColumn] = { f: `=${formulas[row]!}` };
  }
  const size = { rowCount, columnCount: formulaColumn + 1 };
  return {
    id: `bench-${opened++}`,
    name: "bench",
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: [SHEET],
    sheets: { [SHEET]: { id: SHEET, name: "Bench", cellData, ...size } },
    resources: [],
  };
}
