import type { MobilityScale } from "../../core/claws/mobility";
import { mappingTable } from "../../workbook/mapping-table";
import { TableError } from "../../workbook/table-error";
import type { TablePort } from "../../workbook/table-port";
import type { MappedSource } from "../mapping/mapping";
import { readMapping } from "../mapping/store";

/**
 * The scale on which the mobility scores of a workbook are written: 1-5 where its mapping says so, else 0-3. Scores
 * are never converted from one scale into the other.
 */
export async function scaleOf(tables: TablePort): Promise<MobilityScale> {
  const isThere = (await tables.listTables()).some(({ name }) => name === mappingTable.name);
  return isThere ? scaleIn(readMapping(await tables.readTable(mappingTable.name)).mapping.sources) : "0-3";
}

/** The one scale of all lists of scores. Throws where two lists are on two scales: one table cannot hold both. */
export function scaleIn(sources: readonly MappedSource[]): MobilityScale {
  const scales = sources
    .filter(({ table }) => table === "Scores")
    .map(({ columns }): MobilityScale => (columns.some(({ unit }) => unit === "1-5") ? "1-5" : "0-3"));
  if (new Set(scales).size > 1) {
    throw new TableError("unwritable", "Scores: one list is on the scale 0-3 and another on 1-5, which cannot be compared; map only one of them under Set up."); // oxfmt-ignore
  }
  return scales[0] ?? "0-3";
}
