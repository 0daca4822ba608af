import type { TableDefinition } from "../workbook/table-definition";
import { cowsTable, findingsTable, pricesTable, scoresTable, testsTable } from "../workbook/tables";
import { wordsTable } from "../workbook/words-table";

/** The tables whose columns the formulas of blocks name. */
const tables: readonly TableDefinition[] = [cowsTable, findingsTable, scoresTable, testsTable, pricesTable, wordsTable];

/** Our heading of a column. */
export function headingOf(table: string, key: string): string {
  const heading = tables.find(({ name }) => name === table)?.columns.find((column) => column.key === key)?.heading;
  if (heading === undefined) throw new Error(`our table ${table} has no column ${key}`);
  return heading;
}
