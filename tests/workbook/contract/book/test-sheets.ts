import type { BookPort } from "../../../../src/workbook/book-port";
import type { PlainCell } from "../../../../src/workbook/port";
import type { BookLog } from "../../../../src/workbook/saving/book-log";
import type { RawCell } from "../test-book";

/** A cell that a test starts from. */
export interface StartCell {
  readonly value: PlainCell;
  /** As typed, without "="; `value` is then what was saved with it. */
  readonly formula?: string;
  readonly numberFormat?: string;
  /** Cells that the formula fills, its own first, such as "B2:B4". Their values are given as those of cells. */
  readonly spills?: string;
}

export interface StartSheet {
  readonly name: string;
  readonly hidden?: boolean;
  readonly cells: Readonly<Record<string, StartCell>>;
  /** Such as "B2:C2". */
  readonly merges?: readonly string[];
  /** Tables over cells that are given above. */
  readonly tables?: readonly { readonly name: string; readonly area: string }[];
}

/** An open workbook of one host. */
export interface TestSheets {
  /** The port as one more user has it. */
  user(log?: BookLog): BookPort;
  /** What another person types. */
  type(sheet: string, address: string, value: PlainCell): Promise<void>;
  protectSheet(sheet: string): Promise<void>;
  deleteSheet(sheet: string): Promise<void>;
  cell(sheet: string, address: string): Promise<RawCell>;
  /** The place shown last, as "Sheet!A1"; undefined where the host has no screen. */
  shown(): string | undefined;
  /** Steps that the host took since it was opened; a step is what can fail by itself. */
  steps(): number;
  /** Lets the steps from now on pass `after` times, then fail `times` times, then pass again. */
  failSteps(after: number, times: number): void;
  close(): Promise<void>;
}

export interface SheetsHost {
  readonly name: string;
  /** The host has a screen. */
  readonly shows: boolean;
  /** The host computes formulas, with these functions or without them. Without: nothing is known of them. */
  readonly computes: boolean;
  open(sheets: readonly StartSheet[]): Promise<TestSheets>;
}
