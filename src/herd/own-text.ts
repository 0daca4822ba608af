import type { ColumnKind } from "../workbook/table-definition";
import type { PlainCell } from "../workbook/port";

/** Columns in which a farm writes its own names. */
const OWN_NAMES: ReadonlySet<string> = new Set(["group", "severity"]);
const FIGURES: ReadonlySet<ColumnKind> = new Set<ColumnKind>(["number", "whole number", "day"]);

/** Whether a text is a name of the farm's own, in a column for such. */
export function isOwnName(key: string, cell: PlainCell): boolean {
  return OWN_NAMES.has(key) && typeof cell === "string";
}

/** Whether a text is a word among figures, such as "dry" among counts; one with a digit may be a mistyped figure. */
export function isWordAmongFigures(holds: ColumnKind, cell: PlainCell): boolean {
  return FIGURES.has(holds) && typeof cell === "string" && !/\d/.test(cell);
}
