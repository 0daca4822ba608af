import {
  cowLengthPractice,
  MEASURING_ERROR_MM,
  measuringPractice,
  toeAdvice,
  toeAdviceText,
  toeMinimumMm,
} from "../../core/claws/toe-length";
import { archer2015 } from "../../core/reference/archer-2015";
import { toussaintRaven1985 } from "../../core/reference/toussaint-raven-1985";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, optional, required } from "../define";
import { figure } from "../figure";
import { lactation as lactationKind, landmark as landmarkKind, toeLength } from "./kinds-of-trimming";

export const toeCheck = defineFunction({
  id: "TOE.CHECK",
  group: "Toe, sole, balance and trimming",
  summary: "Whether to cut a toe: leave, shorten by so much, or short and not to be cut.",
  parameters: {
    lengthMm: required(toeLength, "Length of the toe along the front wall"),
    landmark: required(landmarkKind, "From where it is measured; there is no default"),
    lactation: optional(lactationKind, 'Lactation; 1 or "heifer" is a heifer', "a grown cow, the longer length"),
  },
  result: { shape: "scalar", type: "text" },
  sources: [cowLengthPractice, toussaintRaven1985, archer2015, measuringPractice],
  limits: [
    `Within ${MEASURING_ERROR_MM} mm of the minimum, the error of measuring, the answer is leave.`,
    "For the inner claw of a hind foot; the length says nothing about sole or angle.",
  ],
  cautions: [TRAINED_TRIMMER],
  examples: [
    { arguments: [87, "hard horn", 3], result: "shorten 6 mm", origin: "hand", where: "87 - 81 (common practice)" },
    {
      arguments: [83, "hard horn", 3],
      result: "leave",
      origin: "hand",
      where: "83 - 81 is inside the 2 mm of measuring",
    },
    {
      arguments: [76, "hard horn", 1],
      result: "leave",
      origin: "hand",
      where: "Toussaint Raven 1985: 75 mm, 1 mm over",
    },
    {
      arguments: [75, "skin-horn line", 3],
      result: "short: do not cut",
      origin: "printed",
      where: "Archer et al. 2015: 75 mm or less is enough for only 5 % of claws",
    },
  ],
  compute: ({ lengthMm, landmark, lactation }) => toeAdviceText(toeAdvice(lengthMm, toeMinimumMm(landmark, lactation))),
  steps({ lengthMm, landmark, lactation }, result) {
    const minimum = toeMinimumMm(landmark, lactation);
    return [
      { label: "Minimum", working: `from the ${landmark}`, value: `${minimum} mm` },
      { label: "Over the minimum", working: `${lengthMm} - ${minimum} mm`, value: `${figure(lengthMm - minimum)} mm` },
      {
        label: "Advice",
        working: `left within ${MEASURING_ERROR_MM} mm, whole mm, never below the minimum`,
        value: String(result),
      },
    ];
  },
});
