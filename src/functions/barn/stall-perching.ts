import { perchingIndex } from "../../core/barn/stall-indices";
import { cook2005 } from "../../core/reference/cook-2005";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { cowCount, someCows } from "./kinds";

export const stallPerching = defineFunction({
  id: "STALL.PERCHING",
  group: "Barn and footbath",
  summary: "Stall perching index: share of the cows touching a stall with only their front feet in it.",
  parameters: {
    lying: required(someCows, "Cows lying in a stall"),
    standing: required(cowCount, "Cows standing in a stall with all four feet"),
    perching: required(cowCount, "Cows with only their front feet in a stall"),
  },
  result: { shape: "scalar", type: "number", format: "0.00" },
  sources: [cook2005],
  limits: ["No published threshold was found: compare with the same pen at the same hour."],
  cautions: [],
  examples: [
    { arguments: [60, 4, 8], result: 0.1111, decimals: 4, origin: "hand", where: "8 / 72" },
    { arguments: [45, 5, 0], result: 0, origin: "hand", where: "None perches" },
  ],
  compute: (cows) => perchingIndex(cows),
  steps: ({ lying, standing, perching }, result) => [
    {
      label: "Touching a stall",
      working: `${lying} + ${standing} + ${perching} cows`,
      value: String(lying + standing + perching),
    },
    {
      label: "Index",
      working: `${perching} perching / ${lying + standing + perching}`,
      value: figure(Number(result), 3),
    },
  ],
});
