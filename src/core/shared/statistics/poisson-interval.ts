import type { Interval } from "./interval";
import { twoSidedQuantile } from "./normal-quantile";

/**
 * Exact limits of the expected number of cases, given the number counted (whole, 0 or more): the expectations under
 * which as few, or as many, would be counted with probability (1 - level) / 2.
 * Source: Garwood F 1936, Fiducial limits for the Poisson distribution, Biometrika 28:437-442.
 */
export function poissonInterval(cases: number, level: number): Interval {
  const tail = (1 - level) / 2;
  return {
    low: cases === 0 ? 0 : solve(byarLimit(cases, level, -1), (mean) => atLeast(cases, mean), tail),
    high: solve(byarLimit(cases + 1, level, 1), (mean) => atMost(cases, mean), tail),
  };
}

/** Byar's limit falls below 0 for one case at a high level; any small mean does as a start then. */
const SMALLEST_START = 1e-6;

/**
 * Byar's approximation, where the search starts.
 * Source: Breslow NE, Day NE 1987, Statistical methods in cancer research II, IARC, p. 69.
 */
function byarLimit(cases: number, level: number, side: 1 | -1): number {
  const root = 1 - 1 / (9 * cases) + (side * twoSidedQuantile(level)) / (3 * Math.sqrt(cases));
  return Math.max(cases * root ** 3, SMALLEST_START);
}

/** The logarithm of a tail probability and its slope over the logarithm of the mean. */
interface LogTail {
  readonly log: number;
  readonly slope: number;
}

const MOST_STEPS = 50;
const PRECISION = 1e-14;

/** Newton's method on logarithms, where both tails are concave, so that the steps cannot oscillate. */
function solve(start: number, logTail: (mean: number) => LogTail, tail: number): number {
  let mean = start;
  for (let step = 0; step < MOST_STEPS; step++) {
    const { log, slope } = logTail(mean);
    const change = (log - Math.log(tail)) / slope;
    mean *= Math.exp(-change);
    if (Math.abs(change) <= PRECISION) break;
  }
  return mean;
}

/** P(count <= cases): the term of `cases` and the smaller ones below it, as multiples of it. */
function atMost(cases: number, mean: number): LogTail {
  let sum = 1;
  let term = 1;
  for (let k = cases; k > 0 && term > sum * Number.EPSILON; k--) sum += term *= k / mean;
  return { log: logPoisson(cases, mean) + Math.log(sum), slope: -mean / sum };
}

/** P(count >= cases): the term of `cases` and the smaller ones above it. */
function atLeast(cases: number, mean: number): LogTail {
  let sum = 1;
  let term = 1;
  for (let k = cases + 1; term > sum * Number.EPSILON; k++) sum += term *= mean / k;
  return { log: logPoisson(cases, mean) + Math.log(sum), slope: cases / sum };
}

/** From here on Stirling's series gives a factorial to double precision with four terms. */
const SMALLEST_FOR_STIRLING = 20;

/**
 * Logarithm of the Poisson probability of a count. For large counts as a distance from the mean, which keeps its
 * digits: Loader C 2000, Fast and accurate computation of binomial probabilities.
 */
export function logPoisson(count: number, mean: number): number {
  if (count < SMALLEST_FOR_STIRLING) {
    let factorial = 1;
    for (let k = 2; k <= count; k++) factorial *= k;
    return count * Math.log(mean) - mean - Math.log(factorial);
  }
  const excess = (mean - count) / count;
  const deviance = count * (excess - Math.log1p(excess));
  return -deviance - Math.log(2 * Math.PI * count) / 2 - stirlingRemainder(count);
}

/** What Stirling's formula leaves of the logarithm of a factorial (Abramowitz & Stegun 1964, 6.1.41). */
function stirlingRemainder(n: number): number {
  const n2 = n * n;
  return (1 / 12 - (1 / 360 - (1 / 1260 - 1 / (1680 * n2)) / n2) / n2) / n;
}
