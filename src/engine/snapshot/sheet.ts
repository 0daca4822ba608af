import { CellValueType, type ICellData, type IRange, type IWorksheetData } from "@univerjs/core";
import { SHEET_COLUMNS } from "../../xlsx/limits";
import type { Area, CellModel, ColumnModel, SheetModel } from "../../xlsx/model";

/** A width of one character in the default font, in pixels. Source: ECMA-376 Part 1, 18.3.1.13 (col width). */
const PIXELS_PER_CHARACTER = 7;
/** 96 pixels and 72 points to the inch. */
const PIXELS_PER_POINT = 96 / 72;
/** Width and height of cells where the sheet says nothing, as the file format has them. */
const DEFAULT_CHARACTERS = 9.14;
const DEFAULT_POINTS = 15;
/** Empty columns to the right of what is used, and the fewest that are shown. */
const SPARE_COLUMNS = 10;
const LEAST_COLUMNS = 26;

export interface SheetOptions {
  readonly id: string;
  readonly rowCount: number;
  /** Values saved with formulas are shown until they are computed. */
  readonly savedValues: boolean;
}

export function gridSheet(sheet: SheetModel, { id, rowCount, savedValues }: SheetOptions): Partial<IWorksheetData> {
  const { frozen } = sheet;
  const lastColumn = Math.max(0, ...columnsUsed(sheet));
  return {
    id,
    name: sheet.name,
    hidden: sheet.state === "visible" ? 0 : 1,
    tabColor: sheet.tabColour ?? "",
    rowCount,
    columnCount: Math.min(Math.max(lastColumn + 1 + SPARE_COLUMNS, LEAST_COLUMNS), SHEET_COLUMNS),
    defaultColumnWidth: Math.round((sheet.defaultColumnWidth ?? DEFAULT_CHARACTERS) * PIXELS_PER_CHARACTER),
    defaultRowHeight: Math.round((sheet.defaultRowHeight ?? DEFAULT_POINTS) * PIXELS_PER_POINT),
    defaultStyle: styleId(0),
    showGridlines: sheet.showGridLines ? 1 : 0,
    mergeData: sheet.merges.map(gridRange),
    cellData: gridCells(sheet.cells, savedValues),
    columnData: gridColumns(sheet.columns, lastColumn),
    rowData: Object.fromEntries(
      sheet.rows.map(({ row, height, hidden }) => [
        row,
        {
          ...(height === undefined ? {} : { h: Math.round(height * PIXELS_PER_POINT), ia: 0 }),
          ...(hidden ? { hd: 1 } : {}),
        },
      ]),
    ),
    ...(sheet.zoom === undefined ? {} : { zoomRatio: sheet.zoom / 100 }),
    ...(frozen === undefined
      ? {}
      : {
          freeze: {
            xSplit: frozen.columns,
            ySplit: frozen.rows,
            startRow: frozen.rows || -1,
            startColumn: frozen.columns || -1,
          },
        }),
  };
}

/** The id under which the grid keeps the workbook's style of that number. */
export function styleId(style: number): string {
  return `style${style}`;
}

/** The workbook's number of a style by its id in the grid; undefined for a style that the grid made. */
export function styleNumber(id: string): number | undefined {
  const number = /^style(\d+)$/.exec(id)?.[1];
  return number === undefined ? undefined : Number(number);
}

export function gridRange({ firstRow, firstColumn, lastRow, lastColumn }: Area): IRange {
  return { startRow: firstRow, startColumn: firstColumn, endRow: lastRow, endColumn: lastColumn };
}

function columnsUsed({ cells, tables }: SheetModel): number[] {
  const columns = new Set(cells.map(({ column }) => column));
  for (const { area } of tables) columns.add(area.lastColumn);
  return [...columns];
}

function gridCells(cells: readonly CellModel[], savedValues: boolean): Record<number, Record<number, ICellData>> {
  const rows: Record<number, Record<number, ICellData>> = {};
  for (const cell of cells) {
    const data = gridCell(cell, savedValues);
    if (data !== undefined) (rows[cell.row] ??= {})[cell.column] = data;
  }
  return rows;
}

function gridCell({ value, formula, spilled, style }: CellModel, savedValues: boolean): ICellData | undefined {
  const cell: ICellData = style === 0 ? {} : { s: styleId(style) };
  // The cells that an array formula filled are empty to the engine, or it would refuse to fill them again.
  const shown = spilled || (formula !== undefined && !savedValues) ? null : value;
  if (formula !== undefined) cell.f = `=${formula}`;
  if (typeof shown === "number") Object.assign(cell, { v: shown, t: CellValueType.NUMBER });
  else if (typeof shown === "string") Object.assign(cell, { v: shown, t: CellValueType.STRING });
  else if (typeof shown === "boolean") Object.assign(cell, { v: shown ? 1 : 0, t: CellValueType.BOOLEAN });
  else if (shown !== null && formula !== undefined) Object.assign(cell, { v: shown.error, t: CellValueType.STRING });
  // The engine takes an error for one only where a formula gives it.
  else if (shown !== null) cell.f = `=${shown.error}`;
  return Object.keys(cell).length === 0 ? undefined : cell;
}

function gridColumns(columns: readonly ColumnModel[], lastUsed: number): IWorksheetData["columnData"] {
  const data: IWorksheetData["columnData"] = {};
  for (const { first, last, width, hidden } of columns) {
    // A format may reach to the last column there is; the grid has only those in use and a few more.
    for (let column = first; column <= Math.min(last, lastUsed + SPARE_COLUMNS); column++) {
      data[column] = {
        ...(width === undefined ? {} : { w: Math.round(width * PIXELS_PER_CHARACTER) }),
        ...(hidden ? { hd: 1 } : {}),
      };
    }
  }
  return data;
}
