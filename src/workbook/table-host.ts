import type { Unwatch } from "./port";
import type { BegunBlock, StandingCell, WrittenBlock } from "./saving/written-block";
import type { CellBlock, NewRow, NewTable, RowAsRead, TableContent, TableInfo, WorkbookChange } from "./table-port";

/** One step of a save or of taking it back. Rows are found by what they hold, first where they stood. */
export type Edit =
  | { readonly kind: "append"; readonly table: string; readonly rows: readonly NewRow[] }
  | { readonly kind: "set"; readonly row: RowAsRead; readonly cells: NewRow }
  | { readonly kind: "remove"; readonly row: RowAsRead };

/** What an edit left in the table. */
export type AppliedEdit =
  | { readonly kind: "append"; readonly rows: readonly RowAsRead[] }
  | {
      readonly kind: "set";
      readonly before: RowAsRead;
      readonly after: RowAsRead;
      readonly headings: readonly string[];
    }
  | { readonly kind: "remove"; readonly row: RowAsRead };

/** Rows that each table had before edits were written, by name. */
export type RowCounts = Readonly<Record<string, number>>;

/**
 * What an adapter does for a table port. Values that reach it are clean: text that a cell can hold, finite numbers,
 * whole days, no calculated column.
 */
export interface TableHost {
  listTables(): Promise<readonly TableInfo[]>;
  readTable(name: string): Promise<TableContent>;
  /**
   * Applies all edits or none. Refuses an edit of a row that no longer holds what the edit says. `begin` is called
   * when everything was checked and writing starts.
   */
  applyEdits(edits: readonly Edit[], begin: (rowCounts: RowCounts) => void): Promise<readonly AppliedEdit[]>;
  createTable(table: NewTable): Promise<void>;
  /** `begin` is called when everything was checked and writing starts. */
  writeBlock(block: CellBlock, begin: (begun: BegunBlock) => void): Promise<WrittenBlock>;
  /** The cells of a block as they stand; undefined where its sheet is gone. */
  readBlock(block: CellBlock): Promise<readonly (readonly StandingCell[])[] | undefined>;
  /** Takes a block out whole, or refuses where one of its cells holds something else, or its sheet is gone. */
  removeBlock(block: WrittenBlock): Promise<void>;
  watchChanges(listener: (change: WorkbookChange) => void): Unwatch;
}
