import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { cellAddress, parseAreas } from "../address";
import { SHEET_COLUMNS, SHEET_ROWS } from "../limits";
import type { Area, CellModel, ColumnModel, SheetModel } from "../model";
import { childrenOf, descend, flag, numberAttribute, attribute, parsePart, type XmlElement } from "../xml";
import { readCells, type StoredCell } from "./cells";
import { colourOf } from "./colours";
import { readConditionalFormats } from "./conditional-formats";
import type { SheetContext } from "./sheet-context";
import { readValidations } from "./validations";

type SheetParts = Omit<SheetModel, "name" | "state" | "tables">;

export function readSheet(xml: string, path: string, context: SheetContext): SheetParts {
  const { shell, sheetData } = splitSheet(xml);
  const root = parsePart(shell, path);
  const { cells, rows } = readCells(sheetData, context.strings, path);
  const view = descend(root, "sheetViews", "sheetView");
  const format = descend(root, "sheetFormatPr");
  const defaultColumnWidth = numberAttribute(format, "defaultColWidth") ?? numberAttribute(format, "baseColWidth");
  const defaultRowHeight = numberAttribute(format, "defaultRowHeight");
  const tabColour = colourOf(descend(root, "sheetPr"), context.colour, "tabColor");
  const zoom = between(numberAttribute(view, "zoomScale"), 10, 400);
  return {
    cells: typedCells(cells, context),
    rows,
    columns: childrenOf(descend(root, "cols"), "col").flatMap(readColumn),
    merges: childrenOf(descend(root, "mergeCells"), "mergeCell").flatMap((merge) =>
      parseAreas(attribute(merge, "ref") ?? ""),
    ),
    validations: readValidations(root, context.typed),
    conditionalFormats: readConditionalFormats(root, context),
    showGridLines: flag(view, "showGridLines", true),
    ...readFrozen(view),
    ...(defaultColumnWidth === undefined ? {} : { defaultColumnWidth }),
    ...(defaultRowHeight === undefined ? {} : { defaultRowHeight }),
    ...(tabColour === undefined ? {} : { tabColour }),
    ...(zoom === undefined ? {} : { zoom }),
  };
}

/** A sheet without its cells, and its cells. */
export function splitSheet(xml: string): { readonly shell: string; readonly sheetData: string } {
  const open = /<(?:[\w.-]+:)?sheetData\b[^<>]*>/.exec(xml);
  if (open === null || open[0].endsWith("/>")) return { shell: xml, sheetData: "" };
  const close = /<\/(?:[\w.-]+:)?sheetData\s*>/.exec(xml.slice(open.index));
  const end = close === null ? xml.length : open.index + close.index + close[0].length;
  return { shell: xml.slice(0, open.index) + xml.slice(end), sheetData: xml.slice(open.index, end) };
}

function typedCells(stored: readonly StoredCell[], { typed, typedInOneCell, styles }: SheetContext): CellModel[] {
  const masters = new Map<number, string>();
  for (const cell of stored) {
    if (cell.shared !== undefined && cell.formula !== undefined)
      masters.set(cell.shared, translateFormulaToR1C1(cell.formula, cellAddress(cell.row, cell.column)));
  }
  // The first cell of an array formula comes before those that it fills; areas that end above are done with.
  let areas: Area[] = [];
  let lastRow = -1;
  return stored.map((cell): CellModel => {
    const { row, column, value, array } = cell;
    const formula = cell.formula ?? sharedFormula(cell, masters);
    if (row !== lastRow && areas.length > 0) areas = areas.filter((area) => area.lastRow >= row);
    lastRow = row;
    const spilled = formula === undefined && value !== null && areas.some((area) => contains(area, row, column));
    if (array !== undefined && !isOneCell(array.area)) areas.push(array.area);
    const style = styles.cells[cell.style] === undefined ? 0 : cell.style;
    return {
      row,
      column,
      value,
      style,
      ...(formula === undefined ? {} : { formula: array === undefined ? typedInOneCell(formula) : typed(formula) }),
      ...(array === undefined ? {} : { array }),
      ...(spilled ? { spilled } : {}),
    };
  });
}

function sharedFormula({ row, column, shared }: StoredCell, masters: ReadonlyMap<number, string>): string | undefined {
  const master = shared === undefined ? undefined : masters.get(shared);
  return master === undefined ? undefined : translateFormulaToA1(master, cellAddress(row, column));
}

function isOneCell({ firstRow, firstColumn, lastRow, lastColumn }: Area): boolean {
  return firstRow === lastRow && firstColumn === lastColumn;
}

function contains({ firstRow, firstColumn, lastRow, lastColumn }: Area, row: number, column: number): boolean {
  return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
}

/** The widest column, in characters. Source: ECMA-376 Part 1, 18.3.1.13 (col), as spreadsheet programs limit it. */
const WIDEST_COLUMN = 255;

function readColumn(column: XmlElement): ColumnModel[] {
  const width = between(numberAttribute(column, "width"), 0, WIDEST_COLUMN);
  const first = between(numberAttribute(column, "min"), 1, SHEET_COLUMNS);
  const last = Math.min(numberAttribute(column, "max") ?? 0, SHEET_COLUMNS);
  if (first === undefined || !Number.isInteger(first) || !Number.isInteger(last) || last < first) return [];
  return [
    {
      first: first - 1,
      last: last - 1,
      hidden: flag(column, "hidden"),
      style: numberAttribute(column, "style") ?? 0,
      ...(width === undefined ? {} : { width }),
    },
  ];
}

function between(value: number | undefined, least: number, most: number): number | undefined {
  return value !== undefined && value >= least && value <= most ? value : undefined;
}

function readFrozen(view: XmlElement | undefined): Pick<SheetModel, "frozen"> {
  const pane = descend(view, "pane");
  const state = attribute(pane, "state");
  if (state !== "frozen" && state !== "frozenSplit") return {};
  const rows = Math.floor(between(numberAttribute(pane, "ySplit"), 0, SHEET_ROWS - 1) ?? 0);
  const columns = Math.floor(between(numberAttribute(pane, "xSplit"), 0, SHEET_COLUMNS - 1) ?? 0);
  return { frozen: { rows, columns } };
}
