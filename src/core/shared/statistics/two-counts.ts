import { logPoisson } from "./poisson-interval";

/**
 * How often chance alone parts two counts so far, or farther, where nothing changed: of all cases each falls into the
 * later time with probability `expected` (over 0, below 1), the later time's part of the time at risk. Twice the
 * smaller tail of the binomial distribution, and at most 1. Both counts are whole; together they are 1 or more.
 * Source: Przyborowski J, Wilenski H 1940, Homogeneity of results in testing samples from Poisson series, Biometrika
 * 31:313-323. Below 1 - level it leaves out what the exact limits of Clopper CJ, Pearson ES 1934, Biometrika
 * 26:404-413, leave out.
 */
export function chanceOfDifference(cases: number, casesBefore: number, expected: number): number {
  const both = cases + casesBefore;
  const tail =
    cases > both * expected ? atLeast(cases, casesBefore, expected) : atLeast(casesBefore, cases, 1 - expected);
  return Math.min(1, 2 * tail);
}

/** P(count >= cases) beyond the middle: the term of `cases` and the smaller ones above it. */
function atLeast(cases: number, others: number, share: number): number {
  const odds = share / (1 - share);
  let sum = 1;
  let term = 1;
  for (let more = 1; more <= others && term > sum * Number.EPSILON; more++)
    sum += term *= (odds * (others - more + 1)) / (cases + more);
  return Math.exp(logBinomial(cases, others, share)) * sum;
}

/** Two Poisson counts, given their sum, are binomial; so the terms of Poisson make the binomial one. */
function logBinomial(cases: number, others: number, share: number): number {
  const both = cases + others;
  return logPoisson(cases, both * share) + logPoisson(others, both * (1 - share)) - logPoisson(both, both);
}
