import { SaxParser } from "@cj-tech-master/excelts/xml";
import { parseArea, parseCell } from "../address";
import { WorkbookFileError } from "../file-error";
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

  const parser = new SaxParser({ position: false, fragment: true });
  parser.on("opentag", ({ name, attributes }) => {
    switch (localName(name)) {
      case "row":
        row = attributes["r"] === undefined ? row + 1 : Number(attributes["r"]) - 1;
        column = -1;
        readRow(row, attributes, rows);
        break;
      case "c": {
        const place = parseCell(attributes["r"] ?? "");
        row = place?.row ?? row;
        column = place?.column ?? column + 1;
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
    cells.push({ row, column, style: Number(cell["s"] ?? 0), value, ...readFormula(formula, formulaText, cell) });
  });
  try {
    parser.write(sheetData);
    parser.close();
  } catch (error) {
    throw new WorkbookFileError(`the part ${path} is damaged: ${(error as Error).message}`);
  }
  return { cells, rows };
}

function readRow(row: number, attributes: Attributes, rows: RowModel[]): void {
  const height = attributes["customHeight"] === "1" || attributes["ht"] !== undefined ? Number(attributes["ht"]) : NaN;
  const hidden = attributes["hidden"] === "1" || attributes["hidden"] === "true";
  if (!hidden && !Number.isFinite(height)) return;
  rows.push({ row, hidden, ...(Number.isFinite(height) ? { height } : {}) });
}

/** Source: ECMA-376 Part 1, 18.18.11 (cell types). */
function readValue(type: string | undefined, text: string | undefined, strings: readonly string[]): CellContent {
  if (text === undefined || (text === "" && type !== "str")) return null;
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
