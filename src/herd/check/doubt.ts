import type { PlainCell } from "../../workbook/port";
import type { Day } from "../../workbook/table-port";
import type { HerdTableName } from "../mapping/targets";

/** How sure it is that something is wrong: it cannot be so; it can hardly be so; it is right but worth knowing. */
export type DoubtLevel = "wrong" | "doubtful" | "note";

/** One cell that a repair would change. It may only be changed while it still holds `from`. */
export interface CellRepair {
  readonly address: string;
  readonly from: PlainCell;
  /** null makes the cell blank. */
  readonly to: number | string | Day | null;
}

/** A change that cannot make anything worse. It is data: nothing is changed until the user says so. */
export interface Repair {
  /** What it does, in plain words: "write 253 in place of 253000". */
  readonly title: string;
  readonly cells: readonly CellRepair[];
}

/** A cell, or a column of cells, that is doubtful. */
export interface Doubt {
  /** The check that found it, by its id. */
  readonly check: string;
  readonly level: DoubtLevel;
  readonly table: HerdTableName;
  readonly sheet: string;
  /** The cell, the cells from the first to the last, or the first of several alike: "D5", "D5:D90". */
  readonly address: string;
  /** How many cells it is about. */
  readonly cells: number;
  /** What the cell, or the first of them, holds. */
  readonly holds: PlainCell;
  /** What is wrong, in one sentence. */
  readonly wrong: string;
  /** Which figures it touches. */
  readonly touches: string;
  readonly repair?: Repair;
}
