import { INFECTION_LIMIT_THOUSAND } from "../reference/dohoo-leslie-1991";

/** Limit between low and high cows unless the user gives another, thousand cells/mL. Source: Dohoo & Leslie 1991. */
export const USUAL_LIMIT_THOUSAND = INFECTION_LIMIT_THOUSAND;

/** Whether a count is high: exactly the limit is. Source: Fauteux 2014 ("200,000 or more"). */
export function isHigh(thousandPerMl: number, limitThousand: number): boolean {
  return thousandPerMl >= limitThousand;
}

/** How many of the counts are high; NaN is no count. */
export function highCows(counts: ArrayLike<number>, limitThousand: number): number {
  let high = 0;
  for (let row = 0; row < counts.length; row++) if (isHigh(counts[row]!, limitThousand)) high++;
  return high;
}
