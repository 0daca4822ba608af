import type { Source } from "../shared/source";

export const cha2010: Source = {
  name: "Cha et al. 2010",
  citation:
    "Cha E, Hertl JA, Bar D, Gröhn YT 2010. The cost of different types of lameness in dairy cows calculated by dynamic programming. Prev Vet Med 97:1-8.",
  standing: "memory",
};

/** US$ a case. */
export const costsUsd2010 = { SU: 216.07, DD: 132.96, IP: 120.7 } as const;
