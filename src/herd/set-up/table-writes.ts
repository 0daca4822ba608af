import type { PlainCell } from "../../workbook/port";
import { inputColumns, type TableDefinition } from "../../workbook/table-definition";
import { type Change, type NewRow, type NewTable, rowAsRead, type TableContent } from "../../workbook/table-port";
import { foldHeading } from "../read-rows";

/** A row of a table of ours by key. */
export type KeyedRow = Readonly<Record<string, PlainCell>>;

/** What has to be written for a table to hold what it should: the table itself, or changes of the one that is there. */
export type TableWrites = { readonly create: NewTable } | { readonly changes: readonly Change[] };

/** A table that is to be made with these rows, on a sheet of its own name. */
export function newTable(definition: TableDefinition, rows: readonly KeyedRow[]): NewTable {
  const columns = inputColumns(definition);
  return {
    name: definition.name,
    sheet: definition.name,
    columns: columns.map(({ heading }) => ({ heading })),
    rows: rows.map((row) => Object.fromEntries(columns.map(({ key, heading }) => [heading, row[key] ?? null]))),
  };
}

/** The key of each column of a table as it stands; undefined for columns of the farm's own. */
export function keysOf(definition: TableDefinition, { columns }: TableContent): readonly (string | undefined)[] {
  return columns.map(({ heading, calculated }) =>
    calculated
      ? undefined
      : definition.columns.find((column) => foldHeading(column.heading) === foldHeading(heading))?.key,
  );
}

/** The rows of a table by key. */
export function keyedRows(definition: TableDefinition, content: TableContent): readonly KeyedRow[] {
  const keys = keysOf(definition, content);
  return content.rows.map((cells) =>
    Object.fromEntries(
      keys.flatMap((key, column) => (key === undefined ? [] : [[key, cells[column] ?? null] as const])),
    ),
  );
}

/** The change that makes a row hold these values under the table's headings; undefined where it holds them already. */
export function updateOf(
  definition: TableDefinition,
  content: TableContent,
  index: number,
  row: KeyedRow,
): Change | undefined {
  const set: Record<string, PlainCell> = {};
  keysOf(definition, content).forEach((key, column) => {
    const is = content.rows[index]?.[column] ?? null;
    if (key !== undefined && Object.hasOwn(row, key) && row[key] !== is)
      set[content.columns[column]!.heading] = row[key]!;
  });
  return Object.keys(set).length === 0 ? undefined : { update: rowAsRead(content, index), set };
}

/** New rows under the headings that the table has. */
export function appendOf(
  definition: TableDefinition,
  content: TableContent,
  rows: readonly KeyedRow[],
): readonly Change[] {
  if (rows.length === 0) return [];
  const keys = keysOf(definition, content);
  const named = rows.map((row): NewRow =>
    Object.fromEntries(
      keys.flatMap((key, column) =>
        key === undefined || (row[key] ?? null) === null
          ? []
          : [[content.columns[column]!.heading, row[key]!] as const],
      ),
    ),
  );
  return [{ append: content.name, rows: named }];
}
