import { cowLengthPractice, isHeifer, toeMinimumMm } from "../../core/claws/toe-length";
import { archer2015, LONGER_PER_YEAR_MM } from "../../core/reference/archer-2015";
import { toussaintRaven1985 } from "../../core/reference/toussaint-raven-1985";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, optional, required } from "../define";
import { counted, figure } from "../figure";
import { ageYears as age, lactation as lactationKind, landmark as landmarkKind } from "./kinds-of-trimming";

export const toeMinimum = defineFunction({
  id: "TOE.MINIMUM",
  group: "Toe, sole, balance and trimming",
  summary: "Length under which the toe of a hind claw is not cut.",
  parameters: {
    landmark: required(landmarkKind, "From where the toe is measured; there is no default"),
    lactation: optional(lactationKind, 'Lactation; 1 or "heifer" is a heifer', "a grown cow, the longer length"),
    ageYears: optional(age, "Age in years; adds 1 mm a year (weak: one herd)", "nothing is added"),
  },
  result: { shape: "scalar", type: "number", unit: "mm", format: "0" },
  sources: [cowLengthPractice, toussaintRaven1985, archer2015],
  limits: [
    "From hard horn: 75 mm for heifers, 81 mm for cows. From the skin-horn line: 90 mm for all, whatever the lactation.",
    "The two landmarks lie about 10 to 15 mm apart: lengths from one are never held against the limit of the other.",
    "For the inner claw of a hind foot of Holstein-Friesians; small breeds are shorter.",
  ],
  cautions: [TRAINED_TRIMMER],
  examples: [
    { arguments: ["hard horn", 3], result: 81, origin: "hand", where: "Common practice, no source: about 81 mm" },
    { arguments: ["hard horn", 1], result: 75, origin: "printed", where: "Toussaint Raven 1985: 75 mm" },
    { arguments: ["skin-horn line", 2], result: 90, origin: "printed", where: "Archer et al. 2015: 90 mm" },
    {
      arguments: ["skin-horn line", 3, 5],
      result: 95,
      origin: "hand",
      where: "Archer et al. 2015: 90 mm, 1 mm longer a year of age",
    },
  ],
  compute({ landmark, lactation, ageYears }, remarks) {
    if (ageYears !== undefined) remarks.add("the 1 mm a year comes from one herd and explains little of the spread");
    return toeMinimumMm(landmark, lactation, ageYears);
  },
  steps: ({ landmark, lactation, ageYears }, result) => [
    {
      label: "Length by landmark",
      working: landmark === "hard horn" ? `${landmark}, ${isHeifer(lactation) ? "heifer" : "cow"}` : landmark,
      value: `${toeMinimumMm(landmark, lactation)} mm`,
    },
    ...(ageYears === undefined
      ? []
      : [
          {
            label: "Age",
            working: `${toeMinimumMm(landmark, lactation)} mm + ${LONGER_PER_YEAR_MM} mm × ${counted(ageYears, "year")}`,
            value: `${figure(Number(result))} mm`,
          },
        ]),
  ],
});
