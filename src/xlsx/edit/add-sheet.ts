import type { ChangingPackage } from "../change-package";
import { partText } from "../package";
import { escapeText } from "../save/cell-xml";
import { attributeOf, TagReader } from "../save/tags";
import { addPart, freePath, putPart } from "./parts";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const CONTENT_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

/** Puts one more sheet into a workbook, blank and behind the others. */
export function addSheet({ parts, workbookPath }: ChangingPackage, name: string): void {
  const folder = workbookPath.slice(0, workbookPath.lastIndexOf("/") + 1);
  const xml = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="${MAIN}"><sheetData/></worksheet>`;
  const path = freePath(parts, `${folder}worksheets/sheet`);
  const id = addPart(parts, workbookPath, { path, xml, kind: "worksheet", contentType: CONTENT_TYPE });
  putPart(parts, workbookPath, withSheet(partText(parts, workbookPath), name, id));
}

function withSheet(workbook: string, name: string, id: string): string {
  const tags = new TagReader(workbook);
  let prefix = "";
  let last = 0;
  let end = workbook.length;
  for (let tag = tags.next(); tag !== undefined; tag = tags.next()) {
    if (tag.name === "sheet") last = Math.max(last, Number(attributeOf(tag.attributes, "sheetId")));
    if (tag.name !== "sheets" || !tag.isClosing) continue;
    prefix = tag.prefix;
    end = tag.start;
  }
  const attribute = escapeText(name).replaceAll('"', "&quot;");
  const sheet = `<${prefix}sheet name="${attribute}" sheetId="${last + 1}" xmlns:own="${RELATIONSHIPS}" own:id="${id}"/>`;
  return workbook.slice(0, end) + sheet + workbook.slice(end);
}
