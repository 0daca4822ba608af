import { foldHeading } from "../../herd/read-rows";
import type { TableInfo } from "../../workbook/table-port";
import { AS_OF } from "../../workbook/tables";
import { missingColumn, missingTable } from "../expression/columns";
import type { References } from "../expression/names";
import { headingOf } from "../tables";

/** How formulas name the tables of a workbook that are our own. */
export function ownReferences(tables: readonly TableInfo[], hasAsOf: boolean): References {
  const byName = new Map(tables.map((table) => [table.name, table]));
  const column = (table: string, key: string): string => {
    const known = byName.get(table);
    const wanted = foldHeading(headingOf(table, key));
    const found = known?.columns.find(({ heading }) => foldHeading(heading) === wanted);
    if (found === undefined) throw missingColumn(table, key, known !== undefined);
    return tableColumn(table, found.heading);
  };
  return {
    column,
    range: column,
    ranges: (table, key) => [column(table, key)],
    settings(table) {
      if (!byName.has(table)) throw missingTable(table);
      return table;
    },
    asOf: asOfText(hasAsOf),
    scale: "0-3",
    notes: [],
  };
}

/** The cell of the workbook that holds its day, or the day of the computer. */
function asOfText(hasAsOf: boolean): string {
  return hasAsOf ? AS_OF : "TODAY()";
}

/** A column of a table as a formula writes it; signs that have a meaning in such a reference are marked. */
export function tableColumn(table: string, heading: string): string {
  return `${table}[${heading.replace(/[[\]#'@]/g, "'$&")}]`;
}
