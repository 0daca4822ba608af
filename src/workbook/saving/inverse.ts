import type { AppliedEdit, Edit, RowCounts } from "../table-host";
import type { NewRow, RowAsRead, TableContent } from "../table-port";
import { tableOf } from "./edit-plan";
import { findRow } from "./row-match";
import { standingOf } from "./standing";

/** The edits that undo what was applied, the last one first. */
export function inverseOf(applied: readonly AppliedEdit[]): Edit[] {
  return [...applied].reverse().flatMap((edit): Edit[] => {
    switch (edit.kind) {
      case "append":
        return [...edit.rows].reverse().map((row) => ({ kind: "remove", row }));
      case "set":
        return [{ kind: "set", row: edit.after, cells: chosen(edit.before.cells, edit.headings) }];
      case "remove":
        return [{ kind: "append", table: edit.row.table, rows: [filled(edit.row.cells)] }];
    }
  });
}

/** Whether nothing of what was applied stands any more: added rows are gone, changed ones are as they were before. */
export function isUndone(applied: readonly AppliedEdit[], tables: readonly TableContent[]): boolean {
  const stands = (row: RowAsRead): boolean | undefined => {
    const table = tables.find(({ name }) => name === row.table);
    return table && findRow(table.columns, table.rows, row) !== undefined;
  };
  return applied.every((edit) => {
    switch (edit.kind) {
      case "append":
        return edit.rows.every((row) => stands(row) === false);
      case "set":
        return stands(edit.before) === true;
      case "remove":
        return stands(edit.row) === true;
    }
  });
}

/** The edits that undo what stands of edits that broke off. `rowCounts` are the rows that were there before. */
export function undoBrokenOff(edits: readonly Edit[], rowCounts: RowCounts, tables: readonly TableContent[]): Edit[] {
  const { applied } = standingOf({ edits, rowCounts }, tables);
  const removed = tables.flatMap((table) => {
    const appended = applied.flatMap((edit) => (edit.kind === "append" ? edit.rows : []));
    const own = appended.filter((row) => row.table === table.name).length;
    const lost = (rowCounts[table.name] ?? table.rowCount) + own - table.rowCount;
    return removedRows(edits, table, lost);
  });
  return inverseOf([...applied, ...removed.map((row) => ({ kind: "remove", row }) as const)]);
}

/** The rows that are gone: those that nothing matches any more, and of equal ones as many as the table is shorter. */
function removedRows(edits: readonly Edit[], table: TableContent, lost: number): RowAsRead[] {
  const rows = edits.flatMap((edit) => (edit.kind === "remove" && tableOf(edit) === table.name ? [edit.row] : []));
  const isThere = (row: RowAsRead): boolean => findRow(table.columns, table.rows, row) !== undefined;
  const gone = rows.filter((row) => !isThere(row));
  return [...gone, ...rows.filter(isThere).slice(0, Math.max(0, lost - gone.length))];
}

function chosen(cells: NewRow, headings: readonly string[]): NewRow {
  return Object.fromEntries(headings.map((heading) => [heading, cells[heading] ?? null]));
}

function filled(cells: NewRow): NewRow {
  return Object.fromEntries(Object.entries(cells).filter(([, value]) => value !== null));
}
