import type { Interval } from "./interval";
import { twoSidedQuantile } from "./normal-quantile";

/**
 * Wilson score limits of a share: `cases` out of `of`, both whole, 0 <= cases <= of, of >= 1.
 * Source: Wilson EB 1927, JASA 22:209-212.
 */
export function wilsonInterval(cases: number, of: number, level: number): Interval {
  const share = cases / of;
  const z2 = twoSidedQuantile(level) ** 2;
  const centre = (share + z2 / (2 * of)) / (1 + z2 / of);
  const half = Math.sqrt((z2 / of) * (share * (1 - share) + z2 / (4 * of))) / (1 + z2 / of);
  return { low: cases === 0 ? 0 : centre - half, high: cases === of ? 1 : centre + half };
}
