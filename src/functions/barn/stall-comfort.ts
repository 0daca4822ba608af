import { comfortIndex } from "../../core/barn/stall-indices";
import { cook2005, stallThresholds } from "../../core/reference/cook-2005";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { cowCount, someCows } from "./kinds";

export const stallComfort = defineFunction({
  id: "STALL.COMFORT",
  group: "Barn and footbath",
  summary: "Cow comfort index: share of the cows touching a stall that lie in it.",
  parameters: {
    lying: required(someCows, "Cows lying in a stall"),
    standing: required(cowCount, "Cows standing in a stall with all four feet"),
    perching: required(cowCount, "Cows with only their front feet in a stall"),
  },
  result: { shape: "scalar", type: "number", format: "0.00" },
  sources: [cook2005],
  limits: [
    "Over 0.85 is the threshold, one hour after the return from the morning milking. One look says little: take several days.",
  ],
  cautions: [],
  examples: [
    { arguments: [60, 4, 8], result: 0.8333, decimals: 4, origin: "hand", where: "60 / 72" },
    { arguments: [85, 10, 5], result: 0.85, origin: "hand", where: "85 / 100, the threshold of Overton et al. 2003" },
  ],
  compute: (cows) => comfortIndex(cows),
  steps: ({ lying, standing, perching }, result) => [
    {
      label: "Touching a stall",
      working: `${lying} + ${standing} + ${perching} cows`,
      value: String(lying + standing + perching),
    },
    { label: "Index", working: `${lying} lying / ${lying + standing + perching}`, value: figure(Number(result), 3) },
    {
      label: "Published threshold",
      working: "one hour after the return from the morning milking",
      value: `over ${stallThresholds.comfortOver}`,
    },
  ],
});
