import { cellAddress } from "../address";
import type { CellContent } from "../model";
import { escapeText } from "../save/cell-xml";
import type { ScannedCell } from "../save/scan";
import { attributeOf, withAttribute } from "../save/tags";

/** What a cell is to hold, as the file spells it. */
export interface StoredContent {
  readonly row: number;
  readonly column: number;
  /** In the file's spelling. Its value is filled in afterwards. */
  readonly formula?: string;
  /** Number that marks a formula as a dynamic array; without it the formula is an ordinary one. */
  readonly dynamicArray?: string;
  readonly value: CellContent;
  /** Style for a cell that has none yet. */
  readonly style?: string;
}

/** The XML of a cell with a new content and the format that it had. */
export function contentXml(prefix: string, content: StoredContent, present: ScannedCell | undefined): string {
  const { row, column, formula, dynamicArray, value } = content;
  const style = attributeOf(present?.attributes ?? "", "s") ?? content.style;
  let attributes = ` r="${cellAddress(row, column)}"`;
  if (style !== undefined) attributes = withAttribute(attributes, "s", style);
  if (formula !== undefined) {
    const array = dynamicArray === undefined ? "" : ` t="array" ref="${cellAddress(row, column)}"`;
    attributes = withAttribute(attributes, "cm", dynamicArray);
    return `<${prefix}c${attributes}><${prefix}f${array}>${escapeText(formula)}</${prefix}f></${prefix}c>`;
  }
  const type =
    typeof value === "string" ? "inlineStr" : typeof value === "boolean" ? "b" : isError(value) ? "e" : undefined;
  const inner = valueXml(prefix, value);
  if (inner === "") return style === undefined ? "" : `<${prefix}c${attributes}/>`;
  return `<${prefix}c${withAttribute(attributes, "t", type)}>${inner}</${prefix}c>`;
}

function isError(value: CellContent): boolean {
  return typeof value === "object" && value !== null;
}

function valueXml(prefix: string, value: CellContent): string {
  if (value === null || value === "") return "";
  if (typeof value === "string") {
    return `<${prefix}is><${prefix}t xml:space="preserve">${escapeText(value)}</${prefix}t></${prefix}is>`;
  }
  const text = typeof value === "object" ? value.error : String(Number(value));
  return `<${prefix}v>${text}</${prefix}v>`;
}
