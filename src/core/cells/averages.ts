/** Averages of a column of counts, NaN standing for no count. */
export interface CountAverages {
  readonly cows: number;
  readonly arithmetic: number;
  readonly geometric: number;
}

/**
 * Digits kept of a geometric mean: logarithms there and back leave an error in the 16th digit, by which equal counts of
 * 400 would come out a hair above a limit of 400.
 */
const DIGITS_KEPT = 14;

/**
 * Arithmetic and geometric mean of the counts that are there; both NaN when there is none. The geometric mean is
 * 2^(mean of log2), the count of the mean somatic cell score.
 */
export function averagesOf(counts: ArrayLike<number>): CountAverages {
  let cows = 0;
  let sum = 0;
  let logs = 0;
  for (let row = 0; row < counts.length; row++) {
    const count = counts[row]!;
    if (Number.isNaN(count)) continue;
    cows++;
    sum += count;
    logs += Math.log2(count);
  }
  return { cows, arithmetic: sum / cows, geometric: Number((2 ** (logs / cows)).toPrecision(DIGITS_KEPT)) };
}
