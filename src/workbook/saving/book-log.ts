import type { AppliedCell, CellEdit, TableRange } from "../book-host";
import { type Log, logInMemory, withEntry } from "./log";

/** What is remembered of a change of the workbook, so that it is made once and can be taken back. Plain data. */
export type LoggedChange = { readonly id: string; readonly title: string } & (
  | /** Writing has started; whether it ended is not known. */
    { readonly state: "cells-begun"; readonly edits: readonly CellEdit[] }
  | { readonly state: "cells"; readonly applied: readonly AppliedCell[] }
  | { readonly state: "table-begun"; readonly table: TableRange }
  | { readonly state: "table"; readonly table: TableRange }
);

/** Where the last changes of a workbook are remembered, oldest first. */
export type BookLog = Log<LoggedChange>;

/** A log that lasts as long as the page. */
export function memoryBookLog(): BookLog {
  return logInMemory();
}

/** A log as some storage gave it back. What is no change is left out: storage may be damaged, or from another version. */
export function keptChanges(kept: unknown): readonly LoggedChange[] {
  return Array.isArray(kept) ? kept.filter(isChange) : [];
}

function isChange(kept: unknown): kept is LoggedChange {
  if (!isObject(kept)) return false;
  const { id, title, state, edits, applied, table } = kept;
  if (typeof id !== "string" || typeof title !== "string") return false;
  if (state === "cells-begun") return isListOfCells(edits);
  if (state === "cells") return isListOfCells(applied);
  return (state === "table-begun" || state === "table") && isTable(table);
}

function isListOfCells(list: unknown): boolean {
  const isCell = (kept: unknown): boolean => {
    if (!isObject(kept)) return false;
    const { sheet, address } = kept;
    return typeof sheet === "string" && typeof address === "string";
  };
  return Array.isArray(list) && list.every(isCell);
}

function isTable(kept: unknown): boolean {
  if (!isObject(kept)) return false;
  const { sheet, name, area } = kept;
  return typeof sheet === "string" && typeof name === "string" && isObject(area);
}

function isObject(value: unknown): value is Partial<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

/** The log with one change put in, in place of what it says of the same id. */
export function withChange(changes: readonly LoggedChange[], change: LoggedChange): readonly LoggedChange[] {
  return withEntry(changes, change, change.state === "cells" || change.state === "table");
}
