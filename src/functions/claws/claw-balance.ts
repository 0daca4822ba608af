import { balancePractice, type HeelBalance, heelBalance } from "../../core/claws/heel-balance";
import { type Limb, otherClaw, referenceClaw } from "../../core/claws/reference-claw";
import { MEASURING_ERROR_MM } from "../../core/claws/toe-length";
import { toussaintRaven1985 } from "../../core/reference/toussaint-raven-1985";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { heelHeight, limb } from "./kinds-of-trimming";

function inWords({ lower, mm, thinSole, referenceIsHigher }: HeelBalance, foot: Limb): string {
  if (lower !== undefined) return `lower ${lower} heel ${mm} mm${thinSole ? "; thin sole: stop when it yields" : ""}`;
  return referenceIsHigher ? `leave: never lower the ${referenceClaw(foot)} heel of a ${foot} foot` : "level: leave";
}

export const clawBalance = defineFunction({
  id: "CLAW.BALANCE",
  group: "Toe, sole, balance and trimming",
  summary: "Which heel of a foot to lower, and by how much.",
  parameters: {
    innerHeelMm: required(heelHeight, "Height of the inner heel"),
    outerHeelMm: required(heelHeight, "Height of the outer heel"),
    foot: required(limb, "Foot: LF, RF, LH, RH, or front or hind"),
  },
  result: { shape: "scalar", type: "text" },
  sources: [toussaintRaven1985, balancePractice],
  limits: [
    `Heels within ${MEASURING_ERROR_MM} mm are level. Measured on a foot held level, both heels from the ground line.`,
  ],
  cautions: ["Never the inner heel of a hind foot, nor the outer heel of a front foot.", TRAINED_TRIMMER],
  examples: [
    {
      arguments: [38, 41, "LH"],
      result: "lower outer heel 3 mm",
      origin: "hand",
      where: "Toussaint Raven 1985: the inner hind claw sets the level; 41 - 38",
    },
    {
      arguments: [36, 42, "RH"],
      result: "lower outer heel 6 mm; thin sole: stop when it yields",
      origin: "hand",
      where: "42 - 36 = 6 mm, more than 3 mm off one sole",
    },
    {
      arguments: [42, 36, "RH"],
      result: "leave: never lower the inner heel of a hind foot",
      origin: "hand",
      where: "Toussaint Raven 1985: the inner hind heel is kept",
    },
  ],
  compute: ({ innerHeelMm, outerHeelMm, foot }) => inWords(heelBalance(innerHeelMm, outerHeelMm, foot), foot),
  steps({ innerHeelMm, outerHeelMm, foot }, result) {
    const reference = referenceClaw(foot);
    return [
      { label: "Reference claw", working: `${foot} foot`, value: reference },
      {
        label: "Difference",
        working: `outer ${outerHeelMm} mm, inner ${innerHeelMm} mm`,
        value: `${figure(Math.abs(outerHeelMm - innerHeelMm))} mm`,
      },
      { label: "Advice", working: `only the ${otherClaw(reference)} heel may be lowered`, value: String(result) },
    ];
  },
});
