import { soleThicknessMm } from "../../core/claws/sole-thickness";
import { soleLimitsMm, tsuka2014 } from "../../core/reference/tsuka-2014";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { claw as clawKind, toeLength } from "./kinds-of-trimming";

const { critical, recommended } = soleLimitsMm;

export const toeSole = defineFunction({
  id: "TOE.SOLE",
  group: "Toe, sole, balance and trimming",
  summary: "Sole thickness to expect at the toe of a hind claw, from its toe length.",
  parameters: {
    lengthMm: required(toeLength, "Toe length from where the horn turns hard"),
    claw: required(clawKind, "Inner or outer claw of a hind foot"),
  },
  result: { shape: "scalar", type: "number", unit: "mm", format: "0.0" },
  sources: [tsuka2014],
  limits: [
    "Straight lines between printed values, 72.1 to 79.8 mm (inner) and 72.7 to 78.4 mm (outer); refused outside. Shorter toes have under 5 mm.",
    "An average of untrimmed claws: the sole of one cow can be thinner. Test it with the thumb.",
    "Not for lengths from the skin-horn line.",
  ],
  cautions: [`Under ${critical} mm is critical, under ${recommended} mm calls for caution.`, TRAINED_TRIMMER],
  examples: [
    {
      arguments: [75, "inner"],
      result: 6.1,
      decimals: 1,
      origin: "printed",
      where: "Tsuka et al. 2014, inner at 75 mm",
    },
    {
      arguments: [75, "outer"],
      result: 6.4,
      decimals: 1,
      origin: "printed",
      where: "Tsuka et al. 2014, outer at 75 mm",
    },
    {
      arguments: [77.4, "inner"],
      result: 6.55,
      origin: "hand",
      where: "Halfway between 75 mm (6.1) and 79.8 mm (7): (6.1 + 7) / 2",
    },
  ],
  compute({ lengthMm, claw }, remarks) {
    const soleMm = soleThicknessMm(lengthMm, claw);
    if (soleMm < recommended) remarks.add(`under ${recommended} mm: take nothing off the sole`);
    return soleMm;
  },
  steps: ({ lengthMm, claw }, result) => [
    {
      label: "Sole",
      working: `${claw} claw, ${lengthMm} mm, between the printed values`,
      value: `${figure(Number(result))} mm`,
    },
    {
      label: "Meaning",
      working: `critical under ${critical} mm, caution under ${recommended} mm`,
      value: Number(result) < recommended ? "caution" : "enough",
    },
  ],
});
