import type { PlainArea, PlainBook, PlainSheet } from "./plain-book";
import type { CellPlace, PlainCell } from "./port";
import type { PastSave, TypedValue } from "./table-port";

/** A cell that is to hold something else. */
export interface CellChange extends CellPlace {
  /** What it held when it was read, as `readBook` gave it; null for a blank. */
  readonly was: PlainCell;
  /** What it is to hold; null makes it blank. Text never becomes a formula, number or date. */
  readonly set: TypedValue;
}

/** Cells that are changed together, on any number of sheets, or not at all. */
export interface CellChanges {
  /** Chosen by who changes. The same id is written once, however often it is handed over, also after a crash. */
  readonly id: string;
  /** How the list of changes calls it: "12 dates that were text". */
  readonly title: string;
  readonly cells: readonly CellChange[];
}

/** A plain range that is to become a table. No cell is moved or rewritten. */
export interface RangeToTable {
  readonly id: string;
  readonly title: string;
  readonly sheet: string;
  /** The row of headings and the rows below it. */
  readonly area: PlainArea;
  /** Wanted name. Where it is no legal name, or one that is in use, the nearest free one is taken. */
  readonly name: string;
}

/** A cell whose formula Excel could not work out. */
export interface BrokenFormula extends CellPlace {
  /** As typed, in English and with "=": "=HERD.RECHECK.DATE(A2)". */
  readonly formula: string;
}

/** How many cells are wanted. */
export interface Room {
  readonly rows: number;
  readonly columns: number;
}

/** Whether formulas that call HERD functions are worked out here. "unknown" where no cell shows it. */
export type FunctionsAnswer = "yes" | "no" | "unknown";

/**
 * The workbook as sheets and cells, whatever host it is open in. Everything that crosses is plain data. Every method
 * rejects with a TableError, whose message is a plain sentence; what it refuses leaves the workbook as it was, save
 * for kind "uncertain".
 */
export interface BookPort {
  /** All sheets, hidden ones too. */
  readBook(): Promise<PlainBook>;

  /** One sheet. Rejects with "sheet-gone" where there is none of that name. */
  readSheet(name: string): Promise<PlainSheet>;

  /** Selects a cell, or several such as "B3:C9", and brings them into sight. Rejects on a hidden sheet with "hidden". */
  show(place: CellPlace): Promise<void>;

  /**
   * Changes all cells or none. Rejects with "changed", naming the cell, where one no longer holds `was`; with
   * "calculated" where a formula fills it, with "merged" where it lies under a merged cell.
   */
  changeCells(changes: CellChanges): Promise<void>;

  /**
   * Makes a table of a plain range and gives the name it got. Rejects with "headings" where a heading is blank, double
   * or no text, with "occupied" where the range meets another table, with "merged" where it holds merged cells, with
   * "calculated" where one formula fills several of its cells.
   */
  makeTable(table: RangeToTable): Promise<string>;

  /** What can be taken back of changes and tables made, the latest first. */
  pastChanges(): readonly PastSave[];

  /**
   * Takes changed cells back whole; rejects with "changed" where someone changed one meanwhile. A table that was made
   * becomes a plain range again, its cells as they now are; where it was renamed or deleted it rejects with "table-gone".
   */
  takeBack(id: string): Promise<void>;

  /** Cells that show #NAME? and whose formula calls a HERD function. */
  brokenFormulas(): Promise<readonly BrokenFormula[]>;

  /**
   * Enters the formulas of these cells again, unchanged: Excel then looks their functions up anew. Gives those that
   * still show #NAME?, which means that the functions are not loaded. Cells that are no broken formulas any more are
   * left alone.
   */
  reenter(cells: readonly CellPlace[]): Promise<readonly BrokenFormula[]>;

  functionsLoaded(): Promise<FunctionsAnswer>;

  /** Whether every cell of an area is blank and belongs to no table. Pictures and charts are not seen. */
  isFree(sheet: string, area: PlainArea): Promise<boolean>;

  /**
   * First cell, such as "H1", of free cells on a sheet: beside what is there, so that no list is kept from growing;
   * below it only where the columns end. A row or column stays free between. undefined where there is no room.
   */
  findRoom(sheet: string, room: Room): Promise<string | undefined>;
}
