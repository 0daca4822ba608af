import { partText, relationshipsOf } from "../package";
import {
  attribute,
  childrenOf,
  descend,
  descendantsOf,
  flag,
  numberAttribute,
  parsePart,
  type XmlElement,
} from "../xml";

type Parts = Record<string, Uint8Array>;

const RELATIONSHIP = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";
const CONTENT_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";

/** Metadata with one entry, the one that marks a dynamic array. Source: [MS-XLSX] 2.3.11 (dynamic arrays). */
const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"' +
  ' xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1"' +
  ' pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1"' +
  ' cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
  '<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

/**
 * The number that cells of dynamic arrays carry in this file; the metadata that it stands for is added to the parts
 * where the file has none. Undefined where the file's own metadata has no place for it.
 */
export function dynamicArrayNumber(parts: Parts, workbookPath: string): string | undefined {
  const path = relationshipsOf(parts, workbookPath).find(({ kind }) => kind === "sheetMetadata")?.target;
  if (path !== undefined) return numberIn(parsePart(partText(parts, path), path));
  const folder = workbookPath.slice(0, workbookPath.lastIndexOf("/") + 1);
  parts[`${folder}metadata.xml`] = new TextEncoder().encode(METADATA);
  addToPart(parts, relationshipsPath(workbookPath), "</", (xml) => {
    const id = freeId(xml);
    return `<Relationship Id="${id}" Type="${RELATIONSHIP}" Target="metadata.xml"/>`;
  });
  addToPart(
    parts,
    CONTENT_TYPES,
    "</",
    () => `<Override PartName="/${folder}metadata.xml" ContentType="${CONTENT_TYPE}"/>`,
  );
  return "1";
}

const CONTENT_TYPES = "[Content_Types].xml";

function relationshipsPath(path: string): string {
  const slash = path.lastIndexOf("/") + 1;
  return `${path.slice(0, slash)}_rels/${path.slice(slash)}.rels`;
}

/** Puts text before the tag that closes a part's root. */
function addToPart(parts: Parts, path: string, closing: string, addition: (xml: string) => string): void {
  const xml = partText(parts, path);
  const end = xml.lastIndexOf(closing);
  parts[path] = new TextEncoder().encode(xml.slice(0, end) + addition(xml) + xml.slice(end));
}

function freeId(xml: string): string {
  let number = 1;
  while (xml.includes(`"rId${number}"`)) number++;
  return `rId${number}`;
}

function numberIn(root: XmlElement): string | undefined {
  const types = childrenOf(descend(root, "metadataTypes"), "metadataType").map((type) => attribute(type, "name"));
  const type = types.indexOf("XLDAPR") + 1;
  const future = childrenOf(root, "futureMetadata").find((element) => attribute(element, "name") === "XLDAPR");
  const isDynamic = (block: XmlElement | undefined): boolean =>
    block !== undefined && descendantsOf(block, "dynamicArrayProperties").some((element) => flag(element, "fDynamic"));
  const blocks = childrenOf(future, "bk");
  const place = childrenOf(descend(root, "cellMetadata"), "bk").findIndex((block) =>
    childrenOf(block, "rc").some(
      (record) => numberAttribute(record, "t") === type && isDynamic(blocks[numberAttribute(record, "v") ?? -1]),
    ),
  );
  return type > 0 && place >= 0 ? String(place + 1) : undefined;
}

/** Takes out the list of the order of calculation, which a spreadsheet program makes anew. */
export function dropCalculationChain(parts: Parts, workbookPath: string): void {
  const chain = relationshipsOf(parts, workbookPath).find(({ kind }) => kind === "calcChain")?.target;
  if (chain === undefined) return;
  Reflect.deleteProperty(parts, chain);
  replaceInPart(parts, relationshipsPath(workbookPath), /<(?:[\w.-]+:)?Relationship\b[^>]*\/calcChain"[^>]*\/>/);
  replaceInPart(parts, CONTENT_TYPES, /<(?:[\w.-]+:)?Override\b[^>]*calcChain\.xml"[^>]*\/>/);
}

function replaceInPart(parts: Parts, path: string, pattern: RegExp): void {
  parts[path] = new TextEncoder().encode(partText(parts, path).replace(pattern, ""));
}
