import { DomainError, invalid, shown } from "../core/shared/domain-error";
import { looksLikeDate, looksLikeNumber, readCell } from "./cell";
import type { ScalarKind } from "./kind";

/** Rows of one cell each. */
export type Rows = readonly (readonly unknown[])[];

export interface ColumnOptions {
  /**
   * What to do with text that is no value of the kind: "leave out" for numbers and dates (a note such as "dry"),
   * "leave out words" where text with a digit in it is meant as a value (a score "2b"), "refuse" where every text is
   * meant as a value (lesion codes, words).
   */
  readonly notes: "leave out" | "leave out words" | "refuse";
}

/** Reads single rows with all their checks. */
export class RowReader<T> {
  noteRows = 0;

  constructor(
    readonly item: ScalarKind<T>,
    readonly options: ColumnOptions,
    readonly rows: Rows,
    readonly argument: string,
  ) {}

  read(row: number): T | null {
    const { item, rows, argument } = this;
    const cells = rows[row];
    // No host hands over such a range; a value beside the column must not be passed over in silence.
    if (!Array.isArray(cells) || cells.length !== 1) throw invalid(rowName(argument, row), "one cell", cells?.length);
    const raw: unknown = cells[0];
    if (raw === null || raw === undefined || raw === "" || (raw === 0 && item.zeroIsBlank)) return null;
    const cell = readCell(raw, () => rowName(argument, row));
    if (cell === null || (cell === 0 && item.zeroIsBlank)) return null;
    if (typeof cell === "string" && isNote(cell, this.options.notes)) {
      if (row === 0) refuseHeading(cell, rows, argument);
      this.noteRows++;
      return null;
    }
    return this.#readValue(cell, row);
  }

  /** The message of a bad row names the row as counted in the range handed over. */
  #readValue(cell: number | string | boolean, row: number): T {
    const { item, rows, argument } = this;
    try {
      return item.readCell(cell, argument);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      if (row === 0 && typeof cell === "string" && item.asWritten !== undefined && isWord(cell))
        refuseHeading(cell, rows, argument);
      throw new DomainError(error.kind, error.message.replace(argument, rowName(argument, row)));
    }
  }
}

export function rowName(argument: string, row: number): string {
  return `${argument} row ${row + 1}`;
}

function isNote(text: string, notes: ColumnOptions["notes"]): boolean {
  if (notes === "refuse" || (notes === "leave out words" && /\d/.test(text))) return false;
  return isWord(text);
}

function isWord(text: string): boolean {
  return !looksLikeNumber(text) && !looksLikeDate(text);
}

/** Marks that farms write where there is no value; any other text on top of numbers is taken for the heading. */
const NO_VALUE_MARKS = /^(-+|–|—|\?|\.|x|n\/?a|none|no|dry|missing|absent|sold|dead|gone|not tested|not scored)$/i;

function refuseHeading(cell: string, rows: Rows, argument: string): void {
  if (NO_VALUE_MARKS.test(cell)) return;
  for (let row = 1; row < rows.length; row++) {
    if (typeof rows[row]?.[0] === "number") {
      throw new DomainError(
        "invalid",
        `${argument} row 1 holds the text ${shown(cell)}, which looks like the heading: pass the column without its heading`,
      );
    }
  }
}
