import type { Source } from "../shared/source";

export const raubertasShook1982: Source = {
  name: "Raubertas & Shook 1982",
  citation:
    "Raubertas RF, Shook GE 1982. Relationship between lactation measures of somatic cell concentration and milk yield. " +
    "J Dairy Sci 65:419-425. Abstract: 135 ± 20 kg (first lactation) and 270 ± 30 kg (others) for each unit of the average natural logarithm.",
  standing: "read",
};

/** kg of milk a lactation for each unit of the average natural logarithm of the count (not of the somatic cell score). */
export const RAUBERTAS_SHOOK_KG_PER_LN = { first: 135, later: 270 } as const;
