import { SaxParser } from "@cj-tech-master/excelts/xml";
import { cellAddress, parseArea, parseCell } from "../address";
import { WorkbookFileError } from "../file-error";
import { isOnSheet, LONGEST_TEXT, MOST_CELLS, MOST_PLACES } from "../limits";
import type { ArrayExtent, CellContent, RowModel } from "../model";
import { localName, unescapeText } from "../xml";

/** A cell as the file holds it: its formula in the file's own spelling. */
export interface StoredCell {
  readonly row: number;
  readonly column: number;
  readonly style: number;
  readonly value: CellContent;
  readonly formula?: string;
  /** Number of a formula that several cells share. */
  readonly shared?: number;
  readonly array?: ArrayExtent;
}

export interface StoredCells {
  readonly cells: StoredCell[];
  readonly rows: RowModel[];
}

type Attributes = Readonly<Record<string, string>>;

/** A row may hold any number of cells, so that their number is looked at in between too. */
const CELLS_BETWEEN_LOOKS = 1 << 16;

/** The highest row, in points. Source: ECMA-376 Part 1, 18.3.1.73 (row), as spreadsheet programs limit it. */
const HIGHEST_ROW = 409.5;

/** Reads the sheetData element of a sheet. */
export function readCells(sheetData: string, strings: readonly string[], path: string): StoredCells {
  const cells: StoredCell[] = [];
  const rows: RowModel[] = [];
  let row = -1;
  let column = -1;
  let cell: Attributes = {};
  let formula: Attributes | undefined;
  let formulaText = "";
  let valueText: string | undefined;
  let inlineText: string | undefined;
  let into: "formula" | "value" | "inline" | undefined;
  let inPhonetic = false;
  let places = 0;
  const expectPlace = (text: string | undefined): void => {
    if (!isOnSheet(row, column))
      throw new WorkbookFileError(
        `the part ${path} is damaged: no sheet has a cell ${text ?? (Number.isNaN(row) ? "in a row without a number" : `in row ${row + 1}`)}`,
      );
  };
  const expectFew = (): void => {
    if (cells.length > MOST_CELLS || rows.length > MOST_CELLS || places > MOST_PLACES)
      throw new WorkbookFileError(`the part ${path} holds far more cells than a list of a herd`);
  };

  const parser = new SaxParser({ position: false, fragment: true });
  parser.on("opentag", ({ name, attributes }) => {
    switch (localName(name)) {
      case "row":
        places += column + 1;
        row = attributes["r"] === undefined ? row + 1 : Number(attributes["r"]) - 1;
        column = 0;
        expectPlace(undefined);
        expectFew();
        column = -1;
        readRow(row, attributes, rows);
        break;
      case "c": {
        const place = parseCell(attributes["r"] ?? "");
        row = place?.row ?? row;
        column = place?.column ?? (attributes["r"] === undefined ? column + 1 : NaN);
        expectPlace(attributes["r"]);
        cell = attributes;
        formula = valueText = inlineText = undefined;
        formulaText = "";
        break;
      }
      case "f":
        formula = attributes;
        into = "formula";
        break;
      case "v":
        valueText = "";
        into = "value";
        break;
      case "rPh":
        inPhonetic = true;
        break;
      case "t":
        if (!inPhonetic) into = "inline";
        break;
    }
  });
  const addText = (text: string): void => {
    if (into === "formula") formulaText += text;
    else if (into === "value") valueText += text;
    else if (into === "inline") inlineText = (inlineText ?? "") + text;
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", ({ name }) => {
    const closed = localName(name);
    if (closed === "rPh") inPhonetic = false;
    if (closed !== "c") {
      into = undefined;
      return;
    }
    const value = inlineText === undefined ? readValue(cell["t"], valueText, strings) : unescapeText(inlineText);
    if (typeof value === "string" && value.length > LONGEST_TEXT)
      throw new WorkbookFileError(
        `the part ${path} is damaged: ${cellAddress(row, column)} holds more text than a cell can`,
      );
    cells.push({ row, column, style: Number(cell["s"] ?? 0), value, ...readFormula(formula, formulaText, cell) });
    if (cells.length % CELLS_BETWEEN_LOOKS === 0) expectFew();
  });
  try {
    parser.write(sheetData);
    parser.close();
  } catch (error) {
    if (error instanceof WorkbookFileError) throw error;
    throw new WorkbookFileError(`the part ${path} is damaged: ${(error as Error).message}`);
  }
  return { cells, rows };
}

function readRow(row: number, attributes: Attributes, rows: RowModel[]): void {
  const height = attributes["customHeight"] === "1" || attributes["ht"] !== undefined ? Number(attributes["ht"]) : NaN;
  const hidden = attributes["hidden"] === "1" || attributes["hidden"] === "true";
  const isHeight = height >= 0 && height <= HIGHEST_ROW;
  if (!hidden && !isHeight) return;
  rows.push({ row, hidden, ...(isHeight ? { height } : {}) });
}

/** Source: ECMA-376 Part 1, 18.18.11 (cell types). */
function readValue(type: string | undefined, text: string | undefined, strings: readonly string[]): CellContent {
  if (text === undefined || (text.trim() === "" && type !== "str")) return null;
  switch (type) {
    case "s":
      return strings[Number(text)] ?? null;
    case "str":
    case "inlineStr":
    case "d":
      return unescapeText(text);
    case "b":
      return text === "1" || text === "true";
    case "e":
      return { error: text };
    default: {
      const value = Number(text);
      return Number.isFinite(value) ? value : null;
    }
  }
}

type FormulaParts = Pick<StoredCell, "formula" | "shared" | "array">;

function readFormula(formula: Attributes | undefined, text: string, cell: Attributes): FormulaParts {
  if (formula === undefined) return {};
  const area = parseArea(formula["ref"] ?? "");
  switch (formula["t"]) {
    case "shared":
      return { shared: Number(formula["si"]), ...(text === "" ? {} : { formula: text }) };
    case "array": {
      if (text === "" || area === undefined) return {};
      // A cell that carries cell metadata holds a dynamic array; without it an array formula of the old kind.
      return { formula: text, array: { kind: cell["cm"] === undefined ? "fixed" : "dynamic", area } };
    }
    case "dataTable":
      return {};
    default:
      return text === "" ? {} : { formula: text };
  }
}
