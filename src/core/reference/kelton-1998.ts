import type { Source } from "../shared/source";

/** What a case is, and cases over time at risk. */
export const kelton1998: Source = {
  name: "Kelton, Lissemore & Martin 1998",
  citation:
    "Kelton DF, Lissemore KD, Martin RE 1998. Recommendations for recording and calculating the incidence of selected clinical diseases of dairy cattle. J Dairy Sci 81:2502-2509.",
  standing: "memory",
};
