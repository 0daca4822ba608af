import type { PlainCell } from "../../port";
import {
  type EditPlan,
  type KnownTable,
  planEdits,
  type RowWrite,
  tableOf,
  type TablePlan,
} from "../../saving/edit-plan";
import { holds, plainValue, standsFor } from "../../saving/row-match";
import { tableFiltered, tableFull } from "../../table-error";
import type { Edit } from "../../table-host";
import { plainRow } from "./cells";
import type { ExcelTable } from "./describe";
import { readRows } from "./read-rows";

/** Rows that a sheet has. Source: Microsoft, "Excel specifications and limits". */
const SHEET_ROWS = 1_048_576;

/** Checks edits against the workbook as it is. Throws a TableError where one is refused. */
export async function checkEdits(
  context: Excel.RequestContext,
  tables: readonly ExcelTable[],
  edits: readonly Edit[],
): Promise<EditPlan> {
  const known: KnownTable[] = [];
  for (const table of tables) known.push({ info: table.info, rows: await knownRows(context, table, edits) });
  const plan = planEdits(edits, known);
  for (const part of plan.tables) {
    const table = tables.find(({ info }) => info.name === part.info.name)!;
    refuseFiltered(part);
    await checkRoom(context, table, part);
  }
  return plan;
}

/** The rows that edits name: where they stood, or the whole table if one of them stands elsewhere. */
async function knownRows(
  context: Excel.RequestContext,
  table: ExcelTable,
  edits: readonly Edit[],
): Promise<(PlainCell[] | undefined)[]> {
  const { name, columns, rowCount } = table.info;
  const named = edits.flatMap((edit) => (edit.kind !== "append" && tableOf(edit) === name ? [edit.row] : []));
  if (named.length === 0) return [];
  const body = context.workbook.tables.getItem(table.id).getDataBodyRange();
  const inside = named.filter(({ index }) => index < rowCount);
  const asked = inside.map(({ index }) => body.getRow(index).load("values"));
  await context.sync();
  const rows: (PlainCell[] | undefined)[] = Array.from({ length: rowCount });
  inside.forEach(({ index }, at) => {
    rows[index] = plainRow(asked[at]!.values[0]);
  });
  const allThere = named.every(({ index, cells }) => rows[index] !== undefined && holds(columns, rows[index], cells));
  return allThere ? rows : (await readRows(context, table)).rows;
}

/** Excel takes no rows out of a filtered table; rows at its end can be emptied instead. */
function refuseFiltered({ info, remove }: TablePlan): void {
  if (info.filtered === true && !isTail(remove, info.rowCount)) throw tableFiltered(info.name);
}

function isTail(indexes: readonly number[], rowCount: number): boolean {
  return indexes.every((index, at) => index === rowCount - indexes.length + at);
}

/** The cells below a table must be free, or hold what an earlier attempt left there of the same rows. */
async function checkRoom(context: Excel.RequestContext, table: ExcelTable, { info, append }: TablePlan): Promise<void> {
  const below = append.filter(({ index }) => index >= table.bodyRows);
  if (below.length === 0 || table.hasTotals) return;
  const full = tableFull(info.name, info.sheet);
  if (table.row + table.bodyRows + below.length > SHEET_ROWS) throw full;
  const cells = context.workbook.tables.getItem(table.id).getDataBodyRange().getRowsBelow(below.length);
  cells.load("values");
  await context.sync();
  const found = cells.values.map(plainRow);
  if (!below.every((write, at) => isFree(found[at] ?? [], write))) throw full;
}

/** Whether a row is blank, or already holds what is to be written. */
export function isFree(row: readonly PlainCell[], { cells }: RowWrite): boolean {
  return row.every((cell, column) => {
    const meant = cells[column];
    return cell === null || (meant !== undefined && standsFor(cell, plainValue(meant)));
  });
}
