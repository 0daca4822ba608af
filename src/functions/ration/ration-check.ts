import { supplyInWords } from "../../core/ration/mineral-check";
import { nasem2021 } from "../../core/reference/nasem-2021";
import { nrc2001 } from "../../core/reference/nrc-2001";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { mgPerDay, mineral as mineralKind } from "./kinds";

export const rationCheck = defineFunction({
  id: "RATION.CHECK",
  group: "Ration",
  summary: "Supply of a mineral against the need, in words.",
  parameters: {
    mineral: required(mineralKind, "Mineral"),
    supplyMg: required(mgPerDay, "What the ration supplies a day"),
    needMg: required(mgPerDay, "What the cow needs a day"),
  },
  result: { shape: "scalar", type: "text" },
  sources: [nasem2021, nrc2001],
  limits: ["Within 2 % the supply meets the need. Needs are averages: half of the cows need more."],
  cautions: ["Copper is toxic: it is never asked for, and copper over the need goes to the nutritionist."],
  examples: [
    {
      arguments: ["zinc", 1282.5, 1425],
      result: "10 % short: ask the nutritionist",
      origin: "hand",
      where: "142.5 / 1425",
    },
    {
      arguments: ["copper", 330.75, 220.5],
      result: "copper 50 % over the need: toxic in excess, ask the nutritionist",
      origin: "hand",
      where: "110.25 / 220.5",
    },
  ],
  compute: ({ mineral, supplyMg, needMg }) => supplyInWords(mineral, supplyMg, needMg),
  steps: ({ mineral, supplyMg, needMg }, result) => [
    {
      label: "Supply less need",
      working: `${supplyMg} - ${needMg} mg a day`,
      value: `${figure(supplyMg - needMg)} mg a day`,
    },
    { label: "Meaning", working: mineral, value: String(result) },
  ],
});
