import type { Interval } from "../shared/statistics/interval";
import { poissonInterval } from "../shared/statistics/poisson-interval";

/** Mean length of a year, leap years included. */
export const DAYS_A_YEAR = 365.25;
const COW_YEARS = 100;

/** Below this count the limits of a rate are so wide (a third and more to either side) that it is called small. */
export const FEW_CASES = 10;

/** New cases per 100 cow-years: cases / (cow-days / 365.25) × 100. */
export function casesPer100CowYears(cases: number, cowDays: number): number {
  return (cases / (cowDays / DAYS_A_YEAR)) * COW_YEARS;
}

/** The rate's exact Poisson limits. */
export function rateInterval(cases: number, cowDays: number, level: number): Interval {
  const { low, high } = poissonInterval(cases, level);
  return { low: casesPer100CowYears(low, cowDays), high: casesPer100CowYears(high, cowDays) };
}

/** A rate against a target: chance alone may explain a target inside the rate's limits. */
export type AgainstTarget = "above" | "below" | "within chance";

export function againstTarget({ low, high }: Interval, target: number): AgainstTarget {
  return low > target ? "above" : high < target ? "below" : "within chance";
}
