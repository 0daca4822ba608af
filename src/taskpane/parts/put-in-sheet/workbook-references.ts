import type { References } from "../../../blocks/expression/names";
import { ownReferences } from "../../../blocks/references/own";
import { mappingTable } from "../../../workbook/mapping-table";
import type { WorkbookWith } from "../../pane-workbook";
import { today as dayOfComputer } from "../../today";

/** How formulas name the lists of a workbook: our own tables, or those of the farm where it holds a mapping. */
export async function referencesOf(workbook: WorkbookWith<"tables" | "book">): Promise<References> {
  const tables = await workbook.tables.listTables();
  // A workbook with a day of its own holds it in a cell; without one, formulas count from the computer's day.
  const hasAsOf = workbook.today() !== dayOfComputer();
  if (!tables.some(({ name }) => name === mappingTable.name)) return ownReferences(tables, hasAsOf);
  const { farmReferences } = await import(/* webpackChunkName: "farm-references" */ "./farm-references");
  return farmReferences(workbook, tables, hasAsOf);
}
