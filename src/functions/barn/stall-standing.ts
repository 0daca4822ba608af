import { standingIndex } from "../../core/barn/stall-indices";
import { cook2005, stallThresholds } from "../../core/reference/cook-2005";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { cowCount, someCows } from "./kinds";

export const stallStanding = defineFunction({
  id: "STALL.STANDING",
  group: "Barn and footbath",
  summary: "Stall standing index: share of the cows touching a stall that stand or perch in it.",
  parameters: {
    lying: required(someCows, "Cows lying in a stall"),
    standing: required(cowCount, "Cows standing in a stall with all four feet"),
    perching: required(cowCount, "Cows with only their front feet in a stall"),
  },
  result: { shape: "scalar", type: "number", format: "0.00" },
  sources: [cook2005],
  limits: [
    "Under 0.20 is the threshold, two hours before milking; it is 1 less the comfort index. Lame cows stand longer in stalls.",
  ],
  cautions: [],
  examples: [
    { arguments: [60, 4, 8], result: 0.1667, decimals: 4, origin: "hand", where: "(4 + 8) / 72" },
    { arguments: [80, 15, 5], result: 0.2, origin: "hand", where: "20 / 100, the threshold of Cook et al. 2005" },
  ],
  compute: (cows) => standingIndex(cows),
  steps: ({ lying, standing, perching }, result) => [
    {
      label: "Touching a stall",
      working: `${lying} + ${standing} + ${perching} cows`,
      value: String(lying + standing + perching),
    },
    {
      label: "Index",
      working: `(${standing} + ${perching}) / ${lying + standing + perching}`,
      value: figure(Number(result), 3),
    },
    {
      label: "Published threshold",
      working: "two hours before milking",
      value: `under ${stallThresholds.standingUnder}`,
    },
  ],
});
