import { SHEET_ROWS } from "../../cell-address";
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
import type { RowAsRead } from "../../table-port";
import type { ExcelTable } from "./describe";
import { readRows } from "./read-rows";

/** Checks edits against the workbook as it is, in one question to Excel where no row was moved meanwhile. */
export async function checkEdits(
  context: Excel.RequestContext,
  tables: readonly ExcelTable[],
  edits: readonly Edit[],
): Promise<EditPlan> {
  const asked = tables.map((table) => ({
    table,
    named: askNamed(context, table, edits),
    below: askBelow(context, table, edits),
  }));
  if (asked.some(({ named, below }) => named.length > 0 || below !== undefined)) await context.sync();
  const known: KnownTable[] = [];
  for (const { table, named } of asked) {
    known.push({ info: table.info, rows: await knownRows(context, table, named, edits) });
  }
  const plan = planEdits(edits, known);
  for (const part of plan.tables) {
    refuseFiltered(part);
    const { table, below } = asked.find((one) => one.table.info.name === part.info.name)!;
    refuseFull(table, part, below);
  }
  return plan;
}

interface NamedRow {
  readonly index: number;
  readonly range: Excel.Range;
}

/** The rows that edits name, where they stood. */
function askNamed(context: Excel.RequestContext, { id, info }: ExcelTable, edits: readonly Edit[]): NamedRow[] {
  const indexes = namedRows(edits, info.name).map(({ index }) => index);
  return indexes
    .filter((index) => index < info.rowCount)
    .map((index) => {
      const range = context.workbook.tables.getItem(id).getDataBodyRange().getRow(index);
      range.load("values");
      return { index, range };
    });
}

function namedRows(edits: readonly Edit[], table: string): RowAsRead[] {
  return edits.flatMap((edit) => (edit.kind !== "append" && tableOf(edit) === table ? [edit.row] : []));
}

/** The rows that edits name: where they stood, or the whole table if one of them stands elsewhere. */
async function knownRows(
  context: Excel.RequestContext,
  table: ExcelTable,
  asked: readonly NamedRow[],
  edits: readonly Edit[],
): Promise<(PlainCell[] | undefined)[]> {
  const { name, columns, rowCount } = table.info;
  const named = namedRows(edits, name);
  if (named.length === 0) return [];
  const rows: (PlainCell[] | undefined)[] = Array.from({ length: rowCount });
  for (const { index, range } of asked) rows[index] = plainRow(range.values[0]);
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

/** The cells below a table that new rows are to take; undefined where none are needed, or the sheet has not so many. */
function askBelow(context: Excel.RequestContext, table: ExcelTable, edits: readonly Edit[]): Excel.Range | undefined {
  const { info, bodyRows, hasTotals, row, id } = table;
  const added = edits.reduce(
    (sum, edit) => sum + (edit.kind === "append" && edit.table === info.name ? edit.rows.length : 0),
    0,
  );
  const count = info.rowCount + added - bodyRows;
  if (added === 0 || count <= 0 || hasTotals || row + bodyRows + count > SHEET_ROWS) return undefined;
  const below = context.workbook.tables.getItem(id).getDataBodyRange().getRowsBelow(count);
  below.load("values");
  return below;
}

/** The cells below a table must be free, or hold what an earlier attempt left there of the same rows. */
function refuseFull(table: ExcelTable, { info, append }: TablePlan, below: Excel.Range | undefined): void {
  const writes = append.filter(({ index }) => index >= table.bodyRows);
  if (writes.length === 0 || table.hasTotals) return;
  const found = below?.values.map(plainRow);
  const isRoom = found !== undefined && writes.every((write, at) => isFree(found[at] ?? [], write));
  if (!isRoom) throw tableFull(info.name, info.sheet);
}

/** Whether a row is blank, or already holds what is to be written. */
export function isFree(row: readonly PlainCell[], { cells }: RowWrite): boolean {
  return row.every((cell, column) => {
    const meant = cells[column];
    return cell === null || (meant !== undefined && standsFor(cell, plainValue(meant)));
  });
}
