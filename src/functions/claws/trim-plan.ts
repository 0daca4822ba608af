import { disorderOf } from "../../core/claws/disorder-key";
import { otherClaw, referenceClaw } from "../../core/claws/reference-claw";
import { cowLengthPractice, measuringPractice, toeMinimumMm } from "../../core/claws/toe-length";
import { trimPlan as planOfTrim } from "../../core/claws/trim-plan";
import { archer2015 } from "../../core/reference/archer-2015";
import { toussaintRaven1985 } from "../../core/reference/toussaint-raven-1985";
import { AS_PRESCRIBED, TRAINED_TRIMMER, VETERINARIAN } from "../cautions";
import type { CellValue } from "../cell";
import { defineFunction, optional, required } from "../define";
import { lesionOrSound } from "./kinds-of-care";
import { lactation as lactationKind, lameness, landmark as landmarkKind, limb, toeLength } from "./kinds-of-trimming";

const HEADINGS: readonly CellValue[] = ["Step", "Advice", "Caution"];

export const trimPlan = defineFunction({
  id: "TRIM.PLAN",
  group: "Toe, sole, balance and trimming",
  summary: "The five steps of functional trimming for one foot, with what not to do.",
  parameters: {
    foot: required(limb, "Foot: LF, RF, LH, RH, or front or hind"),
    innerToeMm: required(toeLength, "Toe length of the inner claw"),
    outerToeMm: required(toeLength, "Toe length of the outer claw"),
    landmark: required(landmarkKind, "From where both are measured; there is no default"),
    lactation: required(lactationKind, 'Lactation; 1 or "heifer" is a heifer'),
    lame: required(lameness, "Whether she walks lame"),
    lesion: optional(lesionOrSound, "What was found", "nothing was found"),
  },
  result: {
    shape: "table",
    columns: [
      { heading: "Step", type: "text" },
      { heading: "Advice", type: "text" },
      { heading: "Caution", type: "text" },
    ],
  },
  sources: [toussaintRaven1985, cowLengthPractice, archer2015, measuringPractice],
  limits: [
    "The minimum is that of hind claws; no source gives one for front claws, for which it is used too.",
    "Made from two toe lengths: it sees neither sole, nor angle, nor shape.",
  ],
  cautions: [TRAINED_TRIMMER, VETERINARIAN, AS_PRESCRIBED],
  examples: [
    {
      arguments: ["LH", 87, 90, "hard horn", 3, "sound", "none"],
      result: [
        HEADINGS,
        [
          "1 length",
          "inner claw: shorten 6 mm",
          "keep 7 mm of sole at the toe, never under 5; spare the heel; stop when the sole yields or shows pink",
        ],
        [
          "2 match",
          "outer claw: shorten 9 mm, level with the inner claw",
          "level both soles only as far as the sole of the outer claw allows; stop when the sole yields or shows pink",
        ],
        [
          "3 model",
          "hollow out the inside of the sole, most in the outer claw, from 25-30 mm behind the toe",
          "leave the toe and the wall bearing weight",
        ],
        ["4 relieve", "nothing: walks sound and nothing seen", "do not search"],
        ["5 loose horn", "nothing to remove", "leave sound horn"],
      ],
      origin: "hand",
      where: "Toussaint Raven 1985, five steps; 87 - 81 = 6 mm, then 90 - 81 = 9 mm",
    },
    {
      arguments: ["RF", 74, 72, "hard horn", "heifer", "lame", "SU"],
      result: [
        HEADINGS,
        ["1 length", "outer claw: short: do not cut", "leave its sole too; a short claw has a thin sole"],
        [
          "2 match",
          "inner claw: leave, level with the outer claw",
          "level both soles only as far as the sole of the inner claw allows; stop when the sole yields or shows pink",
        ],
        ["3 model", "do not hollow out the sole", "a short claw has a thin sole"],
        [
          "4 relieve",
          "lower the painful claw towards the heel; block the sound claw",
          "block only a sound claw and set the day it comes off; lift the other foot of the pair too",
        ],
        ["5 loose horn", "loose and under-run horn, thin edges", "never into live tissue; bleeding means stop"],
      ],
      origin: "hand",
      where: "Toussaint Raven 1985: front, the outer claw first; 72 mm is 3 below 75, 74 mm is 1 below",
    },
  ],
  compute({ foot, innerToeMm, outerToeMm, landmark, lactation, lame, lesion }) {
    const plan = planOfTrim({
      limb: foot,
      toeMm: { inner: innerToeMm, outer: outerToeMm },
      minimumMm: toeMinimumMm(landmark, lactation),
      lame: lame === "lame",
      lesion: lesion === undefined ? undefined : disorderOf(lesion),
    });
    return [HEADINGS, ...plan.map(({ step, advice, caution }) => [step, advice, caution])];
  },
  steps({ foot, innerToeMm, outerToeMm, landmark, lactation, lame, lesion }, result) {
    const reference = referenceClaw(foot);
    const toe = { inner: innerToeMm, outer: outerToeMm };
    return [
      { label: "Minimum", working: `from the ${landmark}`, value: `${toeMinimumMm(landmark, lactation)} mm` },
      { label: "First claw", working: `${foot} foot: ${reference}`, value: `${toe[reference]} mm` },
      { label: "Second claw", working: otherClaw(reference), value: `${toe[otherClaw(reference)]} mm` },
      { label: "Seen", working: `walks ${lame}`, value: lesion ?? "nothing" },
      ...(result as readonly (readonly CellValue[])[])
        .slice(1)
        .map(([step, advice, caution]) => ({ label: String(step), working: String(caution), value: String(advice) })),
    ];
  },
});
