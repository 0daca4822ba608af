import type { ChangingPackage } from "../change-package";
import { partText, relationshipsOf, type WorkbookPackage } from "../package";
import { worksheetEntries } from "../sheets";
import { attribute, parsePart } from "../xml";
import { elementWith, putPart, relationshipsPath } from "./parts";

/** Takes a table out of a workbook, if it has one of that name; its cells stay as they are. */
export function removeTable(file: ChangingPackage, name: string): void {
  const found = findTable(file, name);
  if (found === undefined) return;
  const { sheetPath, path, id } = found;
  const { parts } = file;
  const dropped = (part: string, element: RegExp): void =>
    putPart(parts, part, partText(parts, part).replace(element, ""));
  dropped(relationshipsPath(sheetPath), elementWith("Relationship", "Id", id));
  dropped("[Content_Types].xml", elementWith("Override", "PartName", `/${path}`));
  putPart(parts, sheetPath, withoutTablePart(partText(parts, sheetPath), id));
  Reflect.deleteProperty(parts, path);
}

function findTable(
  file: WorkbookPackage,
  name: string,
): { readonly sheetPath: string; readonly path: string; readonly id: string } | undefined {
  for (const { path: sheetPath } of worksheetEntries(file)) {
    for (const { kind, target, id } of relationshipsOf(file.parts, sheetPath)) {
      if (kind !== "table") continue;
      const root = parsePart(partText(file.parts, target), target);
      if ((attribute(root, "displayName") ?? attribute(root, "name")) === name) return { sheetPath, path: target, id };
    }
  }
  return undefined;
}

/** A sheet without tables has no list of them. */
function withoutTablePart(sheet: string, id: string): string {
  const left = sheet.replace(new RegExp(`<(?:[\\w.-]+:)?tablePart\\b[^>]*:id="${id}"[^>]*/>`), "");
  const emptied = left.replace(/<((?:[\w.-]+:)?tableParts)\b[^>]*>\s*<\/\1>/, "");
  if (emptied !== left) return emptied;
  return left.replace(
    /(<(?:[\w.-]+:)?tableParts\b[^>]*?\scount=")(\d+)"/,
    (_, start: string, count: string) => `${start}${Number(count) - 1}"`,
  );
}
