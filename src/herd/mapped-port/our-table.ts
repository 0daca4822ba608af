import { shown } from "../../core/shared/domain-error";
import { cellAddress } from "../../workbook/cell-address";
import type { PlainCell } from "../../workbook/port";
import { filledRowCount, findRow, rowChanged } from "../../workbook/saving/row-match";
import { TableError } from "../../workbook/table-error";
import type { ColumnInfo, RowAsRead, TableContent, TableInfo } from "../../workbook/table-port";
import { placeOf } from "../mapping/mapping";
import type { HerdTableName } from "../mapping/targets";
import { foldHeading } from "../read-rows";
import type { FarmList } from "./farm-list";
import { listToGrow } from "./list-to-grow";

/** A row of one of the farm's lists. */
export interface FarmRow {
  readonly list: FarmList;
  /** Counted from 0 in its list. */
  readonly index: number;
}

/** One or more lists of the farm as one table of ours. */
export interface OurTable {
  readonly lists: readonly FarmList[];
  readonly content: TableContent;
  /** The row of the farm behind a row of ours. */
  rowAt(index: number): FarmRow | undefined;
}

/** The lists one below the other under our headings, each without the blank rows at its end. */
export function ourTable(name: HerdTableName, lists: readonly FarmList[], info: Partial<TableInfo>): OurTable {
  const columns = columnsOf(lists);
  const counts = lists.map(({ farmRows }) => filledRowCount(farmRows));
  const rows = lists.flatMap((list, at) => rowsUnder([...columns.keys()], list, counts[at]!));
  return {
    lists,
    content: {
      ...info,
      name,
      sheet: lists[0]?.source.sheet ?? "",
      columns: [...columns.values()],
      rowCount: rows.length,
      rows,
    },
    rowAt: (index) => {
      let first = 0;
      for (const [at, list] of lists.entries()) {
        if (index < first + counts[at]!) return { list, index: index - first };
        first += counts[at]!;
      }
      return undefined;
    },
  };
}

/** The columns of all lists by folded heading; those that a new row cannot fill are marked. */
function columnsOf(lists: readonly FarmList[]): ReadonlyMap<string, ColumnInfo> {
  const columns = new Map<string, ColumnInfo>();
  for (const { heading, calculated } of lists.flatMap((list) => list.columns)) {
    const folded = foldHeading(heading);
    if (!columns.has(folded)) columns.set(folded, { heading, calculated });
  }
  if (lists.length < 2) return columns;
  const filled = new Set(listToGrow(lists).columns.flatMap(({ heading, calculated }) => (calculated ? [] : [foldHeading(heading)]))); // oxfmt-ignore
  for (const [folded, column] of columns) {
    if (!column.calculated && !filled.has(folded)) columns.set(folded, { ...column, oldRowsOnly: true });
  }
  return columns;
}

function rowsUnder(headings: readonly string[], { columns, rows }: FarmList, count: number): (readonly PlainCell[])[] {
  const folded = columns.map(({ heading }) => foldHeading(heading));
  const places = headings.map((heading) => folded.indexOf(heading));
  const inOrder = places.length === columns.length && places.every((place, at) => place === at);
  const kept = rows.slice(0, count);
  return inOrder ? kept : kept.map((row) => places.map((place) => row[place] ?? null));
}

/**
 * The row of the farm that still holds what was read. `lastRead` is the table as it was read before: where it has the
 * row, the farm's own cells must be as they were, not only what they stand for.
 */
export function farmRowOf(
  table: OurTable,
  row: RowAsRead,
  lastRead: OurTable | undefined,
  taken: Set<number>,
): FarmRow {
  const { content } = table;
  const index = findRow(content.columns, content.rows, row, taken);
  const found = index === undefined ? undefined : table.rowAt(index);
  if (index === undefined || found === undefined) throw rowChanged(content, content.rows, row);
  taken.add(index);
  const before = lastRead === undefined ? undefined : readAs(lastRead, row);
  if (before !== undefined) refuseChanged(before, found);
  return found;
}

/** The row of the farm that was read as this one, where the last reading has it in its place. */
function readAs({ content, rowAt }: OurTable, row: RowAsRead): FarmRow | undefined {
  const then = content.rows[row.index];
  const isThere = then !== undefined && findRow(content.columns, [then], { ...row, index: 0 }) === 0;
  return isThere ? rowAt(row.index) : undefined;
}

function refuseChanged(before: FarmRow, now: FarmRow): void {
  const { farmColumns, source } = now.list;
  if (before.list.farmColumns.length !== farmColumns.length) return;
  farmColumns.forEach(({ heading, calculated }, place) => {
    const [was, is] = [farmCell(before, place), farmCell(now, place)];
    if (calculated || was === is) return;
    throw new TableError(
      "changed",
      `Someone changed ${placeOf(source)} meanwhile: ${cellText(now, place)}, column "${heading}", held ${shown(was)} and now holds ${shown(is)}. Nothing was written.`,
    );
  });
}

/** A cell of a plain range by its address, one of a table by its row there. */
function cellText({ list: { block }, index }: FarmRow, place: number): string {
  if (block === undefined) return `row ${index + 1}`;
  return `cell ${cellAddress({ row: block.firstRow + index, column: block.columns[place]!.column })}`;
}

/** A cell of the farm's row as it stands. */
export function farmCell({ list, index }: FarmRow, place: number): PlainCell {
  return list.farmRows[index]?.[place] ?? null;
}
