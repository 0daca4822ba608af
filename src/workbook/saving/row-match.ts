import { shown } from "../../core/shared/domain-error";
import type { PlainCell } from "../port";
import { TableError } from "../table-error";
import { type ColumnInfo, isDay, type RowAsRead, type TableInfo, type TypedValue } from "../table-port";

/** Rows of a table by index; one that the host has not read is undefined. */
export type KnownRows = readonly (readonly PlainCell[] | undefined)[];

/** What reading a cell gives after a value was written to it. */
export function plainValue(value: TypedValue): PlainCell {
  return isDay(value) ? value.day : value;
}

/** A cell as any host hands it over: blank text is a blank. */
export function plainCell(raw: unknown): PlainCell {
  if (typeof raw === "number" || typeof raw === "boolean") return raw;
  return typeof raw === "string" && raw !== "" ? raw : null;
}

/** Whether a row holds in its typed columns what was read. Columns that one side does not know are passed over. */
export function holds(
  columns: readonly ColumnInfo[],
  row: readonly PlainCell[],
  cells: Readonly<Record<string, PlainCell>>,
  same: (is: PlainCell, was: PlainCell) => boolean = (is, was) => is === was,
): boolean {
  let compared = false;
  const agrees = columns.every(({ heading, calculated }, column) => {
    if (calculated || !Object.hasOwn(cells, heading)) return true;
    compared = true;
    return same(row[column] ?? null, cells[heading] ?? null);
  });
  return agrees && compared;
}

/** Index of the row that still holds what was read: where it stood, or else anywhere. `taken` rows are passed over. */
export function findRow(
  columns: readonly ColumnInfo[],
  rows: KnownRows,
  { index, cells }: RowAsRead,
  taken: ReadonlySet<number> = new Set(),
): number | undefined {
  const matches = (at: number): boolean => {
    const row = rows[at];
    return row !== undefined && !taken.has(at) && holds(columns, row, cells);
  };
  if (matches(index)) return index;
  const found = rows.findIndex((_, at) => matches(at));
  return found < 0 ? undefined : found;
}

/** Why a row was not found, naming the cell that differs where that can be told. */
export function rowChanged({ name, columns }: TableInfo, rows: KnownRows, { index, cells }: RowAsRead): TableError {
  const row = rows[index];
  const compared = columns.flatMap(({ heading, calculated }, column) =>
    calculated || !Object.hasOwn(cells, heading)
      ? []
      : [{ heading, was: cells[heading] ?? null, is: row?.[column] ?? null }],
  );
  const [first, ...more] = compared.filter(({ was, is }) => was !== is);
  const mostlySame = first !== undefined && more.length + 1 <= compared.length / 2;
  const what = mostlySame
    ? `row ${index + 1}, column "${first.heading}", held ${shown(first.was)} and now holds ${shown(first.is)}`
    : `row ${index + 1} was deleted or wholly changed`;
  return new TableError("changed", `Someone changed table ${name} meanwhile: ${what}. Nothing was written.`);
}

/** Rows down to the last one that holds anything. */
export function filledRowCount(rows: KnownRows): number {
  let count = rows.length;
  while (count > 0 && rows[count - 1]?.some((cell) => cell !== null) !== true) count--;
  return count;
}

/** Where a host broke off, it may not have come to mark a word as text that its language has for TRUE. */
export function standsFor(is: PlainCell, meant: PlainCell): boolean {
  return is === meant || (typeof meant === "string" && typeof is === "boolean");
}
