import { day } from "../../../../src/core/shared/days";
import { clawAngle } from "../../../../src/functions/claws/claw-angle";
import { clawBalance } from "../../../../src/functions/claws/claw-balance";
import { clawGrowOut } from "../../../../src/functions/claws/claw-grow-out";
import { clawReference } from "../../../../src/functions/claws/claw-reference";
import { printedTrimRules } from "../../../../src/functions/claws/kinds-of-trimming";
import { toeCheck } from "../../../../src/functions/claws/toe-check";
import { toeCut } from "../../../../src/functions/claws/toe-cut";
import { toeMinimum } from "../../../../src/functions/claws/toe-minimum";
import { toeSole } from "../../../../src/functions/claws/toe-sole";
import { trimNext } from "../../../../src/functions/claws/trim-next";
import { trimPlan } from "../../../../src/functions/claws/trim-plan";
import type { FunctionSpec } from "../../../../src/functions/define";
import { refusal, told } from "../../cells/call";

type Told = ReturnType<typeof told>;
type Case = readonly [spec: FunctionSpec, args: readonly unknown[], steps: Told["steps"], remarks?: Told["remarks"]];

const HARD_HORN_COW = ["Minimum", "from the hard horn", "81 mm"];
const HARD_HORN_HEIFER = ["Minimum", "from the hard horn", "75 mm"];
const HOW_TO_CUT = "left within 2 mm, whole mm, never below the minimum";
const SHORT_TOE = ["the toe is short: do not cut, and leave the sole"];
const SOLE_LIMITS = "critical under 5 mm, caution under 7 mm";
const NOTHING_OFF = ["under 7 mm: take nothing off the sole"];
const WEAK = ["the 1 mm a year comes from one herd and explains little of the spread"];
const COVERED = "covers what is due up to it or fewer than 60 days after it";

const cases: readonly Case[] = [
  [clawAngle, [44], [["Angle", "44 degrees", "shallow: raise towards 50"]]],
  [clawAngle, [45], [["Angle", "45 degrees", "within 45-52"]]],
  [clawAngle, [52], [["Angle", "52 degrees", "within 45-52"]]],
  [clawAngle, [53], [["Angle", "53 degrees", "steep"]]],
  [clawReference, ["RH"], [["Reference claw", "hind foot", "inner"]]],
  [clawReference, ["fore"], [["Reference claw", "front foot", "outer"]]],
  [clawGrowOut, [45], [["Months", "45 mm / 6 mm a month", "7.5"]]],
  // 50 / 7 = 7.142...
  [clawGrowOut, [50, 7], [["Months", "50 mm / 7 mm a month", "7.14"]]],
  // 41.5 - 38 = 3.5, cut in whole mm, and more than 3 off one sole.
  [
    clawBalance,
    [38, 41.5, "LH"],
    [
      ["Reference claw", "hind foot", "inner"],
      ["Difference", "outer 41.5 mm, inner 38 mm", "3.5 mm"],
      ["Advice", "only the outer heel may be lowered", "lower outer heel 3 mm; thin sole: stop when it yields"],
    ],
  ],
  [
    clawBalance,
    [40, 42, "RH"],
    [
      ["Reference claw", "hind foot", "inner"],
      ["Difference", "outer 42 mm, inner 40 mm", "2 mm"],
      ["Advice", "only the outer heel may be lowered", "level: leave"],
    ],
  ],
  [
    clawBalance,
    [38, 43, "RF"],
    [
      ["Reference claw", "front foot", "outer"],
      ["Difference", "outer 43 mm, inner 38 mm", "5 mm"],
      ["Advice", "only the inner heel may be lowered", "leave: never lower the outer heel of a front foot"],
    ],
  ],
  [
    toeCheck,
    [87.5, "hard horn", 2],
    [HARD_HORN_COW, ["Over the minimum", "87.5 - 81 mm", "6.5 mm"], ["Advice", HOW_TO_CUT, "shorten 6 mm"]],
  ],
  [
    toeCheck,
    [77, "hard horn", "heifer"],
    [HARD_HORN_HEIFER, ["Over the minimum", "77 - 75 mm", "2 mm"], ["Advice", HOW_TO_CUT, "leave"]],
  ],
  [
    toeCheck,
    [87, "hairline"],
    [
      ["Minimum", "from the skin-horn line", "90 mm"],
      ["Over the minimum", "87 - 90 mm", "-3 mm"],
      ["Advice", HOW_TO_CUT, "short: do not cut"],
    ],
  ],
  [toeCut, [87.5, "hard horn"], [HARD_HORN_COW, ["Take off", "87.5 - 81 mm, rounded down; 2 mm or less is 0", "6 mm"]]],
  // Two mm short is inside the error of measuring.
  [
    toeCut,
    [73, "hard horn", 1],
    [HARD_HORN_HEIFER, ["Take off", "73 - 75 mm, rounded down; 2 mm or less is 0", "0 mm"]],
  ],
  [
    toeCut,
    [78, "hard horn", 2],
    [HARD_HORN_COW, ["Take off", "78 - 81 mm, rounded down; 2 mm or less is 0", "0 mm"]],
    SHORT_TOE,
  ],
  [toeMinimum, ["hard horn"], [["Length by landmark", "hard horn, cow", "81 mm"]]],
  [toeMinimum, ["hard horn", 2], [["Length by landmark", "hard horn, cow", "81 mm"]]],
  [toeMinimum, ["hard horn", 1], [["Length by landmark", "hard horn, heifer", "75 mm"]]],
  [toeMinimum, ["skin-horn line", 1], [["Length by landmark", "skin-horn line", "90 mm"]]],
  [
    toeMinimum,
    ["hard horn", "heifer", 1],
    [
      ["Length by landmark", "hard horn, heifer", "75 mm"],
      ["Age", "75 mm + 1 mm × 1 year", "76 mm"],
    ],
    WEAK,
  ],
  [
    toeMinimum,
    ["skin-horn line", 3, 4.5],
    [
      ["Length by landmark", "skin-horn line", "90 mm"],
      ["Age", "90 mm + 1 mm × 4.5 years", "94.5 mm"],
    ],
    WEAK,
  ],
  // Between 75 mm (6.1) and 79.8 mm (7): 6.1 + 0.9 × 1.2 / 4.8 = 6.325
  [
    toeSole,
    [76.2, "inner"],
    [
      ["Sole", "inner claw, 76.2 mm, between the printed values", "6.33 mm"],
      ["Meaning", SOLE_LIMITS, "caution"],
    ],
    NOTHING_OFF,
  ],
  [
    toeSole,
    [78.4, "lateral"],
    [
      ["Sole", "outer claw, 78.4 mm, between the printed values", "7 mm"],
      ["Meaning", SOLE_LIMITS, "enough"],
    ],
  ],
  // 10 January + 117: 21 days in January, 29, 31, 30, then 6 May.
  [
    trimNext,
    [null, day("2024-01-10"), day("2024-11-20")],
    [
      ["Last trim", COVERED, "none"],
      ["Earliest rule left", "2024-01-10 + 117 days (in milk)", "2024-05-06"],
    ],
  ],
  [
    trimNext,
    [day("2024-05-06"), day("2024-01-10"), day("2024-11-20")],
    [
      ["Last trim", COVERED, "2024-05-06"],
      ["Earliest rule left", "2024-11-20 - 21 days (before dry-off)", "2024-10-30"],
    ],
  ],
  [
    trimNext,
    [
      day("2024-05-06"),
      null,
      null,
      [
        ["When", "Days"],
        ["after last trim", 1],
        ["between trims", 1],
      ],
    ],
    [
      ["Last trim", "covers what is due up to it or fewer than 1 day after it", "2024-05-06"],
      ["Earliest rule left", "2024-05-06 + 1 day (after last trim)", "2024-05-07"],
    ],
  ],
  [
    trimNext,
    [
      day("2024-05-06"),
      day("2024-05-06"),
      null,
      [
        ["When", "Days"],
        ["days in milk", 2],
      ],
    ],
    [
      ["Last trim", "covers what is due up to it", "2024-05-06"],
      ["Earliest rule left", "2024-05-06 + 2 days (in milk)", "2024-05-08"],
    ],
  ],
];

test.each(cases.map((one) => [one[0].id, one] as const))(
  "the working of %s",
  (_, [spec, args, steps, remarks = []]) => {
    expect(told(spec, ...args)).toEqual({ steps, remarks });
  },
);

describe("the working of TRIM.PLAN", () => {
  const said = (...args: unknown[]): string[][] => told(trimPlan, ...args).steps;

  test("a hind foot of a sound cow", () => {
    // 87 - 81 = 6; the outer claw is then cut to 81 too: 90 - 81 = 9.
    expect(said("LH", 87, 90, "hard horn", 3, "sound")).toEqual([
      HARD_HORN_COW,
      ["First claw", "hind foot: inner", "87 mm"],
      ["Second claw", "outer", "90 mm"],
      ["Seen", "walks sound", "nothing"],
      [
        "1 length",
        "keep 7 mm of sole at the toe, never under 5; spare the heel; stop when the sole yields or shows pink",
        "inner claw: shorten 6 mm",
      ],
      [
        "2 match",
        "level both soles only as far as the sole of the outer claw allows; stop when the sole yields or shows pink",
        "outer claw: shorten 9 mm, level with the inner claw",
      ],
      [
        "3 model",
        "leave the toe and the wall bearing weight",
        "hollow out the inside of the sole, most in the outer claw, from 25-30 mm behind the toe",
      ],
      ["4 relieve", "do not search", "nothing: walks sound and nothing seen"],
      ["5 loose horn", "leave sound horn", "nothing to remove"],
    ]);
  });

  test("a front foot of a lame heifer with a lesion", () => {
    // The outer claw is 3 mm short of 75.
    expect(said("RF", 74, 72, "hard horn", "heifer", "yes", "sole ulcer").slice(0, 6)).toEqual([
      HARD_HORN_HEIFER,
      ["First claw", "front foot: outer", "72 mm"],
      ["Second claw", "inner", "74 mm"],
      ["Seen", "walks lame", "SU"],
      ["1 length", "leave its sole too; a short claw has a thin sole", "outer claw: short: do not cut"],
      [
        "2 match",
        "level both soles only as far as the sole of the inner claw allows; stop when the sole yields or shows pink",
        "inner claw: leave, level with the outer claw",
      ],
    ]);
  });
});

test.each([
  [
    toeSole,
    [72, "inner"],
    "invalid",
    "lengthMm must be from 72.1 to 79.8 mm, the range printed for the inner claw; got 72",
  ],
  [
    trimNext,
    [null, day("2024-05-06"), day("2024-05-06")],
    "invalid",
    'dryOffOn must be after calvedOn (2024-05-06), as the dry-off that ends this lactation; got "2024-05-06"',
  ],
  [
    toeCut,
    [8.7, "hard horn"],
    "invalid",
    "lengthMm must be a number from 30 to 250 mm (millimetres, not cm or inches); got 8.7",
  ],
  [
    toeMinimum,
    ["hard horn", "heifers"],
    "invalid",
    'lactation must be a whole number from 1 to 20, or "heifer"; got "heifers"',
  ],
  [
    toeMinimum,
    ["hard horn", "no heifer"],
    "invalid",
    'lactation must be a whole number from 1 to 20, or "heifer"; got "no heifer"',
  ],
] as const)(
  "a refusal names the limit and the value",
  (spec: FunctionSpec, args: readonly unknown[], kind, message) => {
    expect(refusal(spec, ...args)).toEqual({ kind, message });
  },
);

test("the printed trim rules name their source, or say that there is none", () => {
  expect(printedTrimRules()).toEqual([
    ["When", "Days", "Basis"],
    ["days in milk", 117, "Cramer, Shepley & van de Pol 2025"],
    [
      "before dry-off",
      21,
      "Common practice, no source: cows are trimmed two to three weeks before dry-off, so that what is found can be seen again while they are milked",
    ],
    ["between trims", 60, "Common practice, no source: a cow trimmed within the last two months is not trimmed again"],
  ]);
});
