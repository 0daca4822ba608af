import { DomainError } from "../core/shared/domain-error";
import { looksLikeDate, looksLikeNumber, readCell } from "./cell";
import type { Kind, ScalarKind } from "./kind";

/**
 * A column of cells read row by row. `null` stands for a row that is blank or holds a note ("-", "dry") instead of
 * a value; `notes` counts the latter. Values that look right but are not (number-like text, TRUE, an error, a value
 * beyond its limit) are refused with their row.
 */
export interface Column<T> {
  readonly values: readonly (T | null)[];
  /** Rows holding a note instead of a value. */
  readonly noteRows: number;
  /** The argument's name, for messages. */
  readonly argument: string;
}

interface ColumnOptions {
  /**
   * What to do with text that is no value of the kind: "leave out" for numbers and dates (a note such as "dry"),
   * "refuse" where every text is meant as a value (lesion codes, words).
   */
  readonly notes: "leave out" | "refuse";
}

/** A column kind made of a scalar kind. */
export function columnOf<T>(item: ScalarKind<T>, options: ColumnOptions): Kind<Column<T>> {
  return {
    name: `column of ${plural(item.name)}`,
    shape: "column",
    ...(item.unit === undefined ? {} : { unit: item.unit }),
    limits: item.limits,
    must: `a column, each row ${item.must}`,
    read(raw, argument) {
      const cells = columnCells(raw, argument);
      const values: (T | null)[] = new Array<T | null>(cells.length).fill(null);
      let noteRows = 0;
      for (let row = 0; row < cells.length; row++) {
        const cell = readCell(cells.at(row), () => rowName(argument, row));
        if (cell === null || (cell === 0 && item.zeroIsBlank)) continue;
        if (typeof cell === "string" && options.notes === "leave out" && isNote(cell)) {
          if (row === 0) refuseHeading(cell, cells, argument);
          noteRows++;
          continue;
        }
        values[row] = readRow(item, cell, argument, row);
      }
      return { values, noteRows, argument };
    },
  };
}

/** The message of a bad row names the row as counted in the range handed over. */
function readRow<T>(item: ScalarKind<T>, cell: number | string | boolean, argument: string, row: number): T {
  try {
    return item.readCell(cell, argument);
  } catch (error) {
    if (error instanceof DomainError)
      throw new DomainError(error.kind, error.message.replace(argument, rowName(argument, row)));
    throw error;
  }
}

export function rowName(argument: string, row: number): string {
  return `${argument} row ${row + 1}`;
}

function isNote(text: string): boolean {
  return !looksLikeNumber(text) && !looksLikeDate(text);
}

/** Marks that farms write where there is no value; any other text on top of numbers is taken for the heading. */
const NO_VALUE_MARKS = /^(-+|–|—|\?|\.|x|n\/?a|none|no|dry|missing|absent|sold|dead|gone|not tested|not scored)$/i;

function refuseHeading(cell: string, cells: Cells, argument: string): void {
  if (NO_VALUE_MARKS.test(cell)) return;
  for (let row = 1; row < cells.length; row++) {
    if (typeof cells.at(row) === "number") {
      throw new DomainError(
        "invalid",
        `${argument} row 1 holds the text "${cell}", which looks like the heading: pass the column without its heading`,
      );
    }
  }
}

/** Cells of one column, or of one row where a host lays the list across. */
interface Cells {
  readonly length: number;
  at(row: number): unknown;
}

function columnCells(raw: unknown, argument: string): Cells {
  if (!Array.isArray(raw)) return { length: 1, at: () => raw };
  const rows = raw as readonly unknown[];
  const first = rows[0];
  if (!Array.isArray(first)) throw new DomainError("invalid", `${argument} must be a column of cells`);
  const width = first.length;
  if (rows.length === 1) return { length: width, at: (column) => (first as readonly unknown[])[column] };
  if (width === 1) return { length: rows.length, at: (row) => (rows[row] as readonly unknown[])[0] };
  throw new DomainError("invalid", `${argument} must be one column; got ${rows.length} rows by ${width} columns`);
}

function plural(name: string): string {
  return /s$|counts/.test(name) ? name : `${name}s`;
}
