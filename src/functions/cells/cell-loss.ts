import { slopeFor } from "../../core/cells/loss-models";
import { dailyLossKg, doublingsAboveBase } from "../../core/cells/milk-loss";
import { bailey1997 } from "../../core/reference/us-extension-table";
import { milkFromKg } from "../../core/shared/milk-units";
import { defineFunction, optional, required } from "../define";
import { figure } from "../figure";
import { cappedIn, cellCount, inThousands, lactation, milkUnitParameter, remarkOnCapped, unitParameter } from "./kinds";
import { DAILY_SOURCES, dailyModelNamed, dailyModelParameter, LOSS_LIMITS, unitStep } from "./kinds-of-loss";

export const cellLoss = defineFunction({
  id: "CELL.LOSS",
  group: "Cell counts",
  summary: "Milk that a cow gives less on the day of a test, going by her cell count and lactation.",
  parameters: {
    count: required(cellCount, "Cell count of the milk test"),
    lactation: optional(
      lactation,
      "Her lactation number",
      "#N/A, except with a model that has one slope for all lactations (Luo 2022, Potter 2018)",
    ),
    model: dailyModelParameter,
    unit: unitParameter,
    milkUnit: milkUnitParameter,
  },
  result: { shape: "scalar", type: "number", unit: "milkUnit a day", format: "0.00" },
  sources: [...DAILY_SOURCES, bailey1997],
  limits: [
    "For the day of one test. Times 305 it is not the loss of a lactation: see CELL.LACTATIONLOSS.",
    ...LOSS_LIMITS,
    'Own slopes ("own 0.40/0.80") are in the milk unit of the result unless they carry one ("own 0.40/0.80 kg").',
  ],
  cautions: [],
  examples: [
    {
      arguments: [200, 2, null, null, "lb"],
      result: 3,
      origin: "printed",
      where: "Bailey 1997: from 50,000 to 200,000 is 2 linear scores, 3 lb a day",
    },
    {
      arguments: [400, 1, "Hortet-Seegers 1998", null, "kg"],
      result: 1.2,
      origin: "printed",
      where: "Hortet & Seegers 1998: 0.4 kg for each doubling above 50,000, 3 doublings",
    },
    {
      arguments: [250_000, null, "Potter 2018", "cells/mL", "kg"],
      result: 1.6,
      origin: "printed",
      where: "Potter 2018: 1.6 kg a day less at 250,000 than at 50,000",
    },
    {
      arguments: [200, 3],
      result: 1.32,
      decimals: 2,
      origin: "hand",
      where: "2 doublings × 1.5 lb × 0.45359 kg / 1.03 kg a litre",
    },
  ],
  compute({ count, lactation, model, unit, milkUnit }, remarks) {
    const thousand = inThousands(count, unit, "count");
    remarkOnCapped(cappedIn([thousand]), remarks);
    return milkFromKg(dailyLossKg(thousand, lactation, dailyModelNamed(model, milkUnit)), milkUnit);
  },
  steps({ count, lactation, model, unit, milkUnit }) {
    const thousand = inThousands(count, unit, "count");
    const lossModel = dailyModelNamed(model, milkUnit);
    const [doublings, slope] = [doublingsAboveBase(thousand), slopeFor(lossModel, lactation)];
    return [
      {
        label: "Doublings above 50 thousand",
        working: doublings > 0 ? `log2(${thousand} / 50)` : `${thousand} is not above 50`,
        value: figure(doublings, 4),
      },
      {
        label: `Slope, ${lactation === undefined ? "any" : lactation === 1 ? "first" : "later"} lactation`,
        working: lossModel.name,
        value: `${figure(slope, 4)} kg a day for each doubling`,
      },
      {
        label: "Loss a day",
        working: `${figure(doublings, 4)} × ${figure(slope, 4)} kg`,
        value: `${figure(doublings * slope, 3)} kg`,
      },
      unitStep(doublings * slope, milkUnit, "In the unit asked"),
    ];
  },
});
