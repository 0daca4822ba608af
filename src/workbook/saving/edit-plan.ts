import type { PlainCell } from "../port";
import { findRow, type KnownRows, plainValue, rowChanged } from "./row-match";
import { columnMissing, sheetProtected, TableError, tableGone } from "../table-error";
import type { AppliedEdit, Edit } from "../table-host";
import type { NewRow, RowAsRead, TableInfo, TypedValue } from "../table-port";

/** A table as a host knows it while edits are checked. */
export interface KnownTable {
  readonly info: TableInfo;
  readonly rows: KnownRows;
}

/** A row to be written: by column, undefined where a cell is left alone. */
export interface RowWrite {
  readonly index: number;
  readonly cells: readonly (TypedValue | undefined)[];
}

/** What is to be done in one table. Rows are set first, then appended, then removed. */
export interface TablePlan {
  readonly info: TableInfo;
  readonly set: readonly RowWrite[];
  readonly append: readonly RowWrite[];
  /** Ascending. */
  readonly remove: readonly number[];
}

export interface EditPlan {
  readonly tables: readonly TablePlan[];
  /** What the edits leave, in their order. `rowOf` gives the typed cells of a written row as they now stand. */
  applied(rowOf?: (table: string, index: number) => readonly PlainCell[] | undefined): readonly AppliedEdit[];
}

interface OpenPlan {
  readonly known: KnownTable;
  readonly set: RowWrite[];
  readonly append: RowWrite[];
  readonly remove: number[];
  readonly taken: Set<number>;
}

/** Checks edits against the tables as they are, and says what to write where. Throws a TableError where one is refused. */
export function planEdits(edits: readonly Edit[], tables: readonly KnownTable[]): EditPlan {
  const plans = new Map<string, OpenPlan>();
  const planOf = (name: string): OpenPlan => {
    const open = plans.get(name);
    if (open !== undefined) return open;
    const known = tables.find(({ info }) => info.name === name);
    if (known === undefined) throw tableGone(name, likelyTable(name, edits, tables));
    if (known.info.protected === true) throw sheetProtected(known.info.sheet);
    const plan: OpenPlan = { known, set: [], append: [], remove: [], taken: new Set() };
    plans.set(name, plan);
    return plan;
  };
  const results = edits.map((edit) => planEdit(edit, planOf(tableOf(edit))));
  return {
    tables: [...plans.values()].map(({ known, set, append, remove }) => ({
      info: known.info,
      set,
      append,
      remove: remove.sort((a, b) => a - b),
    })),
    applied: (rowOf = () => undefined) => results.map((result) => result(rowOf)),
  };
}

type Result = (rowOf: (table: string, index: number) => readonly PlainCell[] | undefined) => AppliedEdit;

function planEdit(edit: Edit, plan: OpenPlan): Result {
  const { info } = plan.known;
  if (edit.kind === "append") {
    const writes = edit.rows.map((row, offset) => ({
      index: info.rowCount + plan.append.length + offset,
      cells: cellsByColumn(info, row),
    }));
    plan.append.push(...writes);
    return (rowOf) => ({ kind: "append", rows: writes.map((write) => rowAfter(info, write, rowOf)) });
  }
  const index = takeRow(plan, edit.row);
  if (edit.kind === "remove") {
    plan.remove.push(index);
    const row = namedCells(info, index, plan.known.rows[index] ?? []);
    return () => ({ kind: "remove", row });
  }
  const write = { index, cells: cellsByColumn(info, edit.cells) };
  plan.set.push(write);
  const old = plan.known.rows[index];
  return (rowOf) => ({
    kind: "set",
    before: namedCells(info, index, old ?? []),
    after: rowAfter(info, write, rowOf, old),
    headings: Object.keys(edit.cells),
  });
}

function takeRow({ known, taken }: OpenPlan, row: RowAsRead): number {
  const { info, rows } = known;
  const index = findRow(info.columns, rows, row, taken);
  if (index === undefined) throw rowChanged(info, rows, row);
  taken.add(index);
  return index;
}

function cellsByColumn({ name, columns }: TableInfo, row: NewRow): (TypedValue | undefined)[] {
  for (const heading of Object.keys(row)) {
    const column = columns.find((known) => known.heading === heading);
    if (column === undefined) throw columnMissing(name, heading);
    if (column.calculated) {
      throw new TableError("calculated", `Column "${heading}" of table ${name} fills itself by its formula.`);
    }
  }
  return columns.map(({ heading }) => (Object.hasOwn(row, heading) ? row[heading] : undefined));
}

/** The typed cells of a row once it is written: as the host reads them back, or else as they were meant. */
function rowAfter(
  info: TableInfo,
  { index, cells }: RowWrite,
  rowOf: (table: string, index: number) => readonly PlainCell[] | undefined,
  old: readonly PlainCell[] = [],
): RowAsRead {
  const meant = cells.map((value, column) => (value === undefined ? (old[column] ?? null) : plainValue(value)));
  return namedCells(info, index, rowOf(info.name, index) ?? meant);
}

function namedCells({ name, columns }: TableInfo, index: number, row: readonly PlainCell[]): RowAsRead {
  const typed = columns.flatMap(({ heading, calculated }, column) =>
    calculated ? [] : [[heading, row[column] ?? null] as const],
  );
  return { table: name, index, cells: Object.fromEntries(typed) };
}

export function tableOf(edit: Edit): string {
  return edit.kind === "append" ? edit.table : edit.row.table;
}

/** The one table that has every column which the edits name for a table that is gone. */
function likelyTable(name: string, edits: readonly Edit[], tables: readonly KnownTable[]): string | undefined {
  const wanted = new Set(edits.filter((edit) => tableOf(edit) === name).flatMap(headingsOf));
  const others = new Set(edits.map(tableOf));
  const candidates = tables.filter(
    ({ info }) =>
      !others.has(info.name) &&
      wanted.size > 0 &&
      [...wanted].every((heading) => info.columns.some((column) => column.heading === heading)),
  );
  return candidates.length === 1 ? candidates[0]?.info.name : undefined;
}

function headingsOf(edit: Edit): string[] {
  if (edit.kind === "append") return edit.rows.flatMap((row) => Object.keys(row));
  return Object.keys(edit.row.cells);
}
