import { AS_NEEDED_UNDER_SHARE, bathDaysByShare } from "../reference/cook-reinemann-2007";

const LITRES_PER_CUBIC_METRE = 1000;
const PERCENT = 100;

/** Litres that fill a bath to a depth. */
export function bathLitres(lengthM: number, widthM: number, depthM: number): number {
  return lengthM * widthM * depthM * LITRES_PER_CUBIC_METRE;
}

export const bathProducts = ["copper sulphate", "formalin"] as const;
export type BathProduct = (typeof bathProducts)[number];

/** How a percentage of a product is meant. */
export const productBasis: Readonly<Record<BathProduct, { readonly unit: string; readonly basis: string }>> = {
  "copper sulphate": { unit: "kg", basis: "w/v: kg of copper sulphate pentahydrate in 100 L of bath" },
  formalin: { unit: "L", basis: "v/v: litres of formalin stock (37 % formaldehyde) in 100 L of bath" },
};

/** Product for a bath: kg of copper sulphate (w/v), or litres of formalin stock (v/v). */
export function bathProductAmount(litres: number, percent: number): number {
  return (litres * percent) / PERCENT;
}

/** Formaldehyde in formalin stock, by share. */
export const FORMALDEHYDE_IN_STOCK = 0.37;

/** Standard atomic weights, IUPAC 2021, abridged. */
const ATOMIC_WEIGHT = { copper: 63.546, sulphur: 32.06, oxygen: 15.999, hydrogen: 1.008 } as const;

/** Share of copper in CuSO4·5H2O. */
const COPPER_IN_SULPHATE =
  ATOMIC_WEIGHT.copper /
  (ATOMIC_WEIGHT.copper + ATOMIC_WEIGHT.sulphur + 9 * ATOMIC_WEIGHT.oxygen + 10 * ATOMIC_WEIGHT.hydrogen);

/** Kilograms of copper in so many kilograms of copper sulphate pentahydrate. */
export function copperKg(copperSulphateKg: number): number {
  return copperSulphateKg * COPPER_IN_SULPHATE;
}

/** Whole milkings left before a bath is changed; 0 where the next one would pass the limit. */
export function milkingsUntilChange(cows: number, passesLimit: number, milkingsDone: number): number {
  return Math.max(0, Math.floor(passesLimit / cows) - milkingsDone);
}

/**
 * Days a week with a footbath from the share of cows with leg hygiene 3 or 4; undefined where as needed is enough.
 * Source: Cook & Reinemann 2007.
 */
export function bathDays(hygieneShare: number): number | undefined {
  if (hygieneShare < AS_NEEDED_UNDER_SHARE) return undefined;
  return bathDaysByShare.find(({ share }) => hygieneShare <= share)?.days;
}
