import { averagesOf } from "../../core/cells/averages";
import { scoreOfCount } from "../../core/cells/score";
import { aliShook1980 } from "../../core/reference/ali-shook-1980";
import { definition } from "../../core/shared/source";
import { type Column } from "../columns";
import { defineFunction } from "../define";
import { counted, figure } from "../figure";
import {
  cappedIn,
  columnInThousands,
  countOfScoreText,
  countText,
  countsParameter,
  inUnit,
  noCount,
  remarkOnCapped,
  unitParameter,
} from "./kinds";

export const cellMean = defineFunction({
  id: "CELL.MEAN",
  group: "Cell counts",
  summary: "Geometric mean of cell counts, in the unit of the counts: the count of their mean score.",
  parameters: { counts: countsParameter, unit: unitParameter },
  result: { shape: "scalar", type: "number", unit: "as the counts", format: "#,##0" },
  sources: [
    definition("Geometric mean: the number whose logarithm is the mean of the logarithms; 2^(mean of log2)."),
    aliShook1980,
  ],
  limits: [
    "It tells of the usual cow. A few very high cows hardly move it, though they fill the tank: see TANK.ESTIMATE.",
    "Rows without a count (blank, 0, a note) are left out.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[50], [50], [50], [50], [1600]]],
      result: 100,
      origin: "hand",
      where: "scores 2, 2, 2, 2, 7: mean 3, which is 100 thousand",
    },
    {
      arguments: [[[100_000], [400_000]], "cells/mL"],
      result: 200_000,
      origin: "hand",
      where: "square root of 100,000 × 400,000",
    },
  ],
  compute({ counts, unit }, remarks) {
    const thousands = columnInThousands(counts, unit);
    const { cows, geometric } = averagesOf(thousands);
    if (cows === 0) throw noCount("counts");
    if (counts.noteRows > 0) remarks.add(`${counted(counts.noteRows, "row")} left out: a note instead of a count`);
    remarkOnCapped(cappedIn(thousands), remarks);
    return inUnit(geometric, unit);
  },
  steps({ counts, unit }, mean) {
    const { cows, arithmetic, geometric } = averagesOf(columnInThousands(counts, unit));
    const score = scoreOfCount(geometric);
    return [
      { label: "Counts used", working: leftOut(counts, cows), value: String(cows) },
      { label: "Mean score", working: "mean of log2(count / 100) + 3", value: figure(score, 4) },
      { label: "Geometric mean", working: countOfScoreText(score, unit), value: countText(mean as number, unit) },
      {
        label: "For comparison, the arithmetic mean",
        working: "sum of the counts / their number",
        value: countText(inUnit(arithmetic, unit), unit),
      },
    ];
  },
});

function leftOut(counts: Column<number>, cows: number): string {
  return `${counted(counts.length, "row")}, ${counts.length - cows} blank or without a count`;
}
