import { parseXml, type XmlElement } from "@cj-tech-master/excelts/xml";
import { WorkbookFileError } from "./file-error";
import { MOST_TAGS } from "./limits";

export type { XmlElement };

/** The root element of a part. */
export function parsePart(xml: string, path: string): XmlElement {
  if (!/^\s*</.test(xml)) throw new WorkbookFileError(`the part ${path} is damaged: it does not begin with a tag`);
  if (holdsMoreThan(xml, "<", MOST_TAGS)) throw new WorkbookFileError(`the part ${path} is too large to be read`);
  try {
    return parseXml(xml).root;
  } catch (error) {
    throw new WorkbookFileError(`the part ${path} is damaged: ${(error as Error).message}`);
  }
}

function holdsMoreThan(text: string, sign: string, most: number): boolean {
  let count = 0;
  for (let at = text.indexOf(sign); at >= 0; at = text.indexOf(sign, at + 1)) if (++count > most) return true;
  return false;
}

/** The name without its namespace prefix. */
export function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

export function childrenOf(element: XmlElement | undefined, name: string): XmlElement[] {
  return (element?.children ?? []).filter(
    (child): child is XmlElement => child.type === "element" && localName(child.name) === name,
  );
}

/** The descendant reached by these names, the first of each. */
export function descend(element: XmlElement | undefined, ...path: readonly string[]): XmlElement | undefined {
  return path.reduce<XmlElement | undefined>((at, name) => childrenOf(at, name)[0], element);
}

/** All descendants of that name, in the order of the text. */
export function descendantsOf(element: XmlElement, name: string): XmlElement[] {
  return element.children.flatMap((child) =>
    child.type === "element" ? [...(localName(child.name) === name ? [child] : []), ...descendantsOf(child, name)] : [],
  );
}

/** The text of an element and of all it holds. */
export function textOf(element: XmlElement | undefined): string {
  return (element?.children ?? [])
    .map((child) =>
      child.type === "text" || child.type === "cdata" ? child.value : child.type === "element" ? textOf(child) : "",
    )
    .join("");
}

/** An attribute by its name without prefix. */
export function attribute(element: XmlElement | undefined, name: string): string | undefined {
  if (element === undefined) return undefined;
  const plain = element.attributes[name];
  if (plain !== undefined) return plain;
  return Object.entries(element.attributes).find(([key]) => key.endsWith(`:${name}`))?.[1];
}

export function numberAttribute(element: XmlElement | undefined, name: string): number | undefined {
  const text = attribute(element, name);
  const value = text === undefined ? Number.NaN : Number(text);
  return Number.isFinite(value) ? value : undefined;
}

/** A switch of the file format: "1" or "true". */
export function flag(element: XmlElement | undefined, name: string, otherwise = false): boolean {
  const text = attribute(element, name);
  return text === undefined ? otherwise : text === "1" || text === "true";
}

/** Text of the file format, in which _x000A_ stands for a line feed. Source: ECMA-376 Part 1, 22.9.2.19 ST_Xstring. */
export function unescapeText(text: string): string {
  if (!text.includes("_x")) return text;
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}
