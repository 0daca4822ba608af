import { type CellPosition, SHEET_ROWS } from "../cell-address";
import type { FunctionsAnswer } from "../book-port";
import type { CellLook } from "../look";
import type { PlainArea } from "../plain-book";
import type { CellPlace, PlainCell } from "../port";
import { filledRowCount } from "../saving/row-match";
import { tableGone, workbookClosed } from "../table-error";
import type { TableContent, TableInfo, WorkbookChange } from "../table-port";

export interface MemoryColumn {
  readonly heading: string;
  /** Fills the column from the other cells of its row; such a column is calculated. */
  readonly calculate?: (cells: Readonly<Record<string, PlainCell>>) => PlainCell;
  readonly numberFormat?: string;
}

export interface MemoryTable {
  readonly name: string;
  readonly sheet: string;
  /** Place of the first heading. */
  readonly at: CellPosition;
  readonly columns: readonly MemoryColumn[];
  /** What was typed, row by row; blank rows at the end are kept. */
  readonly rows: readonly (readonly PlainCell[])[];
  readonly filtered: boolean;
}

export interface MemoryCell {
  readonly value: PlainCell;
  readonly formula?: string;
  readonly numberFormat?: string;
  readonly look?: CellLook;
}

export interface MemorySheet {
  readonly name: string;
  readonly protected: boolean;
  /** Cells outside tables by address. */
  readonly cells: Readonly<Record<string, MemoryCell>>;
  readonly hidden?: boolean;
  readonly merges?: readonly PlainArea[];
  /** Cells that one formula fills together. */
  readonly spills?: readonly PlainArea[];
  /** Widths of columns, in characters, where they have one of their own. */
  readonly widths?: Readonly<Record<number, number>>;
}

export interface BookState {
  readonly tables: readonly MemoryTable[];
  readonly sheets: readonly MemorySheet[];
}

type Watcher = (change: WorkbookChange) => void;

/**
 * A workbook in memory that several users may have open. A change replaces the state whole, so that nobody sees half
 * of one. For tests of what stands on the table port.
 */
export class MemoryBook {
  private current: BookState;
  private readonly watchers = new Map<Watcher, unknown>();
  private open = true;
  /** Awaited before each step of a host; a test makes it fail or wait. */
  beforeStep: (step: string) => Promise<void> = () => Promise.resolve();
  /** Rows that a sheet has. */
  rowLimit = SHEET_ROWS;
  /** Whether formulas with HERD functions work: entered again they then show a blank, else #NAME?. */
  functions: FunctionsAnswer = "yes";
  /** The cell that was shown last. */
  shown: CellPlace | undefined;

  constructor(tables: readonly MemoryTable[] = []) {
    const sheets = [...new Set(tables.map(({ sheet }) => sheet))];
    this.current = { tables, sheets: sheets.map((name) => ({ name, protected: false, cells: {} })) };
  }

  get state(): BookState {
    if (!this.open) throw workbookClosed();
    return this.current;
  }

  table(name: string): MemoryTable {
    const table = this.state.tables.find((known) => known.name === name);
    if (table === undefined) throw tableGone(name);
    return table;
  }

  /** Puts a new state in place. Watchers of `who` hear of it as a local change, all others as a remote one. */
  replace(state: BookState, who: unknown, tables: readonly (string | undefined)[]): void {
    if (!this.open) throw workbookClosed();
    this.current = state;
    for (const [watcher, owner] of [...this.watchers]) {
      const source = owner === who ? "local" : "remote";
      for (const table of tables) watcher({ source, ...(table === undefined ? {} : { table }) });
    }
  }

  watch(watcher: Watcher, owner: unknown): () => void {
    this.watchers.set(watcher, owner);
    return () => this.watchers.delete(watcher);
  }

  close(): void {
    this.open = false;
  }
}

export function infoOf({ name, sheet, columns, rows, filtered }: MemoryTable, { sheets }: BookState): TableInfo {
  return {
    name,
    sheet,
    columns: columns.map(({ heading, calculate }) => ({ heading, calculated: calculate !== undefined })),
    rowCount: filledRowCount(rows),
    protected: sheets.some((known) => known.name === sheet && known.protected),
    filtered,
  };
}

export function contentOf(table: MemoryTable, state: BookState): TableContent {
  const info = infoOf(table, state);
  const { columns } = table;
  const isTyped = columns.every(({ calculate }) => calculate === undefined);
  const rows = table.rows.slice(0, info.rowCount).map((row) => {
    if (isTyped) return columns.map((_, index) => row[index] ?? null);
    const cells = Object.fromEntries(columns.map(({ heading }, index) => [heading, row[index] ?? null]));
    return columns.map(({ calculate }, index) => (calculate === undefined ? (row[index] ?? null) : calculate(cells)));
  });
  return { ...info, rows };
}
