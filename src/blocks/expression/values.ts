import type { PlainCell } from "../../workbook/port";

/** Rows of cells, as a range hands them over. An error is its text ("#N/A"), a blank is null. */
export type Rows = readonly (readonly PlainCell[])[];

/** What an expression comes to: one cell, or rows of cells. */
export type Value = PlainCell | Rows;

export function isRows(value: Value): value is Rows {
  return typeof value === "object" && value !== null;
}

/** A value as a formula writes it. */
export function literalText(value: PlainCell): string {
  switch (typeof value) {
    case "number":
      return String(value).toUpperCase();
    case "boolean":
      return value ? "TRUE" : "FALSE";
    default:
      return `"${(value ?? "").replaceAll('"', '""')}"`;
  }
}
