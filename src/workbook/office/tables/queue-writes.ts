import { isDateFormat, ISO_DATE } from "../../number-format";
import type { RowWrite, TablePlan } from "../../saving/edit-plan";
import { isDay } from "../../table-port";
import { enteredValue } from "./cells";
import type { ExcelTable } from "./describe";

/** Rows that were written together, as they were just before and are just after. */
export interface WrittenRows {
  readonly kind: "set" | "append";
  readonly table: ExcelTable;
  readonly writes: readonly RowWrite[];
  /** Absent where the rows were made new. */
  readonly before?: Excel.Range;
  readonly after: Excel.Range;
}

/** A row that was taken out, as it was just before. */
export interface RemovedRow {
  readonly table: ExcelTable;
  readonly index: number;
  readonly before: Excel.Range;
}

export interface Written {
  readonly rows: readonly WrittenRows[];
  readonly removed: readonly RemovedRow[];
  /** The bodies of the tables after the writing. */
  readonly bodies: ReadonlyMap<ExcelTable, Excel.Range>;
}

/**
 * Queues all writes of a plan for one batch. What stands in the cells is read in the same batch, just before it is
 * written over: nobody can come in between unseen. Places are told by table, so that a table may have moved.
 */
export function queueWrites(
  context: Excel.RequestContext,
  plans: readonly TablePlan[],
  tables: readonly ExcelTable[],
): Written {
  const rows: WrittenRows[] = [];
  const removed: RemovedRow[] = [];
  const bodies = new Map<ExcelTable, Excel.Range>();
  for (const plan of plans) {
    const table = tables.find(({ info }) => info.name === plan.info.name)!;
    for (const write of plan.set) rows.push(queueRows(context, table, "set", [write]));
    const inside = plan.append.filter(({ index }) => index < table.bodyRows);
    const below = plan.append.filter(({ index }) => index >= table.bodyRows);
    if (inside.length > 0) rows.push(queueRows(context, table, "append", inside));
    if (below.length > 0) rows.push(queueNewRows(context, table, below));
    for (const index of [...plan.remove].reverse()) removed.push(queueRemoval(context, table, index));
    const body = itemOf(context, table).getDataBodyRange();
    body.load("rowIndex,rowCount");
    bodies.set(table, body);
  }
  return { rows, removed, bodies };
}

export function itemOf(context: Excel.RequestContext, { id }: ExcelTable): Excel.Table {
  return context.workbook.tables.getItem(id);
}

function queueRows(
  context: Excel.RequestContext,
  table: ExcelTable,
  kind: "set" | "append",
  writes: readonly RowWrite[],
): WrittenRows {
  const place = (): Excel.Range =>
    itemOf(context, table)
      .getDataBodyRange()
      .getRow(writes[0]!.index)
      .getResizedRange(writes.length - 1, 0);
  return { kind, table, writes, ...queueOver(place, table, writes) };
}

/** Rows right below a table join it. Above a totals row there is no free row: one is put in. */
function queueNewRows(context: Excel.RequestContext, table: ExcelTable, writes: readonly RowWrite[]): WrittenRows {
  const count = writes.length;
  if (!table.hasTotals) {
    const place = (): Excel.Range => itemOf(context, table).getDataBodyRange().getRowsBelow(count);
    return { kind: "append", table, writes, ...queueOver(place, table, writes) };
  }
  const blank = writes.map(() => table.info.columns.map(() => ""));
  itemOf(context, table).rows.add(undefined, blank);
  const lastRow = itemOf(context, table).getDataBodyRange().getLastRow();
  const after = lastRow.getOffsetRange(1 - count, 0).getResizedRange(count - 1, 0);
  fill(after, table, writes);
  return { kind: "append", table, writes, after };
}

/** The place is told twice before anything is written: once for what stands there, once for what is put there. */
function queueOver(place: () => Excel.Range, table: ExcelTable, writes: readonly RowWrite[]) {
  const before = place();
  const after = place();
  before.load("values");
  fill(after, table, writes);
  return { before, after };
}

function fill(range: Excel.Range, table: ExcelTable, writes: readonly RowWrite[]): void {
  const columns = table.info.columns.map((_, column) => column);
  range.values = writes.map(({ cells }) => columns.map((column) => enteredValue(cells[column])));
  if (writes.some(({ cells }) => cells.some(isDay))) {
    range.numberFormat = writes.map(({ cells }) =>
      columns.map((column) => (isDay(cells[column]) ? dayFormat(table.formats[column]) : null)),
    );
  }
  range.load("values,formulas,rowIndex");
}

function dayFormat(own: string | undefined): string {
  return own !== undefined && isDateFormat(own) ? own : ISO_DATE;
}

function queueRemoval(context: Excel.RequestContext, table: ExcelTable, index: number): RemovedRow {
  const before = itemOf(context, table).getDataBodyRange().getRow(index);
  before.load("values");
  if (table.info.filtered === true) {
    const row = itemOf(context, table).getDataBodyRange().getRow(index);
    row.values = [table.info.columns.map(({ calculated }) => (calculated ? null : ""))];
  } else itemOf(context, table).rows.getItemAt(index).delete();
  return { table, index, before };
}
