import { isHigh } from "./high-counts";

/** What two tests in a row say of a cow. "first" where there is no earlier test. */
export type TwoTestStatus = "low" | "new" | "recovered" | "lasting" | "first high" | "first low";

/**
 * Status from the test before and this test; exactly the limit is high. Counts and limit in one unit.
 * Source: Fauteux 2014 (new: low then high; recovered: high then low).
 */
export function twoTestStatus(previous: number | undefined, current: number, limit: number): TwoTestStatus {
  const high = isHigh(current, limit);
  if (previous === undefined) return high ? "first high" : "first low";
  if (isHigh(previous, limit)) return high ? "lasting" : "recovered";
  return high ? "new" : "low";
}

/** Cows by status, and those tested before and not now. */
export type TwoTestTally = Readonly<Record<TwoTestStatus, number>> & { readonly notTestedNow: number };

/** Counts the cows of two columns of tests by status; NaN is no count. */
export function tallyTwoTests(previous: ArrayLike<number>, current: ArrayLike<number>, limit: number): TwoTestTally {
  const tally = { low: 0, new: 0, recovered: 0, lasting: 0, "first high": 0, "first low": 0, notTestedNow: 0 };
  for (let row = 0; row < current.length; row++) {
    const [before, now] = [previous[row]!, current[row]!];
    if (!Number.isNaN(now)) tally[twoTestStatus(Number.isNaN(before) ? undefined : before, now, limit)]++;
    else if (!Number.isNaN(before)) tally.notTestedNow++;
  }
  return tally;
}
