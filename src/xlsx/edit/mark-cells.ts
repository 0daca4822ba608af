import { cellAddress } from "../address";
import type { ChangingPackage } from "../change-package";
import { partText, relationshipsOf } from "../package";
import { scanSheet } from "../save/scan";
import { attributeOf, TagReader, withAttribute } from "../save/tags";
import { worksheetEntries } from "../sheets";
import type { CellStyle } from "../model";
import { NumberFormatStyles } from "./number-formats";
import { counted, itemsOf, StyleLists } from "./style-lists";
import { putPart } from "./parts";
import { type Rewrite, rewriteCells } from "./rewrite-cells";

/** What a cell is to look like besides what it does already. */
export interface CellMark {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly numberFormat?: string;
  /** What is said here of font, fill, borders and alignment. */
  readonly look?: CellStyle;
  /** The cell loses its own format first. */
  readonly plain?: boolean;
  /** Editing the cell leaves its text as text, whatever it looks like. */
  readonly asText?: boolean;
  /** Number of the style that the cell starts from where it is not in the file; 0 unless given. */
  readonly style?: number;
}

/** Puts marks on some cells of a workbook, which keep everything else of their format. */
export function markCells(file: ChangingPackage, marks: readonly CellMark[]): void {
  const { parts } = file;
  const stylesPath = relationshipsOf(parts, file.workbookPath).find(({ kind }) => kind === "styles")?.target;
  if (marks.length === 0 || stylesPath === undefined) return;
  const styles = new MarkedStyles(partText(parts, stylesPath));
  for (const { name, path } of worksheetEntries(file)) {
    const own = marks.filter(({ sheet }) => sheet === name);
    const xml = partText(parts, path);
    const scanned = own.length === 0 ? undefined : scanSheet(xml);
    if (scanned === undefined) continue;
    const rewrites = new Map<number, Map<number, Rewrite>>();
    for (const mark of own) {
      const rewrite: Rewrite = (cell) => {
        const own = Number((cell === undefined ? mark.style : attributeOf(cell.attributes, "s")) ?? 0);
        const style = styles.marked(mark.plain === true ? 0 : own, mark);
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
}

/** The styles part, to which a copy of a style is added for each way in which it is marked. */
class MarkedStyles {
  private readonly formats: NumberFormatStyles;
  private readonly lists: StyleLists;
  private readonly copies = new Map<string, number>();
  private readonly added: string[] = [];
  private readonly present: string[];

  constructor(xml: string) {
    this.formats = new NumberFormatStyles(xml);
    this.lists = new StyleLists(xml);
    this.present = itemsOf(xml, "cellXfs", "xf").map(({ start, end }) => xml.slice(start, end));
  }

  marked(style: number, { numberFormat, asText = false, look }: CellMark): number {
    const key = JSON.stringify([style, numberFormat, asText, look]);
    const known = this.copies.get(key);
    if (known !== undefined) return known;
    const source = this.present[style] ?? this.present[0]!;
    let copy = source;
    if (numberFormat !== undefined) {
      copy = withOwn(withOwn(copy, "numFmtId", this.formats.formatId(numberFormat)), "applyNumberFormat", "1");
    }
    if (look !== undefined) copy = this.withLook(copy, look);
    if (asText) copy = withOwn(copy, "quotePrefix", "1");
    const number = copy === source ? style : this.present.length + this.added.push(copy) - 1;
    this.copies.set(key, number);
    return number;
  }

  get text(): string {
    const text = this.lists.addedTo(this.formats.text);
    if (this.added.length === 0) return text;
    const last = itemsOf(text, "cellXfs", "xf").at(-1)!;
    const whole = text.slice(0, last.end) + this.added.join("") + text.slice(last.end);
    return counted(whole, "cellXfs", this.present.length + this.added.length);
  }

  private withLook(xf: string, look: CellStyle): string {
    const { size, bold, italic, colour, fill, borders } = look;
    let copy = xf;
    const put = (id: string, applies: string, number: number): void => {
      copy = withOwn(withOwn(copy, id, String(number)), applies, "1");
    };
    if ([size, bold, italic, colour].some((given) => given !== undefined)) {
      const own = Number(attributeOf(new TagReader(xf).next()!.attributes, "fontId") ?? 0);
      put("fontId", "applyFont", this.lists.font(own, look));
    }
    if (fill !== undefined) put("fillId", "applyFill", this.lists.fill(fill));
    if (borders !== undefined) put("borderId", "applyBorder", this.lists.border(borders));
    return withAlignment(copy, look);
  }
}

/** The XML of an element with an attribute of its own tag set. */
function withOwn(xml: string, attribute: string, value: string): string {
  const { prefix, name, attributes } = new TagReader(xml).next()!;
  const start = 1 + prefix.length + name.length;
  return xml.slice(0, start) + withAttribute(attributes, attribute, value) + xml.slice(start + attributes.length);
}

/** The style with the alignment that a look asks for, which is its first element. */
function withAlignment(xf: string, { horizontal, vertical, wrap }: CellStyle): string {
  const wanted = [
    ["horizontal", horizontal],
    ["vertical", vertical === "middle" ? "center" : vertical],
    ["wrapText", wrap === true ? "1" : undefined],
  ] as const;
  if (wanted.every(([, value]) => value === undefined)) return xf;
  const tags = new TagReader(xf);
  const outer = tags.next()!;
  const inner = outer.isEmpty ? undefined : tags.next();
  const present = inner?.name === "alignment" ? inner : undefined;
  const attributes = wanted.reduce(
    (text, [name, value]) => (value === undefined ? text : withAttribute(text, name, value)),
    present?.attributes ?? "",
  );
  const { prefix, name } = outer;
  const element = `<${prefix}alignment${attributes}/>`;
  const rest = outer.isEmpty
    ? `</${prefix}${name}>`
    : xf.slice(present === undefined ? outer.end : present.isEmpty ? present.end : tags.closingOf(present).end);
  return withOwn(`<${prefix}${name}${outer.attributes}>${element}${rest}`, "applyAlignment", "1");
}
