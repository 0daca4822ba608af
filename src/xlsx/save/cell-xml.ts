import { cellAddress } from "../address";
import type { CellContent } from "../model";
import { unescapeText } from "../xml";
import type { ScannedCell } from "./scan";
import { attributeOf, withAttribute } from "./tags";

/** A formula element to be written in place of the one that stands there. */
export interface FormulaXml {
  readonly attributes: string;
  readonly text: string;
}

/**
 * The XML of a cell with a fresh value: everything else of it stays as it was written. Undefined where nothing would
 * change.
 */
export function patchedCell(
  cell: ScannedCell,
  prefix: string,
  value: CellContent,
  formula?: FormulaXml,
): string | undefined {
  const isKept = formula === undefined || sameFormula(cell, formula);
  if (isKept && holds(cell, value)) return undefined;
  const element = formula ?? cell.formula;
  // A cell with a text of its own (rich or inline) loses it: its value is now the one computed.
  const others = cell.others.replace(/<(?:[\w.-]+:)?is\b[\s\S]*?<\/(?:[\w.-]+:)?is>/, "");
  // Value metadata describes the old value.
  let attributes = withAttribute(withAttribute(cell.attributes, "t", cellType(value)), "vm", undefined);
  if (formula !== undefined) attributes = withAttribute(attributes, "cm", attributeOf(formula.attributes, "cm"));
  return cellXml(prefix, attributes, element && formulaXml(prefix, element), value, others);
}

/** The XML of a cell that was not there. */
export function newCell(
  prefix: string,
  row: number,
  column: number,
  style: string | undefined,
  value: CellContent,
): string {
  let attributes = ` r="${cellAddress(row, column)}"`;
  if (style !== undefined) attributes = withAttribute(attributes, "s", style);
  return cellXml(prefix, withAttribute(attributes, "t", cellType(value)), undefined, value, "");
}

function cellXml(
  prefix: string,
  attributes: string,
  formula: string | undefined,
  value: CellContent,
  others: string,
): string {
  const content = (formula ?? "") + valueXml(prefix, value) + others;
  return content === "" ? `<${prefix}c${attributes}/>` : `<${prefix}c${attributes}>${content}</${prefix}c>`;
}

function formulaXml(prefix: string, { attributes, text }: FormulaXml): string {
  const own = withAttribute(attributes, "cm", undefined);
  return text === "" ? `<${prefix}f${own}/>` : `<${prefix}f${own}>${text}</${prefix}f>`;
}

function sameFormula({ attributes, formula }: ScannedCell, wanted: FormulaXml): boolean {
  return (
    formula?.text === wanted.text &&
    attributeOf(formula.attributes, "ref") === attributeOf(wanted.attributes, "ref") &&
    attributeOf(attributes, "cm") === attributeOf(wanted.attributes, "cm")
  );
}

/** Source: ECMA-376 Part 1, 18.18.11 (cell types); a number and a blank carry no type. */
function cellType(value: CellContent): string | undefined {
  if (typeof value === "string") return "str";
  if (typeof value === "boolean") return "b";
  return typeof value === "object" && value !== null ? "e" : undefined;
}

function valueXml(prefix: string, value: CellContent): string {
  if (value === null) return "";
  const text =
    typeof value === "object"
      ? storedError(value.error)
      : typeof value === "boolean"
        ? String(Number(value))
        : String(value);
  return `<${prefix}v>${escapeText(text)}</${prefix}v>`;
}

/**
 * Errors that a cell can hold by their text. Source: ECMA-376 Part 1, 18.17.3. Later ones (#SPILL!, #CALC!) are kept
 * as #VALUE! beside metadata of their own, which they get when the workbook is next computed.
 */
const STORED_ERRORS = new Set(["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"]);

function storedError(error: string): string {
  return STORED_ERRORS.has(error) ? error : "#VALUE!";
}

/** Whether the cell as written holds that value already. */
function holds({ attributes, value: text, others }: ScannedCell, value: CellContent): boolean {
  const type = attributeOf(attributes, "t") ?? "n";
  if (others.includes("is>") || type === "s" || type === "inlineStr") return false;
  if (value === null) return text === undefined;
  if (text === undefined || type !== (cellType(value) ?? "n")) return false;
  if (typeof value === "number") return Number(text) === value;
  if (typeof value === "boolean") return text === String(Number(value));
  return unescapeText(decodeEntities(text)) === (typeof value === "string" ? value : storedError(value.error));
}

const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', apos: "'", amp: "&" };

function decodeEntities(text: string): string {
  return text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, decimal?: string, name?: string) => {
    if (hex !== undefined) return String.fromCodePoint(parseInt(hex, 16));
    if (decimal !== undefined) return String.fromCodePoint(Number(decimal));
    return ENTITIES[name ?? ""] ?? whole;
  });
}

/** Text for the inside of an element; characters that XML cannot hold are written as _x0000_ is. */
export function escapeText(text: string): string {
  return text
    .replace(/_x(?=[0-9A-Fa-f]{4}_)/g, "_x005F_x")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(CONTROL_CHARACTERS, (letter) => `_x${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`);
}

// oxlint-disable-next-line no-control-regex -- these are the characters to be found
const CONTROL_CHARACTERS = /[\u0000-\u0008\u000b\u000c\u000d\u000e-\u001f\ufffe\uffff]/g;
