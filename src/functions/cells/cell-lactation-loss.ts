import { LACTATION_MODELS, slopeFor } from "../../core/cells/loss-models";
import { lactationLossKg, LOSS_BASE_SCORE } from "../../core/cells/milk-loss";
import { bailey1997 } from "../../core/reference/us-extension-table";
import { milkDensity, milkFromKg } from "../../core/shared/milk-units";
import { defineFunction, optional, required } from "../define";
import { figure } from "../figure";
import { cellScoreKind, lactation, milkUnitParameter } from "./kinds";
import { lactationModelNamed, lactationModelParameter, LOSS_LIMITS, unitStep } from "./kinds-of-loss";

export const cellLactationLoss = defineFunction({
  id: "CELL.LACTATIONLOSS",
  group: "Cell counts",
  summary: "Milk that a cow gives less over a lactation, going by the mean somatic cell score of its tests.",
  parameters: {
    meanScore: required(
      cellScoreKind,
      "Mean of the scores of the lactation's tests (CELL.SCORE), not the score of a mean count",
    ),
    lactation: optional(
      lactation,
      "Her lactation number",
      "#N/A, except with own slopes that are one for all lactations",
    ),
    model: lactationModelParameter,
    milkUnit: milkUnitParameter,
  },
  result: { shape: "scalar", type: "number", unit: "milkUnit a lactation", format: "#,##0" },
  sources: [...LACTATION_MODELS.map(({ source }) => source), bailey1997, milkDensity],
  limits: [
    "Average the scores, not the counts: one high test among five low ones would nearly triple the loss.",
    "Not the daily figure times 305: the printed lactation figures are lower.",
    "A score of 0 is taken as a score: leave the formula out where there is none.",
    ...LOSS_LIMITS.slice(0, 1),
    'Own slopes ("own 80/160") are in the milk unit of the result unless they carry one ("own 80/160 kg").',
  ],
  cautions: [],
  examples: [
    {
      arguments: [3, 2, null, "lb"],
      result: 400,
      origin: "printed",
      where: "Extension table: 100,000 in later lactations is 400 lb a lactation",
    },
    {
      arguments: [5, 1, "Hortet-Seegers 1998", "kg"],
      result: 240,
      origin: "printed",
      where: "Hortet & Seegers 1998: 80 kg for each doubling above 50,000, 3 doublings",
    },
    {
      arguments: [3, 1, "Raubertas-Shook 1982", "kg"],
      result: 93.6,
      decimals: 1,
      origin: "hand",
      where: "135 kg for each unit of the natural logarithm × ln 2",
    },
  ],
  compute: ({ meanScore, lactation, model, milkUnit }) =>
    milkFromKg(lactationLossKg(meanScore, lactation, lactationModelNamed(model, milkUnit)), milkUnit),
  steps({ meanScore, lactation, model, milkUnit }) {
    const lossModel = lactationModelNamed(model, milkUnit);
    const loss = lactationLossKg(meanScore, lactation, lossModel);
    return [
      {
        label: "Doublings above 50 thousand (score 2)",
        working: meanScore > LOSS_BASE_SCORE ? `${figure(meanScore, 4)} - 2` : `${figure(meanScore, 4)} is not above 2`,
        value: figure(Math.max(0, meanScore - LOSS_BASE_SCORE), 4),
      },
      {
        label: `Slope, ${lactation === undefined ? "any" : lactation === 1 ? "first" : "later"} lactation`,
        working: lossModel.name,
        value: `${figure(slopeFor(lossModel, lactation), 3)} kg a lactation for each doubling`,
      },
      { label: "Loss a lactation", working: "doublings × slope", value: `${figure(loss)} kg` },
      unitStep(loss, milkUnit, "In the unit asked"),
    ];
  },
});
