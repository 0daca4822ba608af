import type { ChangingPackage } from "../change-package";
import { partText } from "../package";
import { attributeOf, type Tag, TagReader, withAttribute } from "../save/tags";
import { worksheetEntries } from "../sheets";
import { putPart } from "./parts";

/** A column by its place and the width that it is to have, in characters; null for the usual one. */
export interface ColumnWidth {
  readonly column: number;
  readonly set: number | null;
}

/** Gives some columns of a sheet other widths; formats of whole columns stay. */
export function setWidths(file: ChangingPackage, sheet: string, widths: readonly ColumnWidth[]): void {
  if (widths.length === 0) return;
  const path = worksheetEntries(file).find(({ name }) => name === sheet)?.path;
  if (path !== undefined) putPart(file.parts, path, withWidths(partText(file.parts, path), widths));
}

/** Columns that share their attributes. */
interface Span {
  readonly first: number;
  readonly last: number;
  readonly attributes: string;
}

function withWidths(xml: string, widths: readonly ColumnWidth[]): string {
  const { spans, start, end, prefix } = columnsOf(xml);
  const wanted = new Map(widths.map(({ column, set }) => [column, set]));
  const kept = spans.flatMap((span) => apart(span, wanted));
  const changed = widths.map(({ column, set }): Span => {
    const own = spans.find(({ first, last }) => first <= column && column <= last)?.attributes ?? "";
    const width = withAttribute(own, "width", set === null ? undefined : String(set));
    return {
      first: column,
      last: column,
      attributes: withAttribute(width, "customWidth", set === null ? undefined : "1"),
    };
  });
  const columns = [...kept, ...changed]
    .filter(({ attributes }) => /\S/.test(bare(attributes)))
    .sort((a, b) => a.first - b.first)
    .map(({ first, last, attributes }) => `<${prefix}col min="${first + 1}" max="${last + 1}"${bare(attributes)}/>`);
  const list = columns.length === 0 ? "" : `<${prefix}cols>${columns.join("")}</${prefix}cols>`;
  return xml.slice(0, start) + list + xml.slice(end);
}

function bare(attributes: string): string {
  return withAttribute(withAttribute(attributes, "min", undefined), "max", undefined);
}

/** The parts of a span that none of the columns cuts out. */
function apart(span: Span, columns: ReadonlyMap<number, unknown>): Span[] {
  const inside = [...columns.keys()].filter((column) => column >= span.first && column <= span.last);
  const cuts = [span.first - 1, ...inside.sort((a, b) => a - b), span.last + 1];
  return cuts.slice(1).flatMap((cut, index) => {
    const [first, last] = [cuts[index]! + 1, cut - 1];
    return first > last ? [] : [{ first, last, attributes: span.attributes }];
  });
}

/** The columns that a sheet describes, and where they stand or would stand: before its cells. */
function columnsOf(xml: string): {
  readonly spans: readonly Span[];
  readonly start: number;
  readonly end: number;
  readonly prefix: string;
} {
  const spans: Span[] = [];
  const tags = new TagReader(xml);
  let list: Tag | undefined;
  for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
    if (tag.name === "cols" && !tag.isClosing) list = tag;
    if (tag.name === "col" && !tag.isClosing) {
      const number = (name: string): number => Number(attributeOf(tag.attributes, name)) - 1;
      spans.push({ first: number("min"), last: number("max"), attributes: tag.attributes });
    }
    if (tag.name === "cols" && (tag.isClosing || tag.isEmpty)) {
      return { spans, start: list!.start, end: tag.end, prefix: tag.prefix };
    }
    if (tag.name === "sheetData") return { spans, start: tag.start, end: tag.start, prefix: tag.prefix };
  }
  return { spans, start: xml.length, end: xml.length, prefix: "" };
}
