import { invalid } from "../../core/shared/domain-error";
import { minerals } from "../../core/ration/mineral-need";
import { choice, number, scalarKind } from "../scalars";

export const mineral = choice(minerals, { Zn: "zinc", Cu: "copper", Mn: "manganese" });

export const intake = number({
  unit: "kg",
  min: 2,
  max: 40,
  reason: "dry matter a cow eats in a day",
  zeroIsBlank: true,
});

const milkKg = number({ unit: "kg", min: 0.1, max: 90, reason: "milk of a cow in a day", zeroIsBlank: true });

/** Milk of a day, or "dry". A number 0 stands for a blank. */
export const dailyMilk = scalarKind<number>({
  ...milkKg,
  must: `${milkKg.must}, or "dry"`,
  readCell(cell, where) {
    if (typeof cell !== "string" || /\d/.test(cell)) return milkKg.readCell(cell, where);
    if (/^dry$/i.test(cell)) return 0;
    throw invalid(where, this.must, cell);
  },
});

export const mgPerDay = number({
  unit: "mg a day",
  min: 1,
  max: 20_000,
  reason: "milligrams of a mineral in a day, not grams",
  zeroIsBlank: true,
});
