import { zipSync } from "fflate";
import { openPackage, partText, relationshipsOf } from "../package";
import { worksheetEntries } from "../sheets";
import { elementWith, type Parts, putPart, relationshipsPath } from "./parts";

/** The workbook without its last sheet, which holds nothing that another part needs. */
export function removeLastSheet(original: Uint8Array): Uint8Array {
  const file = openPackage(original);
  const { workbookPath } = file;
  const path = worksheetEntries(file).at(-1)?.path;
  const id = relationshipsOf(file.parts, workbookPath).find(({ target }) => target === path)?.id;
  if (path === undefined || id === undefined) return original;
  const parts: Parts = { ...file.parts };
  const dropped = (part: string, element: RegExp): void =>
    putPart(parts, part, partText(parts, part).replace(element, ""));
  dropped(workbookPath, elementWith("sheet", "[\\w.-]+:id", id));
  dropped(relationshipsPath(workbookPath), elementWith("Relationship", "Id", id));
  dropped("[Content_Types].xml", elementWith("Override", "PartName", `/${path}`));
  const left = Object.entries(parts).filter(([part]) => part !== path && part !== relationshipsPath(path));
  return zipSync(Object.fromEntries(left), { level: 0 });
}
