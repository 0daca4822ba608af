import type { Source } from "../shared/source";

/** The digital cushion is thin in thin cows and thinnest about 120 days after calving. */
export const bicalho2009: Source = {
  name: "Bicalho, Machado & Caixeta 2009",
  citation:
    "Bicalho RC, Machado VS, Caixeta LS 2009. Lameness in dairy cattle: a debilitating disease or a disease of debilitated cattle? J Dairy Sci 92:3175-3184.",
  standing: "memory",
};

export const CUSHION_THINNEST_DAYS_IN_MILK = 120;
