import { herdLossKgPerDay } from "../../core/cells/herd-doublings";
import { milkFromKg } from "../../core/shared/milk-units";
import { defineFunction } from "../define";
import { countsParameter, daysParameter, lactationsParameter, milkUnitParameter, unitParameter } from "./kinds";
import {
  DAILY_SOURCES,
  dailyModelNamed,
  dailyModelParameter,
  herdSteps,
  LOSS_LIMITS,
  readHerd,
  remarkOnHerd,
} from "./kinds-of-loss";

export const cellHerdLoss = defineFunction({
  id: "CELL.HERDLOSS",
  group: "Cell counts",
  summary: "Milk that goes with high cell counts in the whole herd over so many days like the test day.",
  parameters: {
    counts: countsParameter,
    lactations: lactationsParameter,
    days: daysParameter,
    model: dailyModelParameter,
    unit: unitParameter,
    milkUnit: milkUnitParameter,
  },
  result: { shape: "scalar", type: "number", unit: "milkUnit", format: "#,##0" },
  sources: DAILY_SOURCES,
  limits: [
    "Reckoned cow by cow. The tank's count put in as if it were every cow's gives far too much.",
    "Cows without a count are left out, so their loss is not in the total; a counted cow without a lactation is refused.",
    "Published models lie about 1 to 3 apart: see CELL.SUMMARY for low, central and high.",
    ...LOSS_LIMITS,
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        [[38], [95], [210], [50], [25], [200], [400], [1600], [0], [null]],
        [[1], [1], [1], [2], [3], [2], [4], [5], [3], [2]],
        305,
        "Hortet-Seegers 1998",
        null,
        "kg",
      ],
      result: 2195.6,
      decimals: 1,
      origin: "hand",
      where: "(0.4 × (log2(1.9) + log2(4.2)) + 0.6 × (2 + 3 + 5)) × 305 = 7.19856 × 305",
    },
    {
      arguments: [[[800], [800], [800]], [[2], [3], [4]], 100, null, null, "lb"],
      result: 1800,
      origin: "hand",
      where: "extension table: 6 lb a day at 800 thousand, 3 cows, 100 days",
    },
  ],
  compute({ counts, lactations, days, model, unit, milkUnit }, remarks) {
    const lossModel = dailyModelNamed(model, milkUnit);
    const herd = readHerd(counts, lactations, unit, lossModel);
    remarkOnHerd(herd, days, remarks);
    return milkFromKg(herdLossKgPerDay(herd, lossModel) * days, milkUnit);
  },
  steps({ counts, lactations, days, model, unit, milkUnit }) {
    const lossModel = dailyModelNamed(model, milkUnit);
    const herd = readHerd(counts, lactations, unit, lossModel);
    return herdSteps(herd, lossModel, days, milkUnit);
  },
});
