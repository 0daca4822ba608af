import type { PlainCell } from "../../port";
import { inverseOf, undoBrokenOff } from "../../saving/inverse";
import { tableOf } from "../../saving/edit-plan";
import { hostFailed, hostUncertain, TableError } from "../../table-error";
import type { AppliedEdit, Edit, RowCounts } from "../../table-host";
import type { TableContent } from "../../table-port";
import { plainRow } from "./cells";
import { checkEdits, isFree } from "./check-edits";
import { describeTables, type ExcelTable } from "./describe";
import { knownError } from "./errors";
import { mend } from "./mend";
import { itemOf, queueWrites } from "./queue-writes";
import { readRows } from "./read-rows";
import type { RunExcel } from "./run";
import { settle } from "./settle";

/** How often a batch is followed by another because others came in between. */
const ROUNDS = 8;

/** Applies all edits or none, as a TableHost does. */
export async function applyEdits(
  run: RunExcel,
  edits: readonly Edit[],
  begin: (rowCounts: RowCounts) => void,
): Promise<readonly AppliedEdit[]> {
  let rowCounts: RowCounts | undefined;
  const noted = (counts: RowCounts): void => {
    rowCounts = counts;
    begin(counts);
  };
  try {
    return await run((context) => applyOnce(context, edits, noted, ROUNDS));
  } catch (error) {
    if (rowCounts === undefined || error instanceof TableError) throw knownError(error) ?? hostFailed(error);
    const counts = rowCounts;
    await run((context) => undo(context, edits, counts)).catch(() => {
      throw hostUncertain(error);
    });
    throw knownError(error) ?? hostFailed(error);
  }
}

async function applyOnce(
  context: Excel.RequestContext,
  edits: readonly Edit[],
  begin: (rowCounts: RowCounts) => void,
  rounds: number,
): Promise<readonly AppliedEdit[]> {
  const { tables, plan } = await checked(context, edits, rounds);
  begin(Object.fromEntries(plan.tables.map(({ info }) => [info.name, info.rowCount])));
  const written = queueWrites(context, plan.tables, tables);
  await context.sync();
  await mend(context, written);
  const { applied, open, conflict } = settle(plan, written);
  if (open.length > 0) await finish(context, open, rounds);
  if (conflict === undefined) return applied;
  await finish(context, inverseOf(applied), rounds);
  throw conflict;
}

/** A table that seems full may only be growing under someone else's hands: it is looked at again. */
async function checked(context: Excel.RequestContext, edits: readonly Edit[], rounds: number) {
  for (let left = rounds; ; left--) {
    const tables = await describeTables(context);
    try {
      return { tables, plan: await checkEdits(context, tables, edits) };
    } catch (error) {
      if (left <= 0 || !(error instanceof TableError) || error.kind !== "full") throw error;
    }
  }
}

/** Does what others made necessary. If that is refused, nobody knows any more what stands. */
async function finish(context: Excel.RequestContext, edits: readonly Edit[], rounds: number): Promise<void> {
  try {
    if (rounds === 0) throw new Error("too many people write at once");
    await applyOnce(context, edits, () => undefined, rounds - 1);
  } catch (error) {
    throw error instanceof TableError ? hostUncertain(error) : error;
  }
}

/** Undoes what stands of edits that broke off. */
async function undo(context: Excel.RequestContext, edits: readonly Edit[], rowCounts: RowCounts): Promise<void> {
  const names = new Set(edits.map(tableOf));
  for (const table of await concerned(context, names)) await takeInLeftover(context, table, edits);
  const contents: TableContent[] = [];
  for (const table of await concerned(context, names)) {
    contents.push({ ...table.info, rows: (await readRows(context, table)).rows });
  }
  const back = undoBrokenOff(edits, rowCounts, contents);
  if (back.length > 0) await applyOnce(context, back, () => undefined, ROUNDS);
}

async function concerned(context: Excel.RequestContext, names: ReadonlySet<string>): Promise<ExcelTable[]> {
  return (await describeTables(context)).filter(({ info }) => names.has(info.name));
}

/** Takes rows into the table that were written below it but had not joined it yet. */
async function takeInLeftover(context: Excel.RequestContext, table: ExcelTable, edits: readonly Edit[]): Promise<void> {
  const { name, columns } = table.info;
  const rows = edits.flatMap((edit) => (edit.kind === "append" && edit.table === name ? edit.rows : []));
  if (rows.length === 0 || table.hasTotals) return;
  const below = itemOf(context, table).getDataBodyRange().getRowsBelow(rows.length);
  below.load("values");
  await context.sync();
  const found = below.values.map(plainRow);
  const isOurs = (cells: readonly PlainCell[]): boolean =>
    cells.some((cell) => cell !== null) &&
    rows.some((row) => isFree(cells, { index: 0, cells: columns.map(({ heading }) => row[heading]) }));
  let leftover = found.length;
  while (leftover > 0 && !isOurs(found[leftover - 1]!)) leftover--;
  if (leftover === 0) return;
  const item = itemOf(context, table);
  item.resize(item.getRange().getResizedRange(leftover, 0));
  await context.sync();
}
