import type { Source } from "../shared/source";

export const solano2017: Source = {
  name: "Solano et al. 2017",
  citation:
    "Solano L, Barkema HW, Pickel C, Orsel K 2017. Effectiveness of a standardized footbath protocol for prevention of digital dermatitis. J Dairy Sci 100:1295-1307.",
  standing: "read",
};
