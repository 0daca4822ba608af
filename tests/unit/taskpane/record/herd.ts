import { day } from "../../../../src/core/shared/days";
import { readHerd } from "../../../../src/herd/herd";
import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import { MemoryHost } from "../../../../src/workbook/memory/table-host";
import type { PlainCell } from "../../../../src/workbook/port";
import { openTables } from "../../../../src/workbook/saving/open-tables";
import type { TableDefinition } from "../../../../src/workbook/table-definition";
import type { TablePort } from "../../../../src/workbook/table-port";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import { cowsTable, findingsTable, scoresTable } from "../../../../src/workbook/tables";

/** Values by key of the definition; a key that is not given is blank. */
export type Row = Readonly<Record<string, PlainCell>>;

export const TODAY = day("2026-03-10");

function tableOf(definition: TableDefinition, column: number, rows: readonly Row[]): MemoryTable {
  const inputs = definition.columns.filter(({ formula }) => formula === undefined);
  return {
    name: definition.name,
    sheet: definition.name,
    at: { row: 0, column },
    columns: inputs.map(({ heading }) => ({ heading })),
    rows: rows.map((row) => inputs.map(({ key }) => row[key] ?? null)),
    filtered: false,
  };
}

/** Rules such as an adviser writes: sole ulcer with block, course and rechecks; dermatitis weekly. */
const RULES: MemoryTable = {
  name: "Rules",
  sheet: "Rules",
  at: { row: 0, column: 0 },
  columns: [
    "Lesion", "First recheck (days)", "Second recheck (days)", "Block check (days)", "Block off (days)",
    "Pain relief (days)", "Topical repeat (days)", "Topical treatments", "Bandage off (hours)",
  ].map((heading) => ({ heading })), // oxfmt-ignore
  rows: [
    ["SU", 7, 28, 14, 28, 3, null, null, null],
    ["U", 7, null, 14, 28, 3, null, null, null],
    ["DD", 7, 14, null, null, null, 7, 3, 24],
  ],
  filtered: false,
};

/** An invented herd: three cows that stand for what the screen has to tell apart. */
export const COWS: readonly Row[] = [
  { cow: 12, born: day("2021-01-05"), lactation: 3, calved: day("2025-11-20"), entered: day("2023-01-10"), group: "high" },
  { cow: 123, born: day("2022-02-01"), lactation: 2, calved: day("2025-05-01"), dryOff: day("2026-04-13"), entered: day("2024-02-01"), group: "low" },
  { cow: 1234, born: day("2020-02-01"), lactation: 4, calved: day("2025-01-01"), entered: day("2022-02-01"), left: day("2026-01-31") },
  { cow: "Bella", born: day("2024-01-01"), lactation: 1, calved: day("2026-02-01"), entered: day("2026-02-01"), group: "fresh" },
]; // oxfmt-ignore

export interface Book {
  readonly cows?: readonly Row[];
  readonly findings?: readonly Row[];
  readonly scores?: readonly Row[];
  readonly rules?: boolean;
  /** The scale of the scores as a row of the Mapping table says it; without one there is no such table. */
  readonly scale?: string;
}

export function bookOf({ cows = COWS, findings = [], scores = [], rules = true, scale }: Book = {}): MemoryBook {
  return new MemoryBook([
    tableOf(cowsTable, 0, cows),
    tableOf(findingsTable, 0, findings),
    tableOf(scoresTable, 0, scores),
    ...(rules ? [RULES] : []),
    ...(scale === undefined ? [] : [tableOf(mappingTable, 0, [scaleRow(scale)])]),
  ]);
}

/** How a workbook that keeps its scores in our own table says their scale. */
export function scaleRow(scale: string): Row {
  return { table: "Scores", value: "Score", sheet: "Scores", source: "Scores", heading: "Score", unit: scale };
}

export function portOn(book: MemoryBook): TablePort {
  return openTables(new MemoryHost(book));
}

export async function herdOf(book: Book = {}) {
  return readHerd(portOn(bookOf(book)));
}

/** The rows of a table as typed, by heading, blanks left out. */
export function rowsOf(book: MemoryBook, name: string): readonly Row[] {
  const { columns, rows } = book.table(name);
  return rows.map((row) =>
    Object.fromEntries(columns.flatMap(({ heading }, at) => (row[at] === null ? [] : [[heading, row[at] ?? null]]))),
  );
}
