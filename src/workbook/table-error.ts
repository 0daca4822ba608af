import { shown } from "../core/shared/domain-error";
import type { PlainCell } from "./port";

/** What kept a table from being read or written. */
export type TableErrorKind =
  /** The table was deleted or renamed. */
  | "table-gone"
  /** The table has no such column. */
  | "column-missing"
  /** A formula fills the column or the cell. */
  | "calculated"
  /** The sheet was deleted or renamed. */
  | "sheet-gone"
  /** The sheet is hidden, and its cells cannot be shown. */
  | "hidden"
  /** The cells are merged with others. */
  | "merged"
  /** A heading is blank, double or no text. */
  | "headings"
  /** The sheet, or the workbook, is protected. */
  | "protected"
  /** No free cells below the table. */
  | "full"
  /** A filter is on, and the host cannot take rows out under it. */
  | "filtered"
  /** Someone changed the row, or the file, meanwhile. */
  | "changed"
  /** Cells that were to be free hold something. */
  | "occupied"
  /** The workbook already has a table or sheet of that name. */
  | "name-taken"
  /** A value that no cell can hold. */
  | "unwritable"
  /** The save is not among the last ones. */
  | "unknown-save"
  /** The workbook is no longer open. */
  | "closed"
  /** The host refused; nothing was written. */
  | "failed"
  /** The host broke off, and part of it may be written. Saving again under the same id completes it. */
  | "uncertain";

/** The only error that a table port throws on purpose. Its message is shown to the user. */
export class TableError extends Error {
  override readonly name = "TableError";

  constructor(
    readonly kind: TableErrorKind,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}

/** Whether nobody knows how much of the work was done. */
export function isUncertain(error: unknown): boolean {
  return error instanceof TableError && error.kind === "uncertain";
}

/** The same error where it was made by another copy of this code, such as that of the page around a frame. */
export function asTableError(error: unknown): TableError | undefined {
  if (error instanceof TableError) return error;
  if (typeof error !== "object" || error === null) return undefined;
  const { name, kind, message } = error as Partial<TableError>;
  if (name !== "TableError" || kind === undefined || message === undefined) return undefined;
  return new TableError(kind, message, { cause: error });
}

/** `likely` is the one table that has the wanted columns, if there is just one. */
export function tableGone(name: string, likely?: string): TableError {
  const hint = likely === undefined ? "" : ` It may now be called ${likely}.`;
  return new TableError("table-gone", `The workbook has no table ${name} any more: it was deleted or renamed.${hint}`);
}

export function sheetGone(name: string): TableError {
  return new TableError("sheet-gone", `The workbook has no sheet ${name} any more: it was deleted or renamed.`);
}

export function sheetHidden(name: string): TableError {
  return new TableError("hidden", `Sheet ${name} is hidden: unhide it, then its cells can be shown.`);
}

export function cellsMerged(sheet: string, address: string): TableError {
  return new TableError("merged", `Cells ${address} on sheet ${sheet} are merged: unmerge them, then try again.`);
}

export function cellCalculated(sheet: string, address: string): TableError {
  return new TableError("calculated", `Cell ${address} on sheet ${sheet} is filled by a formula and is left alone.`);
}

export function cellsFilled(sheet: string, address: string): TableError {
  return new TableError(
    "calculated",
    `Cells ${address} on sheet ${sheet} are filled by one formula, which no table can hold: choose another range, or put their values in its place.`,
  );
}

export function cellChanged(sheet: string, address: string, was: PlainCell, is: PlainCell): TableError {
  return new TableError(
    "changed",
    `Someone changed cell ${address} on sheet ${sheet} meanwhile: it held ${shown(was)} and now holds ${shown(is)}. Nothing was written.`,
  );
}

export function sheetFiltered(sheet: string): TableError {
  return new TableError("filtered", `Sheet ${sheet} has a filter: take the filter away, then try again.`);
}

export function tableInUse(table: string, sheet: string): TableError {
  return new TableError(
    "occupied",
    `Formulas on sheet ${sheet} name table ${table}: change them first, then it can be made a plain range again.`,
  );
}

export function headingInTable(table: string, address: string): TableError {
  return new TableError(
    "headings",
    `Cell ${address} is a heading of table ${table}, which formulas may name: change it in Excel.`,
  );
}

export function columnMissing(table: string, heading: string): TableError {
  return new TableError("column-missing", `Table ${table} has no column "${heading}".`);
}

export function sheetProtected(sheet: string): TableError {
  return new TableError("protected", `Sheet ${sheet} is protected: unprotect it under Review, then try again.`);
}

export function tableFull(table: string, sheet: string): TableError {
  return new TableError(
    "full",
    `Table ${table} cannot grow: the cells below it on sheet ${sheet} are in use, or the sheet ends. Free the rows below it, then save again.`,
  );
}

export function tableFiltered(table: string): TableError {
  return new TableError("filtered", `Table ${table} is filtered: clear the filter, then try again.`);
}

export function cellsOccupied(sheet: string, address: string): TableError {
  const what = address.includes(":")
    ? `Cells ${address} on sheet ${sheet} are`
    : `Cell ${address} on sheet ${sheet} is`;
  return new TableError("occupied", `${what} in use: choose a free place.`);
}

export function nameTaken(name: string): TableError {
  return new TableError("name-taken", `The workbook already has a table ${name}.`);
}

export function hostFailed(cause: unknown): TableError {
  return new TableError("failed", `Nothing was saved: ${reasonOf(cause)}. What you typed is kept; try again.`, {
    cause,
  });
}

export function notRead(cause: unknown): TableError {
  return new TableError("failed", `The workbook could not be read: ${reasonOf(cause)}. Try again.`, { cause });
}

export function notShown(cause: unknown): TableError {
  return new TableError("failed", `The cell could not be shown: ${reasonOf(cause)}. Try again.`, { cause });
}

export function notTakenBack(cause: unknown): TableError {
  return new TableError("failed", `Nothing was taken back: ${reasonOf(cause)}. Try again.`, { cause });
}

export function takeBackUncertain(cause: unknown): TableError {
  return new TableError(
    "uncertain",
    `The workbook broke off while taking back: ${reasonOf(cause)}. Take it back again: what is already gone is passed over.`,
    { cause },
  );
}

export function hostUncertain(cause: unknown): TableError {
  return new TableError(
    "uncertain",
    `The workbook broke off while saving: ${reasonOf(cause)}. Save again: what is already there is not written twice.`,
    { cause },
  );
}

/** What tells that it can never be completed as it was begun. */
const FINAL: readonly TableErrorKind[] = ["changed", "table-gone", "column-missing", "sheet-gone"];

/**
 * What is thrown where a save that broke off before is tried again, and that try is refused: what the first one wrote
 * may stand all the same.
 */
export function stillUncertain(error: unknown): TableError {
  const refusal = error instanceof TableError ? error : hostFailed(error);
  if (isUncertain(refusal) || FINAL.includes(refusal.kind)) return refusal;
  const message = `${refusal.message} What an earlier try wrote may stand in the workbook. Save again: what is already there is not written twice.`;
  return new TableError("uncertain", message, { cause: error });
}

export function workbookClosed(cause?: unknown): TableError {
  return new TableError("closed", "The workbook is no longer open. What you typed is kept.", { cause });
}

function reasonOf(cause: unknown): string {
  const text = cause instanceof Error ? cause.message : String(cause);
  return text.trim().replace(/\.$/, "");
}
