import type { ChangingPackage } from "../change-package";
import { partText, relationshipsOf } from "../package";
import { worksheetEntries } from "../sheets";
import { elementWith, putPart, relationshipsPath } from "./parts";

/** Takes out the last sheet of a workbook, which holds nothing that another part needs. */
export function removeLastSheet(file: ChangingPackage): void {
  const { parts, workbookPath } = file;
  const path = worksheetEntries(file).at(-1)?.path;
  const id = relationshipsOf(parts, workbookPath).find(({ target }) => target === path)?.id;
  if (path === undefined || id === undefined) return;
  const dropped = (part: string, element: RegExp): void =>
    putPart(parts, part, partText(parts, part).replace(element, ""));
  dropped(workbookPath, elementWith("sheet", "[\\w.-]+:id", id));
  dropped(relationshipsPath(workbookPath), elementWith("Relationship", "Id", id));
  dropped("[Content_Types].xml", elementWith("Override", "PartName", `/${path}`));
  for (const part of [path, relationshipsPath(path)]) Reflect.deleteProperty(parts, part);
}
