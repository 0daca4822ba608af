import { wallAndSole } from "../reference/tsuka-2014";
import { invalid } from "../shared/domain-error";
import type { Claw } from "./reference-claw";

/**
 * Thickness of the sole, mm, that goes with a toe length from where the horn turns hard, hind claw: straight lines
 * between the printed values. Refuses a length outside them. Source: Tsuka et al. 2014.
 */
export function soleThicknessMm(lengthMm: number, claw: Claw): number {
  const points = wallAndSole[claw];
  const [first, last] = [points[0]!, points.at(-1)!];
  if (lengthMm < first.wallMm || lengthMm > last.wallMm)
    throw invalid(
      "lengthMm",
      `from ${first.wallMm} to ${last.wallMm} mm, the range printed for the ${claw} claw`,
      lengthMm,
    );
  const upper = Math.max(
    1,
    points.findIndex(({ wallMm }) => wallMm >= lengthMm),
  );
  const [low, high] = [points[upper - 1]!, points[upper]!];
  const part = (lengthMm - low.wallMm) / (high.wallMm - low.wallMm);
  return low.soleMm + part * (high.soleMm - low.soleMm);
}
