import { day } from "../../../src/core/shared/days";
import type { PlainCell } from "../../../src/workbook/port";
import { TableError, type TableErrorKind } from "../../../src/workbook/table-error";
import type { Change, NewRow, Save, TablePort } from "../../../src/workbook/table-port";
import type { StartTable } from "./test-book";

export const MARCH_1 = day("2024-03-01");

export const findings: StartTable = {
  name: "Findings",
  sheet: "Findings",
  address: "A3",
  headings: ["Date", "Cow", "Lesion", "Treatment", "Note", "Due"],
  days: ["Date"],
  calculated: { heading: "Due", from: "Date", add: 28 },
  rows: [
    [MARCH_1, 101, "DD", "topical", null],
    [MARCH_1, 102, "SU", "trim, block", "hind, outer"],
    [MARCH_1 + 1, "B7", "none", null, null],
  ],
};

export const care: StartTable = {
  name: "Care",
  sheet: "Plan",
  address: "B2",
  headings: ["Cow", "What", "When", "Done"],
  rows: [
    [101, "bandage off", MARCH_1 + 3, null],
    [102, "block off", MARCH_1 + 28, null],
  ],
};

/** A table without a row yet: hosts keep one blank row in it. */
export const scores: StartTable = {
  name: "Scores",
  sheet: "Walk",
  address: "A1",
  headings: ["Date", "Cow", "Score"],
  rows: [[null, null, null]],
};

export const startTables: readonly StartTable[] = [findings, care, scores];

let saves = 0;

/** A save of these changes under an id of its own. */
export function saveOf(...changes: Change[]): Save {
  saves += 1;
  return { id: `save-${saves}`, title: `Save ${saves}`, changes };
}

export function finding(cow: number | string, lesion = "DD", more: NewRow = {}): NewRow {
  return { Date: { day: MARCH_1 + 5 }, Cow: cow, Lesion: lesion, ...more };
}

/** The typed cells of a table, without calculated columns. */
export async function typedRows(port: TablePort, table: string): Promise<PlainCell[][]> {
  const { columns, rows } = await port.readTable(table);
  return rows.map((row) => row.filter((_, column) => columns[column]?.calculated === false));
}

/** Everything typed in every table. */
export async function wholeBook(port: TablePort): Promise<Record<string, PlainCell[][]>> {
  const tables = await port.listTables();
  const contents: Record<string, PlainCell[][]> = {};
  for (const { name } of tables) contents[name] = await typedRows(port, name);
  return contents;
}

/** The TableError with which work is refused. */
export async function refusal(work: Promise<unknown>): Promise<TableError> {
  const outcome = await work.then(
    (value) => ({ value }),
    (error: unknown) => ({ error }),
  );
  if (!("error" in outcome)) throw new Error("expected a refusal, but the work was done");
  if (outcome.error instanceof TableError) return outcome.error;
  throw outcome.error;
}

/** How work ends: done, or the kind of the TableError with which it is refused. */
export function outcomeOf(work: Promise<unknown>): Promise<"done" | TableErrorKind> {
  return work.then(
    () => "done",
    async (error: unknown) => (await refusal(Promise.reject(error as Error))).kind,
  );
}

export async function refusedAs(work: Promise<unknown>, kind: TableErrorKind): Promise<string> {
  const error = await refusal(work);
  expect([error.kind, error.message]).toEqual([kind, expect.any(String)]);
  return error.message;
}
