import {
  cowLengthPractice,
  MEASURING_ERROR_MM,
  measuringPractice,
  toeAdvice,
  toeCutMm,
  toeMinimumMm,
} from "../../core/claws/toe-length";
import { archer2015 } from "../../core/reference/archer-2015";
import { toussaintRaven1985 } from "../../core/reference/toussaint-raven-1985";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, optional, required } from "../define";
import { lactation as lactationKind, landmark as landmarkKind, toeLength } from "./kinds-of-trimming";

export const toeCut = defineFunction({
  id: "TOE.CUT",
  group: "Toe, sole, balance and trimming",
  summary: "Millimetres to take off a toe; 0 where it is left or too short.",
  parameters: {
    lengthMm: required(toeLength, "Length of the toe along the front wall"),
    landmark: required(landmarkKind, "From where it is measured; there is no default"),
    lactation: optional(lactationKind, 'Lactation; 1 or "heifer" is a heifer', "a grown cow, the longer length"),
  },
  result: { shape: "scalar", type: "number", unit: "mm", format: "0" },
  sources: [cowLengthPractice, toussaintRaven1985, archer2015, measuringPractice],
  limits: [
    `Whole mm, rounded down; 0 within ${MEASURING_ERROR_MM} mm of the minimum. A 0 does not tell a toe of the right length from a short one: see TOE.CHECK.`,
  ],
  cautions: [TRAINED_TRIMMER],
  examples: [
    { arguments: [87, "hard horn", 3], result: 6, origin: "hand", where: "87 - 81 (common practice)" },
    {
      arguments: [96.5, "skin-horn line", 2],
      result: 6,
      origin: "hand",
      where: "Archer et al. 2015: 96.5 - 90, rounded down",
    },
    { arguments: [70, "hard horn", 3], result: 0, origin: "hand", where: "70 mm is below 81: nothing comes off" },
  ],
  compute({ lengthMm, landmark, lactation }, remarks) {
    const advice = toeAdvice(lengthMm, toeMinimumMm(landmark, lactation));
    if (advice.kind === "short") remarks.add("the toe is short: do not cut, and leave the sole");
    return toeCutMm(advice);
  },
  steps({ lengthMm, landmark, lactation }, result) {
    const minimum = toeMinimumMm(landmark, lactation);
    return [
      { label: "Minimum", working: `from the ${landmark}`, value: `${minimum} mm` },
      {
        label: "Take off",
        working: `${lengthMm} - ${minimum} mm, rounded down; ${MEASURING_ERROR_MM} mm or less is 0`,
        value: `${String(result)} mm`,
      },
    ];
  },
});
