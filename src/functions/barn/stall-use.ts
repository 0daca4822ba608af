import { stallUseIndex } from "../../core/barn/stall-indices";
import { cook2005, stallThresholds } from "../../core/reference/cook-2005";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { someCows } from "./kinds";

export const stallUse = defineFunction({
  id: "STALL.USE",
  group: "Barn and footbath",
  summary: "Stall use index: share of the cows in the pen and not eating that lie in a stall.",
  parameters: {
    lying: required(someCows, "Cows lying in a stall"),
    penNotEating: required(someCows, "Cows in the pen that are not eating, the lying ones included"),
  },
  result: { shape: "scalar", type: "number", format: "0.00" },
  sources: [cook2005],
  limits: ["Over 0.75 is the threshold. One look says little: take several days at the same hour."],
  cautions: [],
  examples: [
    { arguments: [60, 80], result: 0.75, origin: "hand", where: "60 / 80: a pen of 100 cows, 20 of them eating" },
    { arguments: [44, 50], result: 0.88, origin: "hand", where: "44 / 50" },
  ],
  compute: ({ lying, penNotEating }) => stallUseIndex(lying, penNotEating),
  steps: ({ lying, penNotEating }, result) => [
    { label: "Index", working: `${lying} lying / ${penNotEating} not eating`, value: figure(Number(result), 3) },
    { label: "Published threshold", working: "Overton et al. 2003", value: `over ${stallThresholds.useOver}` },
  ],
});
