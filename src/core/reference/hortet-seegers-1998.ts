import type { Source } from "../shared/source";

export const hortetSeegers1998: Source = {
  name: "Hortet & Seegers 1998",
  citation:
    "Hortet P, Seegers H 1998. Calculated milk production losses associated with elevated somatic cell counts in dairy cows: " +
    "review and critical discussion. Vet Res 29:497-510. For each doubling above 50,000: 0.4 and 0.6 kg a test day, 80 and 120 kg a lactation.",
  standing: "read",
};

/** kg of milk for each doubling above 50 thousand: first lactation and later ones. */
export const HORTET_SEEGERS_SLOPES = {
  kgPerDay: { first: 0.4, later: 0.6 },
  kgPerLactation: { first: 80, later: 120 },
} as const;
