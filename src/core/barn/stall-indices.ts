import { DomainError } from "../shared/domain-error";

/** Cows in the stalls of a pen at one look. */
export interface CowsInStalls {
  readonly lying: number;
  /** All four feet in the stall. */
  readonly standing: number;
  /** Front feet in the stall, hind feet in the alley. */
  readonly perching: number;
}

function touching({ lying, standing, perching }: CowsInStalls): number {
  const cows = lying + standing + perching;
  if (cows > 0) return cows;
  throw new DomainError("unavailable", "no cow touches a stall: count again at another time");
}

/** Cow comfort index: lying of all touching a stall. Source: Overton et al. 2003 in Cook et al. 2005. */
export function comfortIndex(cows: CowsInStalls): number {
  return cows.lying / touching(cows);
}

/** Stall standing index: standing or perching of all touching a stall. Source: Cook et al. 2005. */
export function standingIndex(cows: CowsInStalls): number {
  return (cows.standing + cows.perching) / touching(cows);
}

/** Stall perching index: perching of all touching a stall. Source: Cook et al. 2005. */
export function perchingIndex(cows: CowsInStalls): number {
  return cows.perching / touching(cows);
}

/** Stall use index: lying of all in the pen that do not eat. Source: Overton et al. 2003 in Cook et al. 2005. */
export function stallUseIndex(lying: number, penNotEating: number): number {
  if (lying <= penNotEating) return lying / penNotEating;
  throw new DomainError(
    "invalid",
    `lying must be at most penNotEating (${penNotEating}), which counts them too; got ${lying}`,
  );
}
