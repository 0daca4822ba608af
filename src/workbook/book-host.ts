import type { BrokenFormula, FunctionsAnswer } from "./book-port";
import type { PlainArea, PlainBook, PlainSheet } from "./plain-book";
import type { CellPlace, PlainCell } from "./port";
import type { TypedValue } from "./table-port";

/** A cell that must hold one thing and is to hold another. */
export interface CellEdit extends CellPlace {
  readonly was: PlainCell;
  readonly set: TypedValue;
  /** The number format that the cell is to have; absent: as it is, or as the value needs it. */
  readonly numberFormat?: string;
}

/** What an edit left in a cell. */
export interface AppliedCell extends CellPlace {
  readonly before: PlainCell;
  readonly after: PlainCell;
  /** The number format before; absent where it stayed as it was. */
  readonly formatBefore?: string;
}

/** A range that is to be a table, under a name that is legal and was free when it was looked up. */
export interface TableRange {
  readonly sheet: string;
  readonly area: PlainArea;
  readonly name: string;
}

/** What an adapter does for a book port. Values that reach it are clean, addresses are those of single cells. */
export interface BookHost {
  readBook(): Promise<PlainBook>;
  readSheet(name: string): Promise<PlainSheet>;
  show(place: CellPlace): Promise<void>;
  /** Applies all edits or none. Refuses an edit of a cell that no longer holds what the edit says. */
  editCells(edits: readonly CellEdit[]): Promise<readonly AppliedCell[]>;
  /** Names of tables and defined names, which a new table may not have. */
  takenNames(): Promise<readonly string[]>;
  /** The headings are known to be sound; the host refuses what stands in the way now. */
  makeTable(table: TableRange): Promise<void>;
  /** Turns a table into a plain range; its cells stay. */
  unmakeTable(name: string): Promise<void>;
  brokenFormulas(): Promise<readonly BrokenFormula[]>;
  reenter(cells: readonly CellPlace[]): Promise<readonly BrokenFormula[]>;
  functionsLoaded(): Promise<FunctionsAnswer>;
}
