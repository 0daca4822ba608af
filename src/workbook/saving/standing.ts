import { findRow, holds, plainValue, rowChanged, standsFor } from "./row-match";
import { tableOf } from "./edit-plan";
import { tableGone } from "../table-error";
import type { AppliedEdit, Edit, RowCounts } from "../table-host";
import { type NewRow, rowAsRead, type RowAsRead, type TableContent } from "../table-port";

/** What of a broken-off save stands in the workbook, and what is still to be written. */
export interface Standing {
  readonly applied: readonly AppliedEdit[];
  readonly missing: readonly Edit[];
}

/** Looks up edits of which nobody knows how far they came; removals are left out. Rows that it appended stand below those counted before. */
export function standingOf(
  { edits, rowCounts }: { readonly edits: readonly Edit[]; readonly rowCounts: RowCounts },
  tables: readonly TableContent[],
): Standing {
  const applied: AppliedEdit[] = [];
  const missing: Edit[] = [];
  const taken = new Map<string, Set<number>>();
  for (const edit of edits) {
    const name = tableOf(edit);
    const content = tables.find((table) => table.name === name);
    if (content === undefined) throw tableGone(name);
    const used = taken.get(name) ?? new Set<number>();
    taken.set(name, used);
    if (edit.kind === "append") {
      const from = rowCounts[name] ?? 0;
      const asWritten = edit.rows.map((row) => appendedRow(content, row, from, used));
      const found = edit.rows.map((row, index) => asWritten[index] ?? changedRow(content, row, from, used));
      const rows = found.filter((row) => row !== undefined);
      if (rows.length > 0) applied.push({ kind: "append", rows });
      const lost = edit.rows.filter((_, index) => found[index] === undefined);
      if (lost.length > 0) missing.push({ ...edit, rows: lost });
    } else if (edit.kind === "set") {
      const after = setRow(content, edit, used);
      if (after === undefined) missing.push(edit);
      else applied.push({ kind: "set", before: edit.row, after, headings: Object.keys(edit.cells) });
    }
  }
  return { applied, missing };
}

function appendedRow(content: TableContent, row: NewRow, from: number, used: Set<number>): RowAsRead | undefined {
  const cells = plainCells(row);
  for (let index = from; index < content.rowCount; index++) {
    if (used.has(index) || !holds(content.columns, content.rows[index] ?? [], cells, standsFor)) continue;
    used.add(index);
    return rowAsRead(content, index);
  }
  return undefined;
}

/** Fewer cells than these do not tell one row from another. */
const FEWEST_CELLS = 4;

/**
 * A row that was appended and in which someone has changed a cell since: writing it again would double it. It is given
 * as it was written, so that taking it back notices the change.
 */
function changedRow(content: TableContent, row: NewRow, from: number, used: Set<number>): RowAsRead | undefined {
  const cells = plainCells(row);
  const compared = content.columns.flatMap(({ heading, calculated }, column) =>
    calculated || !Object.hasOwn(cells, heading) ? [] : [{ column, meant: cells[heading] ?? null }],
  );
  if (compared.length < FEWEST_CELLS) return undefined;
  for (let index = from; index < content.rowCount; index++) {
    const is = content.rows[index] ?? [];
    const changed = compared.filter(({ column, meant }) => !standsFor(is[column] ?? null, meant));
    if (used.has(index) || changed.length !== 1) continue;
    used.add(index);
    return { table: content.name, index, cells };
  }
  return undefined;
}

function setRow(
  content: TableContent,
  { row, cells }: Extract<Edit, { kind: "set" }>,
  used: Set<number>,
): RowAsRead | undefined {
  const written = { ...row, cells: { ...row.cells, ...plainCells(cells) } };
  const { columns, rows } = content;
  const index = rows.findIndex((cells, at) => !used.has(at) && holds(columns, cells, written.cells, standsFor));
  if (index >= 0) {
    used.add(index);
    return rowAsRead(content, index);
  }
  if (findRow(columns, rows, row, used) === undefined) throw rowChanged(content, rows, row);
  return undefined;
}

function plainCells(row: NewRow): RowAsRead["cells"] {
  return Object.fromEntries(Object.entries(row).map(([heading, value]) => [heading, plainValue(value)]));
}
