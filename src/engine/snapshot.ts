import { type IWorkbookData, LocaleType } from "@univerjs/core";
import { WorkbookFileError } from "../xlsx/file-error";
import { SHEET_ROWS } from "../xlsx/limits";
import type { SheetModel, WorkbookModel } from "../xlsx/model";
import { gridResources } from "./snapshot/resources";
import { gridSheet, styleId } from "./snapshot/sheet";
import { gridStyle } from "./snapshot/styles";

export interface SnapshotOptions {
  readonly id?: string;
  readonly title?: string;
  /** Values saved with formulas are kept until they are computed, so that the grid is never bare. Default true. */
  readonly savedValues?: boolean;
  /** Empty rows kept below what is used, into which results may spill. */
  readonly spareRows?: number;
}

/** Rows that a person may still want to type into. */
const SPARE_ROWS = 200;

/** A workbook in the form that the grid and the engine open. */
export function toSnapshot(model: WorkbookModel, options: SnapshotOptions = {}): IWorkbookData {
  if (model.from1904) {
    throw new WorkbookFileError(
      "the workbook counts its days from 1904: switch that off in the options of the spreadsheet program and save it",
    );
  }
  const { id = "workbook", title = "Workbook", savedValues = true, spareRows = SPARE_ROWS } = options;
  const sheetIds = model.sheets.map((_, index) => sheetId(index));
  // A result may be as long as the longest list of the workbook, wherever it stands.
  const longest = Math.max(...model.sheets.map(rowsUsed));
  return {
    id,
    name: title,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(model.styles.map((style, index) => [styleId(index), gridStyle(style)])),
    sheetOrder: sheetIds,
    sheets: Object.fromEntries(
      model.sheets.map((sheet, index) => {
        const rowCount = Math.min(rowsUsed(sheet) + longest + spareRows, SHEET_ROWS);
        return [sheetIds[index]!, gridSheet(sheet, { id: sheetIds[index]!, rowCount, savedValues })];
      }),
    ),
    resources: gridResources(model, sheetIds),
  };
}

/** The grid's id of the sheet at that place in the workbook. */
export function sheetId(index: number): string {
  return `sheet-${index}`;
}

function rowsUsed({ cells, tables }: SheetModel): number {
  let last = 0;
  for (const { row } of cells) if (row > last) last = row;
  for (const { area } of tables) if (area.lastRow > last) last = area.lastRow;
  return last + 1;
}
