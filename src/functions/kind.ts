import type { Cell } from "./cell";

/** How an argument is handed over: one cell, one column of cells, or a block with its headings in the first row. */
export type Shape = "scalar" | "column" | "table";

/** What a kind holds its values to, as data: for messages, the help page and the random-argument tests. */
export interface Limits {
  readonly min?: number;
  readonly max?: number;
  readonly whole?: boolean;
  /** Why the limits are where they are. */
  readonly reason?: string;
  /** The only texts accepted, in the form in which they are handed on. */
  readonly choices?: readonly string[];
}

/** A kind of argument: what it is, its limits, and how a raw cell or range becomes a value of type T. */
export interface Kind<T> {
  /** Trade word for the kind, as the help page shows it: "date", "lesion code", "column of counts". */
  readonly name: string;
  readonly shape: Shape;
  /** Unit of a number; absent where there is none. */
  readonly unit?: string;
  readonly limits: Limits;
  /** Completes "<argument> must be ..."; for example "a number from 0 to 100 mm". */
  readonly must: string;
  /** A 0 of this kind cannot be real (a date, a count, a length): hosts that hand a blank over as 0 mean a blank. */
  readonly zeroIsBlank?: boolean;
  /** Columns of a settings table, heading by heading. */
  readonly headings?: readonly string[];
  /** Reads what the host hands over. Throws DomainError naming the argument. */
  read(raw: unknown, argument: string): T;
}

/** A kind of one cell. A column kind is made of it. */
export interface ScalarKind<T> extends Kind<T> {
  readonly shape: "scalar";
  /** Reads a cell that is not blank. `where` names the argument, and in a column its row. */
  readCell(cell: Exclude<Cell, null>, where: string): T;
  readonly zeroIsBlank: boolean;
  /** Numbers that are taken as written, so that a long column reads them without a call. */
  readonly asWritten?: NumberRange;
  /** Any number or text is taken, a number as its text, so that no two of either kind are read as one. */
  readonly takesAnyText?: true;
}

/** Numbers from `min` to `max`, both included. */
export interface NumberRange {
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
}
