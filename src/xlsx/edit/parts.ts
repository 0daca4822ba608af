import { partText, relationshipsOf } from "../package";

export type Parts = Record<string, Uint8Array>;

const RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
const OFFICE_RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const CONTENT_TYPES = "[Content_Types].xml";

export function putPart(parts: Parts, path: string, xml: string): void {
  parts[path] = new TextEncoder().encode(xml);
}

/** Adds a part that another one points to. Returns the id of the relationship. */
export function addPart(
  parts: Parts,
  from: string,
  part: { readonly path: string; readonly xml: string; readonly kind: string; readonly contentType: string },
): string {
  putPart(parts, part.path, part.xml);
  const file = relationshipsPath(from);
  if (parts[file] === undefined) putPart(parts, file, `<Relationships xmlns="${RELATIONSHIPS}"></Relationships>`);
  const id = freeId(parts, from);
  beforeEnd(
    parts,
    file,
    `<Relationship Id="${id}" Type="${OFFICE_RELATIONSHIPS}/${part.kind}" Target="/${part.path}"/>`,
  );
  beforeEnd(parts, CONTENT_TYPES, `<Override PartName="/${part.path}" ContentType="${part.contentType}"/>`);
  return id;
}

/** A path that no part has yet, such as xl/tables/table3.xml. */
export function freePath(parts: Parts, start: string): string {
  let number = 1;
  while (parts[`${start}${number}.xml`] !== undefined) number++;
  return `${start}${number}.xml`;
}

/** Puts text before the tag that closes a part's root; an empty root is opened for it. */
function beforeEnd(parts: Parts, path: string, addition: string): void {
  const xml = partText(parts, path).replace(/<([\w.:-]+)([^<>]*)\/>\s*$/, "<$1$2></$1>");
  const end = xml.lastIndexOf("</");
  putPart(parts, path, xml.slice(0, end) + addition + xml.slice(end));
}

export function relationshipsPath(path: string): string {
  const slash = path.lastIndexOf("/") + 1;
  return `${path.slice(0, slash)}_rels/${path.slice(slash)}.rels`;
}

function freeId(parts: Parts, from: string): string {
  const used = new Set(relationshipsOf(parts, from).map(({ id }) => id));
  let number = 1;
  while (used.has(`rId${number}`) || partText(parts, relationshipsPath(from)).includes(`"rId${number}"`)) number++;
  return `rId${number}`;
}

/** An empty element by one of its attributes; the attribute's name may be a pattern. */
export function elementWith(name: string, attributeName: string, value: string): RegExp {
  const literal = value.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return new RegExp(`<(?:[\\w.-]+:)?${name}\\b[^>]*\\s${attributeName}="${literal}"[^>]*/>`);
}
