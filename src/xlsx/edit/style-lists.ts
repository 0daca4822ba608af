import type { BorderModel, CellStyle } from "../model";
import { TagReader } from "../save/tags";
import { argb } from "../write-style";

/** The fonts, fills and borders of the styles part, to which others are added. Numbers are places in these lists. */
export class StyleLists {
  private readonly lists = new Map<ListName, { readonly items: string[]; readonly present: number }>();

  constructor(xml: string) {
    for (const name of LIST_NAMES) {
      const items = itemsOf(xml, name, name.slice(0, -1)).map(({ start, end }) => xml.slice(start, end));
      this.lists.set(name, { items, present: items.length });
    }
  }

  /** The font of that number with what a style says of it. */
  font(number: number, { size, bold, italic, colour }: CellStyle): number {
    const source = this.lists.get("fonts")!.items[number] ?? "<font/>";
    const own = new Map(childrenOf(source));
    const { prefix } = new TagReader(source).next()!;
    const put = (name: string, attributes: string): unknown => own.set(name, `<${prefix}${name}${attributes}/>`);
    if (bold === true) put("b", "");
    if (italic === true) put("i", "");
    if (size !== undefined) put("sz", ` val="${size}"`);
    if (colour !== undefined) put("color", ` rgb="${argb(colour)}"`);
    const ordered = FONT_PARTS.flatMap((name) => own.get(name) ?? []);
    return this.put("fonts", `<${prefix}font>${ordered.join("")}</${prefix}font>`);
  }

  fill(colour: string): number {
    const prefix = this.prefixOf("fills");
    const colours = `<${prefix}fgColor rgb="${argb(colour)}"/><${prefix}bgColor indexed="64"/>`;
    const pattern = `<${prefix}patternFill patternType="solid">${colours}</${prefix}patternFill>`;
    return this.put("fills", `<${prefix}fill>${pattern}</${prefix}fill>`);
  }

  border(borders: NonNullable<CellStyle["borders"]>): number {
    const prefix = this.prefixOf("borders");
    const side = (name: string, border: BorderModel | undefined): string =>
      border === undefined
        ? `<${prefix}${name}/>`
        : `<${prefix}${name} style="${border.style}"><${prefix}color rgb="${argb(border.colour)}"/></${prefix}${name}>`;
    const { left, right, top, bottom } = borders;
    const sides = side("left", left) + side("right", right) + side("top", top) + side("bottom", bottom);
    return this.put("borders", `<${prefix}border>${sides}<${prefix}diagonal/></${prefix}border>`);
  }

  /** The styles part with what was added. */
  addedTo(xml: string): string {
    return LIST_NAMES.reduce((text, name) => {
      const { items, present } = this.lists.get(name)!;
      const last = itemsOf(text, name, name.slice(0, -1)).at(-1);
      if (last === undefined || items.length === present) return text;
      const added = text.slice(0, last.end) + items.slice(present).join("") + text.slice(last.end);
      return counted(added, name, items.length);
    }, xml);
  }

  private prefixOf(list: ListName): string {
    return new TagReader(this.lists.get(list)!.items[0] ?? "<none/>").next()!.prefix;
  }

  private put(list: ListName, item: string): number {
    const { items } = this.lists.get(list)!;
    const at = items.indexOf(item);
    return at < 0 ? items.push(item) - 1 : at;
  }
}

const LIST_NAMES = ["fonts", "fills", "borders"] as const;
type ListName = (typeof LIST_NAMES)[number];

/** The parts of a font in the order in which they stand. Source: ECMA-376 Part 1, 18.8.22 (font). */
const FONT_PARTS = [
  "b",
  "i",
  "strike",
  "condense",
  "extend",
  "outline",
  "shadow",
  "u",
  "vertAlign",
  "sz",
  "color",
  "name",
  "family",
  "charset",
  "scheme",
];

/** The list with its number of items said anew. */
export function counted(xml: string, list: string, length: number): string {
  return xml.replace(new RegExp(`(<(?:[\\w.-]+:)?${list}\\b[^>]*?\\scount=")\\d+`), `$1${length}`);
}

/** Where the items of a list stand in the styles part. */
export function itemsOf(xml: string, list: string, item: string): { readonly start: number; readonly end: number }[] {
  const items: { readonly start: number; readonly end: number }[] = [];
  const tags = new TagReader(xml);
  let inside = false;
  for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
    if (tag.name === list) inside = !tag.isClosing && !tag.isEmpty;
    else if (inside && tag.name === item && !tag.isClosing) {
      items.push({ start: tag.start, end: tag.isEmpty ? tag.end : tags.closingOf(tag).end });
    }
  }
  return items;
}

/** The elements in an element, by name. */
function childrenOf(xml: string): [string, string][] {
  const tags = new TagReader(xml);
  const outer = tags.next();
  const children: [string, string][] = [];
  for (let tag = tags.next(); tag !== undefined && tag.name !== outer?.name; tag = tags.next()) {
    const end = tag.isEmpty ? tag.end : tags.closingOf(tag).end;
    children.push([tag.name, xml.slice(tag.start, end)]);
  }
  return children;
}
