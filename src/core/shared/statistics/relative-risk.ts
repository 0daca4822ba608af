import type { Interval } from "./interval";
import { twoSidedQuantile } from "./normal-quantile";

/** Two groups of animals, those with and those without something, and how many of each are affected. */
export interface TwoGroups {
  readonly affectedWith: number;
  readonly allWith: number;
  readonly affectedWithout: number;
  readonly allWithout: number;
}

/** A ratio of two shares with its limits. */
export interface RelativeRisk extends Interval {
  readonly ratio: number;
}

/**
 * Share affected among those with, divided by the share among those without; limits by the logarithm (Wald).
 * Undefined where one of the groups has no affected animal, or both have nobody else: the logarithm then says nothing.
 * Source: Katz D, Baptista J, Azen SP, Pike MC 1978, Obtaining confidence intervals for the risk ratio in cohort
 * studies, Biometrics 34:469-474.
 */
export function relativeRisk(groups: TwoGroups, level: number): RelativeRisk | undefined {
  const { affectedWith, allWith, affectedWithout, allWithout } = groups;
  if (affectedWith === 0 || affectedWithout === 0) return undefined;
  const variance = 1 / affectedWith - 1 / allWith + (1 / affectedWithout - 1 / allWithout);
  if (variance <= 0) return undefined;
  const ratio = affectedWith / allWith / (affectedWithout / allWithout);
  const factor = Math.exp(twoSidedQuantile(level) * Math.sqrt(variance));
  return { ratio, low: ratio / factor, high: ratio * factor };
}
