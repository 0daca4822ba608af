import type { Source } from "../shared/source";

export const toussaintRaven1985: Source = {
  name: "Toussaint Raven 1985",
  citation: "Toussaint Raven E 1985. Cattle Footcare and Claw Trimming. Farming Press, Ipswich.",
  standing: "read",
};

/** Toe length of the inner hind claw of Friesian cows, from where the horn turns hard. */
export const DUTCH_TOE_LENGTH_MM = 75;
/** Thickness of the sole at the toe that is kept. */
export const SOLE_AT_TOE_MM = { least: 5, kept: 7 } as const;
/** How far behind the toe the hollow of the sole begins. */
export const HOLLOW_BEGINS_MM = { from: 25, to: 30 } as const;
