import { foldHeading } from "../../../herd/read-rows";
import type { TableContent } from "../../../workbook/table-port";
import { findingsTable } from "../../../workbook/tables";
import type { Field } from "./fields";
import type { RecordState } from "./state";

/** Where a value of a new finding is written. */
export type Place = "column" | "note" | "nowhere";

/** Whether new rows of a table take what is typed under a heading. */
export function takes({ columns }: TableContent, heading: string): boolean {
  const folded = foldHeading(heading);
  return columns.some((column) => foldHeading(column.heading) === folded && !column.calculated && column.oldRowsOnly !== true); // oxfmt-ignore
}

/** Under its own heading; else in the note, where there is one. A table that is not there is saved to as if it were. */
export function placeUnder(content: TableContent | undefined, heading: string): Place {
  if (content === undefined || content.columns.length === 0 || takes(content, heading)) return "column";
  return takes(content, "Note") ? "note" : "nowhere";
}

export type FindingKey = (typeof findingsTable)["columns"][number]["key"];

export function headingOf(key: FindingKey): string {
  return findingsTable.columns.find((column) => column.key === key)!.heading;
}

/** The heading under which the value of a field is written; undefined for fields that are no values of a finding. */
const HEADINGS: Readonly<Partial<Record<Field, string>>> = {
  foot: headingOf("foot"),
  claw: headingOf("claw"),
  zone: headingOf("zone"),
  stage: headingOf("stage"),
  severity: headingOf("severity"),
  toeInner: headingOf("toeMm"),
  toeOuter: headingOf("toeMm"),
  note: headingOf("note"),
  "care.other": headingOf("treatment"),
  reason: "Reason",
  trimmer: "Trimmer",
  place: "Place",
};

export function placeOf({ herd }: Pick<RecordState, "herd">, field: Field): Place {
  const heading = HEADINGS[field];
  return heading === undefined ? "column" : placeUnder(herd?.findings.content, heading);
}

/** Said beside a field whose value the list has no column for; "" where it has one. */
export function placeHint(state: Pick<RecordState, "herd">, field: Field): string {
  const place = placeOf(state, field);
  if (place === "column") return "";
  return place === "note" ? "no column in your list: goes into the note" : "no column in your list: is not written";
}

/** Hints as one; undefined where there is none. */
export function hints(...parts: readonly string[]): string | undefined {
  return parts.filter((part) => part !== "").join("; ") || undefined;
}
