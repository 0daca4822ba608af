import type { PlainCell } from "../../port";
import type { EditPlan } from "../../saving/edit-plan";
import { holds, rowChanged } from "../../saving/row-match";
import type { TableError } from "../../table-error";
import type { AppliedEdit, Edit } from "../../table-host";
import { rowAsRead, type RowAsRead } from "../../table-port";
import { plainRow } from "./cells";
import { isFree } from "./check-edits";
import type { ExcelTable } from "./describe";
import type { RemovedRow, Written, WrittenRows } from "./queue-writes";

/** What came of a batch of writes. */
export interface Settled {
  readonly applied: readonly AppliedEdit[];
  /** What is still to be done because others came in between: their rows put back, our removals done again. */
  readonly open: readonly Edit[];
  /** Someone changed a row just before it was written over. */
  readonly conflict?: TableError;
}

/** Compares what a batch found and left with what was meant. */
export function settle(plan: EditPlan, { rows, removed }: Written): Settled {
  const meant = plan.applied((table, index) => rowAfter(rows, table, index));
  const applied = meant.map((edit) => (edit.kind === "set" ? { ...edit, before: found(rows, edit.before) } : edit));
  const wrong = removed.filter((row) => !isAsMeant(row, meant));
  const conflict = meant.flatMap((edit) => (edit.kind === "set" ? conflictOf(rows, edit.before) : []))[0];
  return {
    applied,
    open: [
      ...rows.flatMap((block) => (block.kind === "append" ? displacedRows(block) : [])),
      ...wrong.flatMap(({ table, before }) => appendOf(table, plainRow(before.values[0]))),
      ...wrong.flatMap(({ table, index }) => removalOf(table, index, meant)),
    ],
    ...(conflict === undefined ? {} : { conflict }),
  };
}

/** A written row as it now stands; text that Excel took for something else is put right afterwards. */
function rowAfter(rows: Written["rows"], table: string, index: number): readonly PlainCell[] | undefined {
  const { block, at } = blockOf(rows, table, index);
  if (block === undefined) return undefined;
  const { cells } = block.writes[at]!;
  return plainRow(block.after.values[at]).map((cell, column) => {
    const meant = cells[column];
    return typeof meant === "string" ? meant : cell;
  });
}

/** The row as it stood just before it was written over. */
function found(rows: Written["rows"], row: RowAsRead): RowAsRead {
  const { block, at } = blockOf(rows, row.table, row.index);
  return block?.before === undefined ? row : named(block.table, row.index, plainRow(block.before.values[at]));
}

function conflictOf(rows: Written["rows"], before: RowAsRead): TableError[] {
  const { block } = blockOf(rows, before.table, before.index);
  if (block === undefined) return [];
  const now = found(rows, before);
  const { info } = block.table;
  const row = info.columns.map(({ heading }) => now.cells[heading] ?? null);
  if (holds(info.columns, row, before.cells)) return [];
  return [rowChanged(info, Object.assign([], { [before.index]: row }), before)];
}

function blockOf(rows: Written["rows"], table: string, index: number) {
  const block = rows.find(
    ({ table: known, writes }) => known.info.name === table && writes.some((write) => write.index === index),
  );
  return { block, at: block?.writes.findIndex((write) => write.index === index) ?? -1 };
}

/** Rows that someone else put where new rows were written. */
function displacedRows({ table, writes, before }: WrittenRows): Edit[] {
  if (before === undefined) return [];
  return writes.flatMap((write, at) => {
    const row = plainRow(before.values[at]);
    return isFree(
      row.map((cell, column) => (table.fills[column] === undefined ? cell : null)),
      write,
    )
      ? []
      : appendOf(table, row);
  });
}

function appendOf(table: ExcelTable, row: readonly PlainCell[]): Edit[] {
  const { cells } = named(table, 0, row);
  const filled = Object.entries(cells).filter(([, value]) => value !== null);
  if (filled.length === 0) return [];
  return [{ kind: "append", table: table.info.name, rows: [Object.fromEntries(filled)] }];
}

function isAsMeant({ table, index, before }: RemovedRow, meant: readonly AppliedEdit[]): boolean {
  const row = plainRow(before.values[0]);
  return removalOf(table, index, meant).every((edit) => holds(table.info.columns, row, edit.row.cells));
}

function removalOf(
  { info }: ExcelTable,
  index: number,
  meant: readonly AppliedEdit[],
): Extract<Edit, { kind: "remove" }>[] {
  return meant.flatMap((edit) =>
    edit.kind === "remove" && edit.row.table === info.name && edit.row.index === index ? [edit] : [],
  );
}

function named({ info }: ExcelTable, index: number, row: readonly PlainCell[]): RowAsRead {
  const rows: (readonly PlainCell[])[] = [];
  rows[index] = row;
  return rowAsRead({ ...info, rows }, index);
}
