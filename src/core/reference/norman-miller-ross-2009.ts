import type { Source } from "../shared/source";

/** The inverse as printed, SCC = 2^(SCS-3) × 100,000, and a herd's count as its cows' counts weighted by their milk. */
export const normanMillerRoss2009: Source = {
  name: "Norman, Miller & Ross 2009",
  citation: "Norman HD, Miller RH, Ross FA 2009. Somatic cell counts of milk, research report SCC10 (2-09).",
  standing: "read",
};
