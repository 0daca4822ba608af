import type { Source } from "../shared/source";
import type { Mineral, MineralNeed } from "./nasem-2021";

export const nrc2001: Source = {
  name: "NRC 2001",
  citation:
    "National Research Council 2001. Nutrient Requirements of Dairy Cattle, 7th rev. ed. Coefficients from memory.",
  standing: "memory",
};

/** Without pregnancy, for which no figure of this edition is at hand. */
export const nrcNeeds: Readonly<Record<Mineral, Omit<MineralNeed, "pregnancy">>> = {
  copper: { perKgWeight: 0.0071, perKgIntake: 0, perKgMilk: 0.15, absorbedShare: 0.04 },
  zinc: { perKgWeight: 0.045, perKgIntake: 0, perKgMilk: 4, absorbedShare: 0.15 },
  manganese: { perKgWeight: 0.002, perKgIntake: 0, perKgMilk: 0.03, absorbedShare: 0.0075 },
};
