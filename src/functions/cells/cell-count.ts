import { countOfScore } from "../../core/cells/score";
import { aliShook1980 } from "../../core/reference/ali-shook-1980";
import { normanMillerRoss2009 } from "../../core/reference/norman-miller-ross-2009";
import { defineFunction, required } from "../define";
import { cellScoreKind, countOfScoreText, countText, inUnit, unitParameter } from "./kinds";

export const cellCount = defineFunction({
  id: "CELL.COUNT",
  group: "Cell counts",
  summary: "Cell count of a somatic cell score; of a mean score, the geometric mean count.",
  parameters: {
    score: required(cellScoreKind, "Somatic cell score, or the mean of several"),
    unit: unitParameter,
  },
  result: { shape: "scalar", type: "number", unit: "as asked", format: "#,##0" },
  sources: [aliShook1980, normanMillerRoss2009],
  limits: [
    "Of a mean score it gives the geometric mean, which lies well below the arithmetic mean and the tank.",
    "A score of 0 is taken as a score: leave the formula out where there is none.",
  ],
  cautions: [],
  examples: [
    { arguments: [5], result: 400, origin: "printed", where: "Ali & Shook 1980, midpoint of score 5 (from memory)" },
    {
      arguments: [0, "cells/mL"],
      result: 12_500,
      origin: "printed",
      where: "Ali & Shook 1980, midpoint of score 0 (from memory)",
    },
    {
      arguments: [3, "cells/mL"],
      result: 100_000,
      origin: "printed",
      where: "Norman, Miller & Ross 2009, SCC = 2^(SCS-3) × 100,000",
    },
  ],
  compute: ({ score, unit }) => inUnit(countOfScore(score), unit),
  steps: ({ score, unit }, count) => [
    { label: "Count", working: countOfScoreText(score, unit), value: countText(count as number, unit) },
  ],
});
