/** Count at which the score is 3, thousand cells/mL. Source: Ali & Shook 1980. */
const COUNT_AT_SCORE_3 = 100;
const SCORE_AT_100_THOUSAND = 3;

/**
 * Somatic cell score of a count in thousand cells/mL: log2(count / 100) + 3. It is neither rounded nor held to 0-9;
 * a count below 12.5 thousand has a negative score.
 * Source: Ali & Shook 1980.
 */
export function scoreOfCount(thousandPerMl: number): number {
  return Math.log2(thousandPerMl / COUNT_AT_SCORE_3) + SCORE_AT_100_THOUSAND;
}

/** Count in thousand cells/mL of a somatic cell score: 100 × 2^(score - 3). Source: Ali & Shook 1980. */
export function countOfScore(score: number): number {
  return COUNT_AT_SCORE_3 * 2 ** (score - SCORE_AT_100_THOUSAND);
}
