import { zipSync } from "fflate";
import { openPackage, partText, relationshipsOf, type WorkbookPackage } from "../package";
import { worksheetEntries } from "../sheets";
import { attribute, parsePart } from "../xml";
import { elementWith, type Parts, putPart, relationshipsPath } from "./parts";

/** The workbook without a table; its cells stay as they are. The same bytes where it has no such table. */
export function removeTable(original: Uint8Array, name: string): Uint8Array {
  const file = openPackage(original);
  const found = findTable(file, name);
  if (found === undefined) return original;
  const { sheetPath, path, id } = found;
  const parts: Parts = { ...file.parts };
  const dropped = (part: string, element: RegExp): void =>
    putPart(parts, part, partText(parts, part).replace(element, ""));
  dropped(relationshipsPath(sheetPath), elementWith("Relationship", "Id", id));
  dropped("[Content_Types].xml", elementWith("Override", "PartName", `/${path}`));
  putPart(parts, sheetPath, withoutTablePart(partText(parts, sheetPath), id));
  const left = Object.entries(parts).filter(([part]) => part !== path);
  return zipSync(Object.fromEntries(left), { level: 0 });
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
