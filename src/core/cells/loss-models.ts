import { HORTET_SEEGERS_SLOPES, hortetSeegers1998 } from "../reference/hortet-seegers-1998";
import { KOLDEWEIJ_KG_PER_LOG10, koldeweij1999 } from "../reference/koldeweij-1999";
import { LUO_KG_PER_DOUBLING, luo2022 } from "../reference/luo-2022";
import { POTTER_COMPARISON, potter2018 } from "../reference/potter-2018";
import { RAUBERTAS_SHOOK_KG_PER_LN, raubertasShook1982 } from "../reference/raubertas-shook-1982";
import { US_EXTENSION_SLOPES, usExtensionTable } from "../reference/us-extension-table";
import { unavailable } from "../shared/domain-error";
import { KG_PER_POUND } from "../shared/milk-units";
import type { Source } from "../shared/source";

/** Milk lost for each doubling of the cell count above the base: one slope for first and one for later lactations. */
export interface LossModel {
  readonly name: string;
  /** kg for each doubling, first lactation. */
  readonly first: number;
  /** kg for each doubling, second and later lactations. */
  readonly later: number;
  readonly source: Source;
}

/**
 * Count up to which nothing is counted as lost, thousand cells/mL. Printed so by the extension table and by Hortet &
 * Seegers 1998; the other papers give a slope alone, and the same base is used for them so that totals compare.
 */
export const LOSS_BASE_THOUSAND = 50;

/** A slope for each unit of the natural or the common logarithm is this much of it for each doubling. */
const LN_OF_DOUBLING = Math.LN2;
const LOG10_OF_DOUBLING = Math.log10(2);

/** Slopes for a single test: kg a day for each doubling of that test's count. The first is the default. */
export const DAILY_MODELS: readonly [LossModel, ...LossModel[]] = [
  {
    name: "US extension table",
    first: US_EXTENSION_SLOPES.lbPerDay.first * KG_PER_POUND,
    later: US_EXTENSION_SLOPES.lbPerDay.later * KG_PER_POUND,
    source: usExtensionTable,
  },
  { name: "Hortet-Seegers 1998", ...HORTET_SEEGERS_SLOPES.kgPerDay, source: hortetSeegers1998 },
  {
    name: "Koldeweij 1999",
    first: KOLDEWEIJ_KG_PER_LOG10.first * LOG10_OF_DOUBLING,
    later: KOLDEWEIJ_KG_PER_LOG10.later * LOG10_OF_DOUBLING,
    source: koldeweij1999,
  },
  { name: "Luo 2022", first: LUO_KG_PER_DOUBLING, later: LUO_KG_PER_DOUBLING, source: luo2022 },
  { name: "Potter 2018", first: potterSlope(), later: potterSlope(), source: potter2018 },
];

/** Slopes for a whole lactation: kg a lactation for each doubling of its geometric mean. The first is the default. */
export const LACTATION_MODELS: readonly [LossModel, ...LossModel[]] = [
  {
    name: "US extension table",
    first: US_EXTENSION_SLOPES.lbPerLactation.first * KG_PER_POUND,
    later: US_EXTENSION_SLOPES.lbPerLactation.later * KG_PER_POUND,
    source: usExtensionTable,
  },
  { name: "Hortet-Seegers 1998", ...HORTET_SEEGERS_SLOPES.kgPerLactation, source: hortetSeegers1998 },
  {
    name: "Raubertas-Shook 1982",
    first: RAUBERTAS_SHOOK_KG_PER_LN.first * LN_OF_DOUBLING,
    later: RAUBERTAS_SHOOK_KG_PER_LN.later * LN_OF_DOUBLING,
    source: raubertasShook1982,
  },
];

/** Days of the lactation that the lactation models speak of. */
export const LACTATION_DAYS = 305;

/** The lowest of all models in either lactation group: Hortet & Seegers' lactation slope spread over its days. */
export const LOWEST_DAILY: LossModel = {
  name: "Hortet-Seegers 1998, lactation figure / 305 days",
  first: HORTET_SEEGERS_SLOPES.kgPerLactation.first / LACTATION_DAYS,
  later: HORTET_SEEGERS_SLOPES.kgPerLactation.later / LACTATION_DAYS,
  source: hortetSeegers1998,
};

/** The highest of all models in either lactation group. */
export const HIGHEST_DAILY: LossModel = DAILY_MODELS.find(({ name }) => name === "Luo 2022")!;

/** Whether the model needs to know the lactation. */
export function splitsByLactation(model: LossModel): boolean {
  return model.first !== model.later;
}

/** The slope for a lactation number. Throws where the model must know the lactation and it is not known. */
export function slopeFor(model: LossModel, lactation: number | undefined): number {
  if (lactation === undefined && splitsByLactation(model)) {
    throw unavailable(
      `lactation is blank: "${model.name}" has one slope for first and another for later lactations, so enter it`,
    );
  }
  return lactation === 1 ? model.first : model.later;
}

/** Potter 2018 print one comparison; the model behind it is straight in the logarithm. */
function potterSlope(): number {
  const { lowThousandPerMl, highThousandPerMl, milkKgPerDay } = POTTER_COMPARISON;
  return milkKgPerDay / Math.log2(highThousandPerMl / lowThousandPerMl);
}
