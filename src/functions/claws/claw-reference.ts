import { referenceClaw } from "../../core/claws/reference-claw";
import { toussaintRaven1985 } from "../../core/reference/toussaint-raven-1985";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, required } from "../define";
import { limb } from "./kinds-of-trimming";

export const clawReference = defineFunction({
  id: "CLAW.REFERENCE",
  group: "Toe, sole, balance and trimming",
  summary: "Claw that is cut to length first and sets the level of the foot.",
  parameters: { foot: required(limb, "Foot: LF, RF, LH, RH, or front or hind") },
  result: { shape: "scalar", type: "text" },
  sources: [toussaintRaven1985],
  limits: ["Holds for feet of normal shape: a corkscrew or badly worn claw needs the trimmer's eye."],
  cautions: [TRAINED_TRIMMER],
  examples: [
    { arguments: ["LH"], result: "inner", origin: "printed", where: "Toussaint Raven 1985: hind, the inner claw" },
    {
      arguments: ["right front"],
      result: "outer",
      origin: "printed",
      where: "Toussaint Raven 1985: front, the outer claw",
    },
  ],
  compute: ({ foot }) => referenceClaw(foot),
  steps: ({ foot }, result) => [{ label: "Reference claw", working: `${foot} foot`, value: String(result) }],
});
