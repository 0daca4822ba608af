import { day } from "../../../../src/core/shared/days";
import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import { MemoryHost } from "../../../../src/workbook/memory/table-host";
import type { PlainCell } from "../../../../src/workbook/port";
import { openTables } from "../../../../src/workbook/saving/open-tables";
import type { TablePort } from "../../../../src/workbook/table-port";

export const TODAY = day("2024-03-20");

export const FINDINGS = [
  "Date",
  "Cow",
  "Foot",
  "Claw",
  "Lesion",
  "Treatment",
  "Seen again",
  "Outcome",
  "Next look",
  "Closed on",
  "Note",
] as const;

/** Treated 29, 8, 3, 40 and 12 days before today. */
const ROWS: readonly (readonly PlainCell[])[] = [
  [TODAY - 29, 101, "LH", "outer", "SU", "trim, block", null, null, null, null, null],
  [TODAY - 8, 102, "RH", null, "DD", "topical, bandage", null, null, null, null, "kicks"],
  [TODAY - 3, 103, "RF", null, "IP", "vet called", null, null, null, null, null],
  [TODAY - 40, 104, "LH", "outer", "WL", "trim", TODAY - 5, "healed", null, TODAY - 5, null],
  [TODAY - 12, 105, "RH", "outer", "TU", "block", null, null, null, null, null],
  [TODAY - 8, 101, "RH", null, "DD", "topical", null, null, null, null, null],
];

const COWS: readonly (readonly PlainCell[])[] = [
  [101, null, 3, TODAY - 117, null, TODAY - 900, null, "high"],
  [102, null, 1, TODAY - 40, null, TODAY - 40, null, "fresh"],
  [103, null, 2, TODAY - 200, TODAY + 100, TODAY - 600, null, "high"],
  [104, null, 2, TODAY - 150, null, TODAY - 600, null, null],
  [105, null, 4, TODAY - 30, null, TODAY - 1400, TODAY - 1, "fresh"],
  [106, null, 1, TODAY - 125, null, TODAY - 125, null, "low"],
];

const SCORES: readonly (readonly PlainCell[])[] = [
  [TODAY - 21, 106, 2],
  [TODAY - 9, 101, 2],
  [TODAY - 9, 104, 3],
  [TODAY - 9, 105, 2],
  [TODAY - 9, 106, 1],
];

export function table(name: string, headings: readonly string[], rows: readonly (readonly PlainCell[])[]): MemoryTable {
  return {
    name,
    sheet: name,
    at: { row: 0, column: 0 },
    columns: headings.map((heading) => ({ heading })),
    rows: rows.map((row) => headings.map((_, column) => row[column] ?? null)),
    filtered: false,
  };
}

export function smallBook(findings: readonly (readonly PlainCell[])[] = ROWS, headings: readonly string[] = FINDINGS) {
  return new MemoryBook([
    table("Findings", headings, findings),
    table("Cows", ["Cow", "Born", "Lactation", "Calved", "Dry-off", "Entered", "Left", "Group"], COWS),
    table("Scores", ["Date", "Cow", "Score"], SCORES),
  ]);
}

/** The book as a user has it open. */
export function userOf(book: MemoryBook): TablePort {
  return openTables(new MemoryHost(book));
}

/** A row of a table by heading. */
export function rowOf(book: MemoryBook, name: string, index: number): Record<string, PlainCell> {
  const { columns, rows } = book.table(name);
  return Object.fromEntries(columns.map(({ heading }, column) => [heading, rows[index]![column] ?? null]));
}

/** Another user types into a cell. */
export function typeInto(book: MemoryBook, name: string, index: number, heading: string, value: PlainCell): void {
  const tables = book.state.tables.map((known) => {
    if (known.name !== name) return known;
    const column = known.columns.findIndex((one) => one.heading === heading);
    const rows = known.rows.map((row, at) =>
      at === index ? row.map((cell, c) => (c === column ? value : cell)) : row,
    );
    return { ...known, rows };
  });
  book.replace({ ...book.state, tables }, "other", [name]);
}

/** Another user puts a row in. */
export function insertRow(book: MemoryBook, name: string, at: number, row: readonly PlainCell[]): void {
  const tables = book.state.tables.map((known) =>
    known.name === name ? { ...known, rows: [...known.rows.slice(0, at), row, ...known.rows.slice(at)] } : known,
  );
  book.replace({ ...book.state, tables }, "other", [name]);
}
