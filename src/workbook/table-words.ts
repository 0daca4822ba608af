/** Name of the one cell that holds the day on which the workbook is looked at. */
export const AS_OF = "AsOf";

/** Feet as the tables write them: left or right, front or hind. */
export const FEET = ["LF", "RF", "LH", "RH"] as const;
export const CLAWS = ["inner", "outer"] as const;
/** Stages of digital dermatitis, as Döpfer et al. 1997 and Berry et al. 2012 number them. */
export const STAGES = ["M1", "M2", "M3", "M4", "M4.1"] as const;
/** Where a toe length was measured from; the two are not comparable. */
export const LANDMARKS = ["hard horn", "skin-horn line"] as const;
/** The treatments that the sheet offers; other text is taken too. */
export const TREATMENTS = [
  "trim",
  "trim, block",
  "trim, block, pain relief",
  "topical",
  "topical, bandage",
  "topical, pain relief",
  "vet called",
] as const;
/** How a foot was found when it was looked at again; gone where the cow left before. */
export const OUTCOMES = ["healed", "better", "same", "worse", "gone"] as const;
/** The part of the herd that a cow stands with. */
export const GROUPS = ["fresh", "high", "low", "dry"] as const;

/** Farms number the claw map from 0 (between the claws) to 12. */
export const ZONES = [0, 12] as const;
/** A claw shorter or longer than this was mistyped, or measured in another unit. */
export const TOE_MM = [30, 200] as const;
/** No cow calves more often than this. */
export const LACTATIONS = [1, 20] as const;
/** Stands in place of a lactation before the first calving. */
export const HEIFER = "heifer";
/** A lactation that lasts longer has a calving missing. */
export const DAYS_IN_MILK = [0, 1500] as const;
/** Beyond what a cow gives in a day. */
export const MILK_KG = [0, 120] as const;
/** Laboratories cap at 9,999 thousand. */
export const COUNT_THOUSAND = [1, 9999] as const;
