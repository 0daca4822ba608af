import { WorkbookFileError } from "./file-error";
import { partText, relationshipsOf, type WorkbookPackage } from "./package";
import { attribute, childrenOf, descend, parsePart, type XmlElement } from "./xml";

/** A sheet of cells as the workbook part lists it. */
export interface WorksheetEntry {
  readonly element: XmlElement;
  readonly name: string;
  readonly path: string;
  /** Its place among all sheets, chart sheets too. */
  readonly position: number;
}

/** The sheets of cells in the order of their tabs; `root` is the root of the workbook part. */
export function worksheetEntries({ parts, workbookPath }: WorkbookPackage, root?: XmlElement): WorksheetEntry[] {
  const workbook = root ?? parsePart(partText(parts, workbookPath), workbookPath);
  const related = relationshipsOf(parts, workbookPath);
  const entries = childrenOf(descend(workbook, "sheets"), "sheet").flatMap((element, position) => {
    const target = related.find(({ id }) => id === relationshipId(element));
    const name = attribute(element, "name") ?? "";
    return target?.kind === "worksheet" ? [{ element, name, path: target.target, position }] : [];
  });
  const names = entries.map(({ name }) => name.toLowerCase());
  if (new Set(entries.map(({ path }) => path)).size < entries.length || new Set(names).size < entries.length)
    throw new WorkbookFileError("the file is damaged: two of its sheets are the same one");
  return entries;
}

/** The id has the relationships' namespace prefix, which files are free to choose. */
function relationshipId(element: XmlElement): string | undefined {
  return Object.entries(element.attributes).find(([name]) => name.endsWith(":id"))?.[1];
}
