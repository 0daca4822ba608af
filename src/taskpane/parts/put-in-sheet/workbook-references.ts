import type { References } from "../../../blocks/expression/names";
import { ownReferences } from "../../../blocks/references/own";
import { mappingTable } from "../../../workbook/mapping-table";
import type { WorkbookWith } from "../../pane-workbook";

/** How formulas name the lists of a workbook: our own tables, or those of the farm where it holds a mapping. */
export async function referencesOf(workbook: WorkbookWith<"tables" | "book">): Promise<References> {
  const tables = await workbook.tables.listTables();
  // Asked anew, and not told from the day: a cell that holds today's date, or =TODAY(), may hold another tomorrow.
  const hasAsOf = (await workbook.holdsItsDay?.()) ?? false;
  if (!tables.some(({ name }) => name === mappingTable.name)) return ownReferences(tables, hasAsOf);
  const { farmReferences } = await import(/* webpackChunkName: "farm-references" */ "./farm-references");
  return farmReferences(workbook, tables, hasAsOf);
}
