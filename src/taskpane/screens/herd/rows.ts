import type { ComputedPart } from "../../../blocks/compute";
import type { Rows } from "../../../blocks/expression/values";
import type { PlainCell } from "../../../workbook/port";

export type ComputedRows = Extract<ComputedPart, { kind: "rows" }>;

/** A row by heading. */
export type Cells = Readonly<Record<string, PlainCell>>;

/** The rows of a table as it is filled, its headings first, each row by heading. */
export function recordsIn([headings = [], ...rows]: Rows): readonly Cells[] {
  return rows.map((row) => Object.fromEntries(headings.map((heading, at) => [String(heading), row[at] ?? null])));
}

/** A number of a row; undefined where the cell holds none. */
export function numberIn(row: Cells, heading: string): number | undefined {
  const cell = row[heading];
  return typeof cell === "number" ? cell : undefined;
}

/** A text of a row. */
export function textIn(row: Cells, heading: string): string {
  return String(row[heading] ?? "");
}
