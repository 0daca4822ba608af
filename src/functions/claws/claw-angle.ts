import { anglePractice, clawAngle as angleInWords } from "../../core/claws/claw-angle";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, required } from "../define";
import { number } from "../scalars";

const degrees = number({
  unit: "degrees",
  min: 15,
  max: 90,
  reason: "between front wall and ground",
  zeroIsBlank: true,
});

export const clawAngle = defineFunction({
  id: "CLAW.ANGLE",
  group: "Toe, sole, balance and trimming",
  summary: "Angle of a hind claw in words: shallow, within 45-52 degrees, or steep.",
  parameters: { degrees: required(degrees, "Angle between the front wall and the ground") },
  result: { shape: "scalar", type: "text" },
  sources: [anglePractice],
  limits: ["A habit of the trade, without a trial behind it. Front claws stand steeper."],
  cautions: ["Raise a shallow claw by shortening a long toe, never one at its minimum.", TRAINED_TRIMMER],
  examples: [
    {
      arguments: [42],
      result: "shallow: raise towards 50",
      origin: "hand",
      where: "Common practice, no source: 42 is under 45",
    },
    {
      arguments: [50],
      result: "within 45-52",
      origin: "hand",
      where: "Common practice, no source: up to about 50 degrees",
    },
    { arguments: [55], result: "steep", origin: "hand", where: "Common practice, no source: 55 is over 52" },
  ],
  compute: ({ degrees: angle }) => angleInWords(angle),
  steps: ({ degrees: angle }, result) => [{ label: "Angle", working: `${angle} degrees`, value: String(result) }],
});
