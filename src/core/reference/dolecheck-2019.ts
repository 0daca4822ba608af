import type { Source } from "../shared/source";

export const dolecheck2019: Source = {
  name: "Dolecheck et al. 2019",
  citation:
    "Dolecheck KA, Overton MW, Mark TB, Bewley JM 2019. Use of a stochastic simulation model to estimate the cost per case of digital dermatitis, sole ulcer, and white line disease by parity group and incidence timing. J Dairy Sci 102:716-730.",
  standing: "read",
};

/** US$ of 2018 a case, all parities. */
export const costsUsd2018 = { SU: 178, WL: 152, DD: 64 } as const;
