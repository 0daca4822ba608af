import { scoreOfCount } from "../../core/cells/score";
import { aliShook1980 } from "../../core/reference/ali-shook-1980";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { cappedIn, cellCount, inThousands, remarkOnCapped, unitParameter } from "./kinds";

export const cellScore = defineFunction({
  id: "CELL.SCORE",
  group: "Cell counts",
  summary: "Somatic cell score of a cell count: one step up is twice the count.",
  parameters: {
    count: required(cellCount, "Cell count of the milk test"),
    unit: unitParameter,
  },
  result: { shape: "scalar", type: "number", unit: "score", format: "0.0" },
  sources: [aliShook1980],
  limits: ["Not rounded and not held to 0-9: counts under 12.5 thousand have a negative score."],
  cautions: [],
  examples: [
    { arguments: [200], result: 4, origin: "printed", where: "Ali & Shook 1980, midpoint of score 4 (from memory)" },
    {
      arguments: [12_500, "cells/mL"],
      result: 0,
      origin: "printed",
      where: "Ali & Shook 1980, midpoint of score 0 (from memory)",
    },
    { arguments: [150], result: 3.585, decimals: 3, origin: "hand", where: "log2(1.5) + 3 = 0.58496 + 3" },
  ],
  compute({ count, unit }, remarks) {
    const thousand = inThousands(count, unit, "count");
    remarkOnCapped(cappedIn([thousand]), remarks);
    return scoreOfCount(thousand);
  },
  steps({ count, unit }, score) {
    const thousand = inThousands(count, unit, "count");
    return [
      { label: "Count", working: `${count} ${unit}`, value: `${thousand} thousand cells/mL` },
      { label: "Score", working: `log2(${thousand} / 100) + 3`, value: figure(score as number, 4) },
    ];
  },
});
