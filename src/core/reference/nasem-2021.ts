import type { Source } from "../shared/source";

export const nasem2021: Source = {
  name: "NASEM 2021",
  citation:
    "National Academies of Sciences, Engineering, and Medicine 2021. Nutrient Requirements of Dairy Cattle, 8th rev. ed., ch. 7. Equations read; absorption coefficients from memory.",
  standing: "memory",
};

export const minerals = ["zinc", "copper", "manganese"] as const;
export type Mineral = (typeof minerals)[number];

/** A cow's need of a mineral, absorbed mg a day; what is fed is this divided by the share that is absorbed. */
export interface MineralNeed {
  /** mg a day for each kg of body weight. */
  readonly perKgWeight: number;
  /** mg a day for each kg of dry matter eaten. */
  readonly perKgIntake: number;
  /** mg for each kg of milk. */
  readonly perKgMilk: number;
  readonly absorbedShare: number;
  /** mg a day for each kg of body weight of a pregnant cow, from the day of pregnancy named; the last that applies counts. */
  readonly pregnancy: readonly { readonly fromDay: number; readonly perKgWeight: number }[];
}

export const nasemNeeds: Readonly<Record<Mineral, MineralNeed>> = {
  copper: {
    perKgWeight: 0.0145,
    perKgIntake: 0,
    perKgMilk: 0.04,
    absorbedShare: 0.05,
    pregnancy: [
      { fromDay: 90, perKgWeight: 0.0003 },
      { fromDay: 191, perKgWeight: 0.0023 },
    ],
  },
  zinc: {
    perKgWeight: 0,
    perKgIntake: 5,
    perKgMilk: 4,
    absorbedShare: 0.2,
    pregnancy: [{ fromDay: 191, perKgWeight: 0.017 }],
  },
  manganese: {
    perKgWeight: 0.0026,
    perKgIntake: 0,
    perKgMilk: 0.03,
    absorbedShare: 0.004,
    pregnancy: [{ fromDay: 191, perKgWeight: 0.00042 }],
  },
};
