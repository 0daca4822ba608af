import type { Source } from "../shared/source";

export const aliShook1980: Source = {
  name: "Ali & Shook 1980",
  citation:
    "Ali AKA, Shook GE 1980. An optimum transformation for somatic cell concentration in milk. J Dairy Sci 63:487-490.",
  standing: "memory",
};

/** The inverse as printed: SCC = 2^(SCS-3) × 100,000. */
export const normanMillerRoss2009: Source = {
  name: "Norman, Miller & Ross 2009",
  citation: "Norman HD, Miller RH, Ross FA 2009. Somatic cell counts of milk, research report SCC10 (2-09).",
  standing: "read",
};
