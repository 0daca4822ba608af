import { parseCell } from "../address";
import { attributeOf, type Tag, TagReader } from "./tags";

/** Where the rows and cells of a sheet stand in its XML. */
export interface ScannedSheet {
  /** Where the rows begin and end: inside the sheetData element, or the element itself where it is one empty tag. */
  readonly start: number;
  readonly end: number;
  readonly isEmptyTag: boolean;
  /** Namespace prefix of the part's elements, with its colon; most often empty. */
  readonly prefix: string;
  readonly rows: readonly ScannedRow[];
}

export interface ScannedRow {
  readonly row: number;
  readonly start: number;
  readonly end: number;
  /** Text of the attributes of its opening tag. */
  readonly attributes: string;
  readonly cells: readonly ScannedCell[];
}

export interface ScannedCell {
  readonly row: number;
  readonly column: number;
  readonly start: number;
  readonly end: number;
  /** Text of the attributes of its opening tag. */
  readonly attributes: string;
  readonly formula?: ScannedFormula;
  /** The text of the value element as written; absent where there is none. */
  readonly value?: string;
  /** Other elements that the cell holds, such as a text of its own. */
  readonly others: string;
}

export interface ScannedFormula {
  readonly attributes: string;
  /** The formula as written, with entities. */
  readonly text: string;
}

/** Finds the rows and cells in a sheet's XML. Undefined where the sheet has no sheetData. */
export function scanSheet(xml: string): ScannedSheet | undefined {
  const tags = new TagReader(xml);
  for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
    if (tag.name !== "sheetData") continue;
    const { prefix, start, end } = tag;
    if (tag.isEmpty) return { start, end, isEmptyTag: true, prefix, rows: [] };
    const rows: ScannedRow[] = [];
    for (let inner = tags.next(); inner !== undefined; inner = tags.next()) {
      if (inner.name === "sheetData") return { start: end, end: inner.start, isEmptyTag: false, prefix, rows };
      if (inner.name === "row") rows.push(scanRow(xml, tags, inner, (rows.at(-1)?.row ?? -1) + 1));
    }
  }
  return undefined;
}

function scanRow(xml: string, tags: TagReader, open: Tag, expectedRow: number): ScannedRow {
  const { start, attributes } = open;
  const number = attributeOf(attributes, "r");
  const row = number === undefined ? expectedRow : Number(number) - 1;
  const cells: ScannedCell[] = [];
  let { end } = open;
  for (let tag = open.isEmpty ? undefined : tags.next(); tag !== undefined; tag = tags.next()) {
    ({ end } = tag);
    if (tag.name === "row") break;
    if (tag.name === "c") cells.push(scanCell(xml, tags, tag, row, (cells.at(-1)?.column ?? -1) + 1));
  }
  return { row, start, end, attributes, cells };
}

function scanCell(xml: string, tags: TagReader, open: Tag, row: number, expectedColumn: number): ScannedCell {
  const { start, attributes } = open;
  const column = parseCell(attributeOf(attributes, "r") ?? "")?.column ?? expectedColumn;
  let { end } = open;
  let formula: ScannedFormula | undefined;
  let value: string | undefined;
  let others = "";
  for (let tag = open.isEmpty ? undefined : tags.next(); tag !== undefined; tag = tags.next()) {
    ({ end } = tag);
    if (tag.name === "c") break;
    const closing = tag.isEmpty ? tag : tags.closingOf(tag);
    const text = tag.isEmpty ? "" : xml.slice(tag.end, closing.start);
    if (tag.name === "f") formula = { attributes: tag.attributes, text };
    else if (tag.name === "v") value = text;
    else others += xml.slice(tag.start, closing.end);
  }
  return {
    row,
    column,
    start,
    end,
    attributes,
    others,
    ...(formula === undefined ? {} : { formula }),
    ...(value === undefined ? {} : { value }),
  };
}
