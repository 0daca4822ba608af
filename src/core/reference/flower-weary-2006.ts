import type { Source } from "../shared/source";

/** Numerical rating 1-5 in which half scores are given. */
export const flowerWeary2006: Source = {
  name: "Flower & Weary 2006",
  citation:
    "Flower FC, Weary DM 2006. Effect of hoof pathologies on subjective assessments of dairy cow gait. J Dairy Sci 89:139-146.",
  standing: "memory",
};
