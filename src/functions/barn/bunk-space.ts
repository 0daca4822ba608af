import { definition } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { metres, someCows } from "./kinds";

const CM_PER_M = 100;

export const bunkSpace = defineFunction({
  id: "BUNK.SPACE",
  group: "Barn and footbath",
  summary: "Feed bunk space for each cow, in centimetres.",
  parameters: {
    lengthM: required(metres(1, 1000), "Length of bunk that the cows can reach"),
    cows: required(someCows, "Cows in the pen"),
  },
  result: { shape: "scalar", type: "number", unit: "cm", format: "0" },
  sources: [definition("Length of bunk / cows.")],
  limits: ["How much is enough depends on breed, headlocks and stage; cows round calving need more."],
  cautions: [],
  examples: [
    { arguments: [61, 100], result: 61, origin: "hand", where: "6,100 cm / 100 cows" },
    { arguments: [45, 60], result: 75, origin: "hand", where: "4,500 cm / 60 cows" },
  ],
  compute: ({ lengthM, cows }) => (lengthM * CM_PER_M) / cows,
  steps: ({ lengthM, cows }, result) => [
    {
      label: "Space",
      working: `${lengthM} m × 100 / ${counted(cows, "cow")}`,
      value: `${figure(Number(result), 1)} cm`,
    },
  ],
});
