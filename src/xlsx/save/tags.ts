/** A tag of an XML text and where it stands. */
export interface Tag {
  /** Without its namespace prefix. */
  readonly name: string;
  /** With its colon; most often empty. */
  readonly prefix: string;
  /** The text between name and end. */
  readonly attributes: string;
  readonly isClosing: boolean;
  readonly isEmpty: boolean;
  readonly start: number;
  readonly end: number;
}

/** Goes through the tags of an XML text, passing over comments, CDATA sections and instructions. */
export class TagReader {
  constructor(
    private readonly xml: string,
    private at = 0,
  ) {}

  next(): Tag | undefined {
    for (;;) {
      const start = this.xml.indexOf("<", this.at);
      if (start < 0) return undefined;
      const isElement = !"!?".includes(this.xml[start + 1] ?? "");
      const skipped = isElement ? undefined : SKIPPED.find(([opening]) => this.xml.startsWith(opening, start));
      if (skipped === undefined) return this.read(start);
      const end = this.xml.indexOf(skipped[1], start);
      this.at = end < 0 ? this.xml.length : end + skipped[1].length;
    }
  }

  /** The tag that closes the element of which the opening tag was just read. */
  closingOf(open: Tag): Tag {
    let depth = 1;
    for (let tag = this.next(); tag !== undefined; tag = this.next()) {
      if (tag.name !== open.name || tag.isEmpty) continue;
      depth += tag.isClosing ? -1 : 1;
      if (depth === 0) return tag;
    }
    return open;
  }

  private read(start: number): Tag {
    const { xml } = this;
    const isClosing = xml[start + 1] === "/";
    const nameStart = start + (isClosing ? 2 : 1);
    const close = this.tagEnd(nameStart);
    this.at = close + 1;
    const isEmpty = xml[close - 1] === "/";
    const contentEnd = isEmpty ? close - 1 : close;
    let nameEnd = nameStart;
    while (nameEnd < contentEnd && xml.charCodeAt(nameEnd) > SPACE) nameEnd++;
    const fullName = xml.slice(nameStart, nameEnd);
    const colon = fullName.indexOf(":") + 1;
    return {
      name: fullName.slice(colon),
      prefix: fullName.slice(0, colon),
      attributes: xml.slice(nameEnd, contentEnd),
      isClosing,
      isEmpty,
      start,
      end: close + 1,
    };
  }

  /** Index of the ">" that ends the tag; one inside quotes does not. */
  private tagEnd(from: number): number {
    const { xml } = this;
    let quote = 0;
    for (let index = from; index < xml.length; index++) {
      const code = xml.charCodeAt(index);
      if (quote !== 0) {
        if (code === quote) quote = 0;
      } else if (code === DOUBLE_QUOTE || code === SINGLE_QUOTE) quote = code;
      else if (code === GREATER) return index;
    }
    return xml.length;
  }
}

const SKIPPED: readonly (readonly [opening: string, closing: string])[] = [
  ["<!--", "-->"],
  ["<![CDATA[", "]]>"],
  ["<?", "?>"],
  ["<!", ">"],
];

const SPACE = 0x20;
const DOUBLE_QUOTE = 0x22;
const SINGLE_QUOTE = 0x27;
const GREATER = 0x3e;

/** The value of an attribute in the text of a tag. */
export function attributeOf(attributes: string, name: string): string | undefined {
  for (let at = attributes.indexOf(name); at >= 0; at = attributes.indexOf(name, at + 1)) {
    const isWhole = at === 0 || attributes.charCodeAt(at - 1) <= SPACE;
    const match = isWhole ? /^\s*=\s*(?:"([^"]*)"|'([^']*)')/.exec(attributes.slice(at + name.length)) : null;
    if (match !== null) return match[1] ?? match[2];
  }
  return undefined;
}

/** The text of a tag's attributes with one set, or with it taken out where the value is undefined. */
export function withAttribute(attributes: string, name: string, value: string | undefined): string {
  const without = attributes.replace(new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), "");
  return value === undefined ? without : `${without.trimEnd()} ${name}="${value}"`;
}
