import { commonPractice, type Source } from "../shared/source";
import { type Claw, type Limb, otherClaw, referenceClaw } from "./reference-claw";
import { MEASURING_ERROR_MM } from "./toe-length";

/** Taking more than this off one sole can leave it thin. */
const MUCH_OFF_MM = 3;

export const balancePractice: Source = commonPractice(
  `heels of one foot are brought to one height from the higher side; over ${MUCH_OFF_MM} mm off a sole can leave it thin`,
);

export interface HeelBalance {
  /** The claw that is lowered; none where the heels are level or the reference claw is the higher one. */
  readonly lower?: Claw;
  readonly mm: number;
  readonly thinSole: boolean;
  readonly referenceIsHigher: boolean;
}

/**
 * Which heel to lower and by how many whole mm. The heel of the reference claw (hind the inner, front the outer) is
 * never lowered. Source: Toussaint Raven 1985.
 */
export function heelBalance(innerHeelMm: number, outerHeelMm: number, limb: Limb): HeelBalance {
  const reference = referenceClaw(limb);
  const over = reference === "inner" ? outerHeelMm - innerHeelMm : innerHeelMm - outerHeelMm;
  if (over <= MEASURING_ERROR_MM) return { mm: 0, thinSole: false, referenceIsHigher: over < -MEASURING_ERROR_MM };
  return { lower: otherClaw(reference), mm: Math.floor(over), thinSole: over > MUCH_OFF_MM, referenceIsHigher: false };
}
