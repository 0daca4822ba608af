import type { Source } from "../shared/source";

export const cochran1977: Source = {
  name: "Cochran 1977",
  citation:
    "Cochran WG 1977. Sampling techniques, 3rd ed. Wiley, New York. Section 4.4, sample size with finite population.",
  standing: "memory",
};
