import { twoSidedQuantile } from "./normal-quantile";

/** Rounding noise that must not push a whole number up to the next one. */
const NOISE = 1e-9;

/**
 * How many of `population` animals to look at so that a share expected to be `share` is known to within `margin`
 * (both as fractions): n0 = z² p (1 - p) / d², n = n0 / (1 + (n0 - 1) / N), rounded up.
 * Source: Cochran WG 1977, Sampling techniques, 3rd ed., eq. 4.1-4.2 (from memory).
 */
export function sampleSize(population: number, share: number, margin: number, level: number): number {
  const infinite = (twoSidedQuantile(level) ** 2 * share * (1 - share)) / margin ** 2;
  return Math.max(1, Math.ceil(infinite / (1 + (infinite - 1) / population) - NOISE));
}
