import { averagesOf, type CountAverages } from "./averages";
import { type HerdDoublings, herdDoublings } from "./herd-doublings";
import { highCows, USUAL_LIMIT_THOUSAND } from "./high-counts";
import { tankTotals, type TankTotals } from "./tank";

/** A test day of a herd, counted and averaged. */
export interface HerdSummary {
  /** Rows that hold a count, a lactation or milk. */
  readonly listed: number;
  readonly averages: CountAverages;
  readonly tank: TankTotals;
  /** Cows at or above 200 thousand cells/mL. */
  readonly high: number;
  readonly herd: HerdDoublings;
}

/**
 * Sums up a test day; counts in thousand cells/mL, lactations whole from 1. NaN for no value in any of the columns, or 0
 * for no lactation.
 */
export function herdSummary(
  counts: ArrayLike<number>,
  lactations: ArrayLike<number>,
  milk: ArrayLike<number>,
): HerdSummary {
  let listed = 0;
  for (let row = 0; row < counts.length; row++) {
    if (!(Number.isNaN(counts[row]!) && !(lactations[row]! >= 1) && Number.isNaN(milk[row]!))) listed++;
  }
  return {
    listed,
    averages: averagesOf(counts),
    tank: tankTotals(counts, milk),
    high: highCows(counts, USUAL_LIMIT_THOUSAND),
    herd: herdDoublings(counts, lactations),
  };
}
