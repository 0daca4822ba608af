import type { PlainCell } from "../../../src/workbook/port";
import type { SaveLog } from "../../../src/workbook/saving/save-log";
import type { TablePort } from "../../../src/workbook/table-port";

/** A table that a test starts from. */
export interface StartTable {
  readonly name: string;
  readonly sheet: string;
  /** Cell of the first heading. */
  readonly address: string;
  readonly headings: readonly string[];
  /** Headings of columns with days, formatted as dates. */
  readonly days?: readonly string[];
  /** The last column adds days to another: its formula reads [@<from>]+<add>. */
  readonly calculated?: { readonly heading: string; readonly from: string; readonly add: number };
  readonly rows: readonly (readonly PlainCell[])[];
}

/** A cell as it lies in the workbook, below the port. */
export interface RawCell {
  readonly value: PlainCell;
  readonly hasFormula: boolean;
  readonly numberFormat?: string;
  /** Of a cell outside tables, as far as it has it. */
  readonly look?: RawLook;
  /** Of the column of a cell outside tables, as the host measures it. */
  readonly width?: number;
}

export interface RawLook {
  readonly bold?: true;
  readonly italic?: true;
  readonly size?: number;
  readonly colour?: string;
  readonly fill?: string;
  readonly right?: true;
  readonly lineBelow?: string;
}

/** What another person does in the workbook by hand. Rows are counted from 0 below the headings. */
export interface OtherUser {
  setCell(table: string, row: number, heading: string, value: PlainCell): Promise<void>;
  deleteRow(table: string, row: number): Promise<void>;
  insertRow(table: string, row: number, cells: readonly PlainCell[]): Promise<void>;
  renameTable(from: string, to: string): Promise<void>;
  deleteTable(name: string): Promise<void>;
  renameColumn(table: string, from: string, to: string): Promise<void>;
  protectSheet(sheet: string): Promise<void>;
  /** Hides some rows by a filter. */
  filter(table: string): Promise<void>;
  /** Types into a cell outside tables. */
  typeAt(sheet: string, address: string, value: PlainCell): Promise<void>;
  /** Enters a formula that shows a blank into a cell outside tables. */
  enterBlankFormula(sheet: string, address: string): Promise<void>;
  /** Merges cells such as "B2:C3". */
  merge(sheet: string, area: string): Promise<void>;
  renameSheet(from: string, to: string): Promise<void>;
  deleteSheet(name: string): Promise<void>;
  /** Types into the cell so many rows below the table's last, in its first column. */
  typeBelow(table: string, rows: number): Promise<void>;
}

/** An open workbook of one host. */
export interface TestBook {
  /** The port as one more user has it. */
  user(log?: SaveLog): TablePort;
  readonly other: OtherUser;
  /** A cell of a table, row counted from 0 below the headings. */
  cell(table: string, row: number, heading: string): Promise<RawCell>;
  /** Rows between a table's headings and its end, blank ones too. */
  bodyRows(table: string): Promise<number>;
  sheetCell(sheet: string, address: string): Promise<RawCell>;
  sheetNames(): Promise<readonly string[]>;
  /** Steps that the host took since it was opened; a step is what can fail by itself. */
  steps(): number;
  /** Lets the steps from now on pass `after` times, then fail `times` times, then pass again. */
  failSteps(after: number, times: number): void;
  /** Awaited at each point at which another user's work may come in between. */
  setTurn(turn: () => Promise<void>): void;
  /** The workbook is closed under the port. */
  close(): Promise<void>;
}

/** A host as the contract needs it. */
export interface TestHost {
  readonly name: string;
  /** Whoever opens the workbook is the same user, whose changes are all local. */
  readonly oneUser?: boolean;
  /** Where several users write at once, blank rows may be left between theirs. */
  readonly mayLeaveBlankRows?: boolean;
  open(tables: readonly StartTable[]): Promise<TestBook>;
}
