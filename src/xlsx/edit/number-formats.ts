import { attributeOf, TagReader, withAttribute } from "../save/tags";
import { escapeText } from "../save/cell-xml";

/** The first number free for a file's own number formats. Source: ECMA-376 Part 1, 18.8.30 (numFmt). */
const FIRST_OWN_FORMAT = 164;

/** Adds styles to the styles part for number formats that the file has not. */
export class NumberFormatStyles {
  private readonly styles = new Map<string, string>();

  constructor(private xml: string) {}

  /** The styles part with what was added. */
  get text(): string {
    return this.xml;
  }

  /** Number of a style that is plain but for the number format. */
  styleFor(format: string): string {
    const known = this.styles.get(format);
    if (known !== undefined) return known;
    const number = String(this.listLength("cellXfs", "xf"));
    const first = /<(?:[\w.-]+:)?cellXfs\b[^>]*>\s*(<(?:[\w.-]+:)?xf\b[^>]*?)\/?>/.exec(this.xml)?.[1] ?? "<xf";
    const xf = withAttribute(withAttribute(first, "numFmtId", this.formatId(format)), "applyNumberFormat", "1");
    this.append("cellXfs", `${xf}/>`);
    this.styles.set(format, number);
    return number;
  }

  /** Number of a number format in the file, added where the file has not got it. */
  formatId(format: string): string {
    const code = escapeText(format).replaceAll('"', "&quot;");
    const formats = this.elements("numFmt");
    const found = formats.find((attributes) => attributeOf(attributes, "formatCode") === code);
    if (found !== undefined) return attributeOf(found, "numFmtId")!;
    const used = formats.map((attributes) => Number(attributeOf(attributes, "numFmtId")));
    const id = String(Math.max(FIRST_OWN_FORMAT - 1, ...used) + 1);
    if (!/<(?:[\w.-]+:)?numFmts\b/.test(this.xml)) {
      this.xml = this.xml.replace(/<((?:[\w.-]+:)?)styleSheet\b[^>]*>/, '$&<$1numFmts count="0"></$1numFmts>');
    }
    const prefix = /<((?:[\w.-]+:)?)numFmts\b/.exec(this.xml)?.[1] ?? "";
    this.append("numFmts", `<${prefix}numFmt numFmtId="${id}" formatCode="${code}"/>`);
    return id;
  }

  /** The attributes of the elements of that name. */
  private elements(name: string): string[] {
    const found: string[] = [];
    const tags = new TagReader(this.xml);
    for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
      if (tag.name === name && !tag.isClosing) found.push(tag.attributes);
    }
    return found;
  }

  private listLength(list: string, item: string): number {
    const tags = new TagReader(this.xml);
    let inside = false;
    let length = 0;
    for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
      if (tag.name === list) inside = !tag.isClosing;
      else if (inside && tag.name === item && !tag.isClosing) length++;
    }
    return length;
  }

  /** Puts an element at the end of a list and counts it. */
  private append(list: string, element: string): void {
    const end = new RegExp(`</(?:[\\w.-]+:)?${list}>`).exec(this.xml);
    if (end === null) return;
    const added = this.xml.slice(0, end.index) + element + this.xml.slice(end.index);
    const count = this.listLength(list, list === "cellXfs" ? "xf" : "numFmt");
    this.xml = added.replace(new RegExp(`(<(?:[\\w.-]+:)?${list}\\b[^>]*?\\scount=")\\d+`), `$1${count + 1}`);
  }
}
