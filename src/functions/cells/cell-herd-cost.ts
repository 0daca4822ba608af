import { herdLossKgPerDay } from "../../core/cells/herd-doublings";
import { milkFromKg } from "../../core/shared/milk-units";
import { keownKononoff2007 } from "../../core/reference/us-extension-table";
import { defineFunction } from "../define";
import { figure } from "../figure";
import {
  countsParameter,
  daysParameter,
  lactationsParameter,
  milkPriceParameter,
  milkUnitParameter,
  unitParameter,
} from "./kinds";
import {
  aUnitOf,
  DAILY_SOURCES,
  dailyModelNamed,
  dailyModelParameter,
  herdSteps,
  LOSS_LIMITS,
  readHerd,
  remarkOnHerd,
} from "./kinds-of-loss";

export const cellHerdCost = defineFunction({
  id: "CELL.HERDCOST",
  group: "Cell counts",
  summary: "Money that goes with high cell counts in the whole herd: the milk of CELL.HERDLOSS at its price.",
  parameters: {
    counts: countsParameter,
    lactations: lactationsParameter,
    days: daysParameter,
    milkPrice: milkPriceParameter,
    model: dailyModelParameter,
    unit: unitParameter,
    milkUnit: milkUnitParameter,
  },
  result: { shape: "scalar", type: "number", unit: "money, as milkPrice", format: "#,##0" },
  sources: [...DAILY_SOURCES, keownKononoff2007],
  limits: [
    "Gross: feed not eaten is not taken off (0.3 kg dry matter for 1.6 kg of milk, Potter 2018).",
    "The price must be that of one milkUnit. Bonus and penalty of the tank, withheld milk, treatment and culling are not in it.",
    ...LOSS_LIMITS,
  ],
  cautions: [],
  examples: [
    {
      arguments: [Array<number[]>(75).fill([800]), Array<number[]>(75).fill([2]), 200, 0.11, null, null, "lb"],
      result: 9900,
      origin: "hand",
      where: "75 cows × 6 lb a day at 800 thousand × 200 days × 0.11 a lb",
    },
    {
      arguments: [[[200], [200]], [[1], [2]], 305, 0.5, null, null, "kg"],
      result: 311.28,
      decimals: 2,
      origin: "hand",
      where: "(1.5 + 3) lb × 0.45359237 kg × 305 days × 0.5 a kg",
    },
  ],
  compute({ counts, lactations, days, milkPrice, model, unit, milkUnit }, remarks) {
    const lossModel = dailyModelNamed(model, milkUnit);
    const herd = readHerd(counts, lactations, unit, lossModel);
    remarkOnHerd(herd, days, remarks);
    return milkFromKg(herdLossKgPerDay(herd, lossModel) * days, milkUnit) * milkPrice;
  },
  steps({ counts, lactations, days, milkPrice, model, unit, milkUnit }, cost) {
    const lossModel = dailyModelNamed(model, milkUnit);
    const steps = herdSteps(readHerd(counts, lactations, unit, lossModel), lossModel, days, milkUnit);
    const working = `${steps.at(-1)!.value} × ${milkPrice} ${aUnitOf(milkUnit)}`;
    return [...steps, { label: "Money", working, value: figure(cost as number) }];
  },
});
