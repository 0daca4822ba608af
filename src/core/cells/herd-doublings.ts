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

const UNKNOWN = 0;
const FIRST = 1;
const LATER = 2;
/** Group of a lactation number; of a number beyond them LATER. No branch, since processors guess those of a herd badly. */
const GROUP_OF = Uint8Array.from({ length: 32 }, (_, lactation) => Math.min(lactation, LATER));

/**
 * Adds up a test day's doublings above the base in one pass, so that any model can be laid over them.
 * `counts` in thousand cells/mL, NaN for none; `lactations` whole from 1, NaN or 0 for none.
 */
export function herdDoublings(counts: ArrayLike<number>, lactations: ArrayLike<number>): HerdDoublings {
  const cows = new Int32Array(LATER + 1);
  const doublings = new Float64Array(LATER + 1);
  const products = new Float64Array(LATER + 1).fill(1);
  let withoutCount = 0;
  let capped = 0;
  const unknownRows: number[] = [];
  for (let row = 0; row < counts.length; row++) {
    const count = counts[row]!;
    const lactation = lactations[row]!;
    if (Number.isNaN(count)) {
      if (lactation >= 1) withoutCount++;
      continue;
    }
    if (isCapped(count)) capped++;
    // No lactation becomes 0 here.
    const group = GROUP_OF[lactation | 0] ?? LATER;
    cows[group]!++;
    if (group === UNKNOWN && unknownRows.length < ROWS_NAMED) unknownRows.push(row);
    const product = products[group]! * (Math.max(count, LOSS_BASE_THOUSAND) / LOSS_BASE_THOUSAND);
    if (product > LARGE_PRODUCT) {
      doublings[group]! += Math.log2(product);
      products[group] = 1;
    } else products[group] = product;
  }
  const groupOf = (group: number): CowGroup => ({
    cows: cows[group]!,
    doublings: doublings[group]! + Math.log2(products[group]!),
  });
  return {
    first: groupOf(FIRST),
    later: groupOf(LATER),
    unknown: groupOf(UNKNOWN),
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
