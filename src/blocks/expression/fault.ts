/** Errors that a cell of a block can show. */
export type ErrorCode = "#VALUE!" | "#N/A" | "#DIV/0!" | "#NUM!" | "#REF!" | "#NAME?" | "#NULL!" | "#CALC!" | "#SPILL!";

const CODES: ReadonlySet<unknown> = new Set<ErrorCode>([
  "#VALUE!",
  "#N/A",
  "#DIV/0!",
  "#NUM!",
  "#REF!",
  "#NAME?",
  "#NULL!",
  "#CALC!",
  "#SPILL!",
]);

/** Whether a cell holds an error. */
export function isError(cell: unknown): cell is ErrorCode {
  return typeof cell === "string" && cell.startsWith("#") && CODES.has(cell);
}

/** Why a cell shows an error: the error itself, and a sentence for the reader. */
export class Fault extends Error {
  override readonly name: string = "Fault";

  constructor(
    readonly code: ErrorCode,
    readonly sentence: string,
  ) {
    super(sentence);
  }
}

/** A table or column that a figure needs is not in the workbook, or cannot be named in a formula. */
export class MissingData extends Fault {
  override readonly name: string = "MissingData";

  constructor(sentence: string) {
    super("#N/A", sentence);
  }
}

/** The workbook has no such table or column: what may do without it goes on as if it were blank. */
export class MissingColumn extends MissingData {
  override readonly name = "MissingColumn";
}
