import type { Source } from "../shared/source";

export const archer2015: Source = {
  name: "Archer et al. 2015",
  citation:
    "Archer SC, Newsome R, Dibble H, Sturrock CJ, Chagunda MGG, Mason CS, Huxley JN 2015. Claw length recommendations for dairy cow foot trimming. Vet Rec 177:222.",
  standing: "read",
};

/** Added to the length inside the claw for 5 mm of sole and 8 mm of wall at a toe angle of 50 degrees. */
const ADDED_FOR_HORN_MM = 14;
/** Length inside the claw, from the upper end of the horn to the tip of the dermis: 96 % of claws have at most this. */
const INSIDE_OF_96_PERCENT_MM = 76;

/** Outer length of a claw, from the line where skin meets horn, that leaves a sole of 5 mm over this inner length. */
export function neededLengthMm(insideMm: number): number {
  return insideMm + ADDED_FOR_HORN_MM;
}

/** The proposed minimum for all Holstein-Friesian cows, from the line where skin meets horn: 90 mm. */
export const SKIN_HORN_MINIMUM_MM = neededLengthMm(INSIDE_OF_96_PERCENT_MM);
/** Longer by this a year of age; one herd, and age explains little of the spread. */
export const LONGER_PER_YEAR_MM = 1;
