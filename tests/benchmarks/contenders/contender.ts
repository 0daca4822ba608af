import type { Cost } from "../cost";
import type { Figures } from "../sheet";

/** One way to compute a task, ready to run on its data. */
export interface Contender {
  /** Computes the task so many times in a row; the cost of one. */
  measure(times: number): Promise<Cost>;
  /** What it computed, where the task compares figures. */
  figures(): Figures | undefined;
  /** Shortest time over which it can be measured, ms. */
  readonly shortestMs: number;
  /** The cost of computing a sheet with the same cells and no formula on them, which is taken off. */
  readonly base?: Cost;
  /** Processes that work for it beside its own. */
  readonly processGroup?: number;
  close(): Promise<void>;
}

export const CONTENDERS = [
  "function",
  "reading the cells",
  "function in the trial engine",
  "bare loop",
  "bare loop, few logarithms",
  "formulas in the trial engine",
  "formulas in the library engine",
  "formulas in LibreOffice",
] as const;
export type ContenderName = (typeof CONTENDERS)[number];
