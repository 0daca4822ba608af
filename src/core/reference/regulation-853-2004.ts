import type { Source } from "../shared/source";

export const regulation853: Source = {
  name: "Regulation (EC) 853/2004",
  citation:
    "Regulation (EC) No 853/2004, Annex III, Section IX, Chapter I, Part III: raw cows' milk at most 400,000 cells/mL as a rolling geometric " +
    "average over three months with at least one sample a month, unless the authority sets another method (clause from memory).",
  standing: "memory",
};

/** Highest rolling mean of the tank, thousand cells/mL. */
export const EU_TANK_LIMIT_THOUSAND = 400;
