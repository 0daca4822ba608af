import { LOSS_BASE_THOUSAND, type LossModel } from "./loss-models";

/** Some of the herd's cows: how many, and the doublings of their counts above the base, added up. */
export interface CowGroup {
  readonly cows: number;
  readonly doublings: number;
}

/** A test day's cows with a count, by lactation. */
export interface HerdDoublings {
  readonly first: CowGroup;
  readonly later: CowGroup;
  /** Cows with a count whose lactation is not known. */
  readonly unknown: CowGroup;
  /** The first rows of those, counted from 0. */
  readonly unknownRows: readonly number[];
  /** Rows with a lactation and no count. */
  readonly withoutCount: number;
  /** Counts at the laboratory's cap. */
  readonly capped: number;
}

/**
 * What laboratories and files write for the highest counts, thousand cells/mL: the true count is this or more.
 * Common practice, no source.
 */
export const CAP_THOUSAND = 9999;
/** Counts from here on are no cap any more. */
const ABOVE_CAP_THOUSAND = 10_000;

/** So many rows are named when something is missing in them. */
const ROWS_NAMED = 5;

/**
 * Logarithms are added up by multiplying the ratios and taking one logarithm whenever the product grows past this:
 * many times faster over a long column than a logarithm a row, and with fewer roundings. A ratio stays below 1e6, so
 * that the product stays far below the largest number there is (1.8e308).
 */
const LARGE_PRODUCT = 1e250;

/** Whether a count in thousand cells/mL stands at the laboratory's cap. */
export function isCapped(thousandPerMl: number): boolean {
  return thousandPerMl >= CAP_THOUSAND && thousandPerMl < ABOVE_CAP_THOUSAND;
}

/**
 * Adds up a test day's doublings above the base in one pass, so that any model can be laid over them.
 * `counts` in thousand cells/mL; NaN stands for no value in either column.
 */
export function herdDoublings(counts: ArrayLike<number>, lactations: ArrayLike<number>): HerdDoublings {
  let [firstCows, laterCows, unknownCows] = [0, 0, 0];
  let [first, later, unknown] = [0, 0, 0];
  let [firstProduct, laterProduct] = [1, 1];
  let [withoutCount, capped] = [0, 0];
  const unknownRows: number[] = [];
  for (let row = 0; row < counts.length; row++) {
    const count = counts[row]!;
    const lactation = lactations[row]!;
    if (Number.isNaN(count)) {
      if (!Number.isNaN(lactation)) withoutCount++;
      continue;
    }
    if (isCapped(count)) capped++;
    const ratio = count > LOSS_BASE_THOUSAND ? count / LOSS_BASE_THOUSAND : 1;
    if (lactation > 1) {
      laterCows++;
      laterProduct *= ratio;
      if (laterProduct > LARGE_PRODUCT) {
        later += Math.log2(laterProduct);
        laterProduct = 1;
      }
    } else if (lactation === 1) {
      firstCows++;
      firstProduct *= ratio;
      if (firstProduct > LARGE_PRODUCT) {
        first += Math.log2(firstProduct);
        firstProduct = 1;
      }
    } else {
      unknownCows++;
      unknown += Math.log2(ratio);
      if (unknownRows.length < ROWS_NAMED) unknownRows.push(row);
    }
  }
  first += Math.log2(firstProduct);
  later += Math.log2(laterProduct);
  return {
    first: { cows: firstCows, doublings: first },
    later: { cows: laterCows, doublings: later },
    unknown: { cows: unknownCows, doublings: unknown },
    unknownRows,
    withoutCount,
    capped,
  };
}

/** Cows with a count. */
export function countedCows({ first, later, unknown }: HerdDoublings): number {
  return first.cows + later.cows + unknown.cows;
}

/**
 * Milk that the herd loses on a day like the test day, kg. Cows of unknown lactation are reckoned with the later
 * slope, which is theirs only in a model that does not split by lactation: others must be refused before.
 */
export function herdLossKgPerDay({ first, later, unknown }: HerdDoublings, model: LossModel): number {
  return first.doublings * model.first + (later.doublings + unknown.doublings) * model.later;
}
