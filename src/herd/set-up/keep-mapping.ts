import { mappingTable } from "../../workbook/mapping-table";
import type { TableContent } from "../../workbook/table-port";
import type { Mapping } from "../mapping/mapping";
import { mappingRows } from "../mapping/store";
import { appendOf, type KeyedRow, keyedRows, newTable, type TableWrites, updateOf } from "./table-writes";

/**
 * What has to be written so that the Mapping table holds this mapping and no other. `content` is the table as it
 * stands, undefined where there is none. A row that stands for the same value of the same list is kept in its place,
 * with what the farm wrote beside it; rows that are not needed any more become blank and are filled first.
 */
export function mappingWrites(mapping: Mapping, content: TableContent | undefined): TableWrites {
  const wanted: readonly KeyedRow[] = mappingRows(mapping);
  if (content === undefined) return { create: newTable(mappingTable, wanted) };
  const rows = keyedRows(mappingTable, content);
  const places = new Map<string, number>();
  rows.forEach((row, index) => {
    if (!isBlank(row) && !places.has(keyOf(row))) places.set(keyOf(row), index);
  });
  const kept = new Set(wanted.map((row) => places.get(keyOf(row))));
  const free = rows.flatMap((_, index) => (kept.has(index) ? [] : [index]));
  const changes = [];
  const added: KeyedRow[] = [];
  for (const row of wanted) {
    const index = places.get(keyOf(row)) ?? free.shift();
    if (index === undefined) added.push(row);
    else
      changes.push(
        updateOf(mappingTable, content, index, { ...row, note: rows[index]!["note"] ?? row["note"] ?? null }),
      );
  }
  const blank = Object.fromEntries(mappingTable.columns.map(({ key }) => [key, null]));
  for (const index of free) if (!isBlank(rows[index]!)) changes.push(updateOf(mappingTable, content, index, blank));
  return { changes: [...changes.filter((change) => change !== undefined), ...appendOf(mappingTable, content, added)] };
}

/** What a row of the table is about: a value of ours in one list of the farm. */
function keyOf({ table, value, sheet, source }: KeyedRow): string {
  return [table, value, sheet, source ?? ""].join("\n").toLowerCase();
}

function isBlank(row: KeyedRow): boolean {
  return Object.values(row).every((cell) => cell === null);
}
