import { zipSync } from "fflate";
import { cellAddress } from "../address";
import { openPackage, partText, relationshipsOf } from "../package";
import { scanSheet } from "../save/scan";
import { attributeOf, TagReader, withAttribute } from "../save/tags";
import { worksheetEntries } from "../sheets";
import { NumberFormatStyles } from "./number-formats";
import { type Parts, putPart } from "./parts";
import { type Rewrite, rewriteCells } from "./rewrite-cells";

/** What a cell is to look like besides what it does already. */
export interface CellMark {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly numberFormat?: string;
  /** Editing the cell leaves its text as text, whatever it looks like. */
  readonly asText?: boolean;
  /** Number of the style that the cell starts from where it is not in the file; 0 unless given. */
  readonly style?: number;
}

/**
 * The workbook with marks put on some of its cells, which keep everything else of their format. It is packed without
 * compression, for the next step.
 */
export function markCells(original: Uint8Array, marks: readonly CellMark[]): Uint8Array {
  const file = openPackage(original);
  const parts: Parts = { ...file.parts };
  const stylesPath = relationshipsOf(parts, file.workbookPath).find(({ kind }) => kind === "styles")?.target;
  if (marks.length === 0 || stylesPath === undefined) return original;
  const styles = new MarkedStyles(partText(parts, stylesPath));
  for (const { name, path } of worksheetEntries(file)) {
    const own = marks.filter(({ sheet }) => sheet === name);
    const xml = partText(parts, path);
    const scanned = own.length === 0 ? undefined : scanSheet(xml);
    if (scanned === undefined) continue;
    const rewrites = new Map<number, Map<number, Rewrite>>();
    for (const mark of own) {
      const rewrite: Rewrite = (cell) => {
        const style = styles.marked(
          Number((cell === undefined ? mark.style : attributeOf(cell.attributes, "s")) ?? 0),
          mark,
        );
        if (cell === undefined) return `<${scanned.prefix}c r="${cellAddress(mark.row, mark.column)}" s="${style}"/>`;
        return withOwn(xml.slice(cell.start, cell.end), "s", String(style));
      };
      const cells = rewrites.get(mark.row);
      if (cells) cells.set(mark.column, rewrite);
      else rewrites.set(mark.row, new Map([[mark.column, rewrite]]));
    }
    putPart(parts, path, rewriteCells(xml, scanned, rewrites));
  }
  putPart(parts, stylesPath, styles.text);
  return zipSync(parts, { level: 0 });
}

/** The styles part, to which a copy of a style is added for each way in which it is marked. */
class MarkedStyles {
  private readonly formats: NumberFormatStyles;
  private readonly copies = new Map<string, number>();
  private readonly added: string[] = [];
  private readonly present: string[];

  constructor(xml: string) {
    this.formats = new NumberFormatStyles(xml);
    this.present = cellStyles(xml).map(({ start, end }) => xml.slice(start, end));
  }

  marked(style: number, { numberFormat, asText = false }: CellMark): number {
    const key = JSON.stringify([style, numberFormat, asText]);
    const known = this.copies.get(key);
    if (known !== undefined) return known;
    const source = this.present[style] ?? this.present[0]!;
    let copy = source;
    if (numberFormat !== undefined) {
      copy = withOwn(withOwn(copy, "numFmtId", this.formats.formatId(numberFormat)), "applyNumberFormat", "1");
    }
    if (asText) copy = withOwn(copy, "quotePrefix", "1");
    const number = copy === source ? style : this.present.length + this.added.push(copy) - 1;
    this.copies.set(key, number);
    return number;
  }

  get text(): string {
    const { text } = this.formats;
    if (this.added.length === 0) return text;
    const last = cellStyles(text).at(-1)!;
    const counted = (xml: string): string =>
      xml.replace(/(<(?:[\w.-]+:)?cellXfs\b[^>]*?\scount=")\d+/, `$1${this.present.length + this.added.length}`);
    return counted(text.slice(0, last.end)) + this.added.join("") + text.slice(last.end);
  }
}

/** The XML of an element with an attribute of its own tag set. */
function withOwn(xml: string, attribute: string, value: string): string {
  const { prefix, name, attributes } = new TagReader(xml).next()!;
  const start = 1 + prefix.length + name.length;
  return xml.slice(0, start) + withAttribute(attributes, attribute, value) + xml.slice(start + attributes.length);
}

/** Where the styles of cells stand in the styles part. */
function cellStyles(xml: string): { readonly start: number; readonly end: number }[] {
  const styles: { readonly start: number; readonly end: number }[] = [];
  const tags = new TagReader(xml);
  let inside = false;
  for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
    if (tag.name === "cellXfs") inside = !tag.isClosing;
    else if (inside && tag.name === "xf" && !tag.isClosing) {
      styles.push({ start: tag.start, end: tag.isEmpty ? tag.end : tags.closingOf(tag).end });
    }
  }
  return styles;
}
