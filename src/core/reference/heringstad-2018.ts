import type { Source } from "../shared/source";

/** Genetic correlations are strongest inside SH, SU, WL and inside DD/ID, HHE, and low between the two sets. */
export const heringstad2018: Source = {
  name: "Heringstad et al. 2018",
  citation:
    "Heringstad B, Egger-Danner C, Charfeddine N, et al. 2018. Invited review: Genetics and claw health: opportunities to enhance claw health by genetic selection. J Dairy Sci 101:4801-4821.",
  standing: "read",
};
