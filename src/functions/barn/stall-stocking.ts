import { definition } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { someCows } from "./kinds";

export const stallStocking = defineFunction({
  id: "STALL.STOCKING",
  group: "Barn and footbath",
  summary: "Stocking of a pen: cows for each usable stall, as a percentage.",
  parameters: {
    cows: required(someCows, "Cows in the pen"),
    stalls: required(someCows, "Stalls that a cow can use: not blocked, not broken"),
  },
  result: { shape: "scalar", type: "number", format: "0%" },
  sources: [definition("Cows / usable stalls. Usual goal: at most 100 %.")],
  limits: ["Welfare codes set limits of their own: they come first."],
  cautions: [],
  examples: [
    { arguments: [120, 100], result: 1.2, origin: "hand", where: "120 / 100" },
    { arguments: [82, 100], result: 0.82, origin: "hand", where: "82 / 100, the lowest stocking of Wang et al. 2016" },
  ],
  compute: ({ cows, stalls }) => cows / stalls,
  steps: ({ cows, stalls }, result) => [
    {
      label: "Stocking",
      working: `${counted(cows, "cow")} / ${counted(stalls, "stall")}`,
      value: `${figure(Number(result) * 100, 1)} %`,
    },
  ],
});
