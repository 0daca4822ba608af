import type { Source } from "./source";

/** How an amount of milk is written. */
export type MilkUnit = "litres" | "kg" | "lb";

/** Exact by definition: the international pound of 1959. */
export const KG_PER_POUND = 0.45359237;

/** Weight of a litre of milk, kg. Source: `milkDensity`. */
export const MILK_KG_PER_LITRE = 1.03;

export const milkDensity: Source = {
  name: "Milk density 1.03 kg/L",
  citation:
    "Whole milk weighs 1.03 kg a litre: the value with which the IDF formula for fat and protein corrected milk is used " +
    "on litres (documentation of the R package cowfootR, calc_intensity_litre, milk_density = 1.03).",
  standing: "read",
};

const KG_PER_UNIT: Readonly<Record<MilkUnit, number>> = { litres: MILK_KG_PER_LITRE, kg: 1, lb: KG_PER_POUND };

/** An amount of milk in kg, written in another unit. */
export function milkFromKg(kg: number, unit: MilkUnit): number {
  return kg / KG_PER_UNIT[unit];
}

/** An amount of milk written in some unit, in kg. */
export function milkInKg(amount: number, unit: MilkUnit): number {
  return amount * KG_PER_UNIT[unit];
}
