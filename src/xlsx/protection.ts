import { partText, relationshipsOf, type WorkbookPackage } from "./package";
import { attribute, childrenOf, descend, flag, parsePart } from "./xml";
import { splitSheet } from "./read/sheet";
import { worksheetEntries } from "./sheets";

/** What keeps sheets and tables of a file from being changed at will. */
export interface Protection {
  /** Names of the protected sheets. */
  readonly sheets: ReadonlySet<string>;
  /** Names of the tables in which a filter hides rows. */
  readonly filteredTables: ReadonlySet<string>;
  /** Names of the sheets that have a filter of their own, outside tables. */
  readonly filteredSheets: ReadonlySet<string>;
}

export function readProtection(file: WorkbookPackage): Protection {
  const sheets = new Set<string>();
  const filteredTables = new Set<string>();
  const filteredSheets = new Set<string>();
  for (const { name, path } of worksheetEntries(file)) {
    const root = parsePart(splitSheet(partText(file.parts, path)).shell, path);
    if (flag(descend(root, "sheetProtection"), "sheet")) sheets.add(name);
    if (descend(root, "autoFilter") !== undefined) filteredSheets.add(name);
    for (const { kind, target } of relationshipsOf(file.parts, path)) {
      if (kind !== "table") continue;
      const table = parsePart(partText(file.parts, target), target);
      const tableName = attribute(table, "displayName") ?? attribute(table, "name");
      const isFiltered = childrenOf(descend(table, "autoFilter"), "filterColumn").length > 0;
      if (isFiltered && tableName !== undefined) filteredTables.add(tableName);
    }
  }
  return { sheets, filteredTables, filteredSheets };
}
