import { day } from "../../../../src/core/shared/days";
import { causeReview } from "../../../../src/functions/claws/cause-review";
import { lesionBygroup } from "../../../../src/functions/claws/lesion-bygroup";
import { lesionGroup } from "../../../../src/functions/claws/lesion-group";
import { lesionName } from "../../../../src/functions/claws/lesion-name";
import { lesionParent } from "../../../../src/functions/claws/lesion-parent";
import { lesionShare } from "../../../../src/functions/claws/lesion-share";
import { lesionShares } from "../../../../src/functions/claws/lesion-shares";
import { lesionStage } from "../../../../src/functions/claws/lesion-stage";
import { rateHigh } from "../../../../src/functions/claws/rate-high";
import { rateLow } from "../../../../src/functions/claws/rate-low";
import { shareHigh } from "../../../../src/functions/claws/share-high";
import { shareLow } from "../../../../src/functions/claws/share-low";
import type { FunctionSpec } from "../../../../src/functions/define";
import { refusal, table, told } from "../../cells/call";

type Told = ReturnType<typeof told>;
type Case = readonly [spec: FunctionSpec, args: readonly unknown[], steps: Told["steps"], remarks?: Told["remarks"]];

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const repeated = (count: number, cell: unknown): unknown[] => Array.from({ length: count }, () => cell);
const numbered = (count: number): unknown[][] => Array.from({ length: count }, (_, place) => [place + 1]);

const noCowOrLesion = 'no cow or no lesion ("none" is the word for a sound cow)';
/** Cows 1 to 4, two of them sound, cow 1 in two rows; then a row without a cow and one without a lesion. */
const cows = column(1, 2, 3, 4, 1, null, 5);
const lesions = column("DD", "none", "SU", "none", "DD", "DD", null);
const [from, to] = [day("2024-01-01"), day("2024-12-31")];
const dates = column(...repeated(7, from));
/** Of `count` cows the first `affected` have digital dermatitis. */
const herd = (affected: number, count: number): unknown[][][] => [
  numbered(count),
  column(...repeated(affected, "DD"), ...repeated(count - affected, "none")),
];

const cases: readonly Case[] = [
  // R: prop.test(1, 4, correct = FALSE) 0.04559 0.69936
  [
    lesionShare,
    [cows, lesions, "DD"],
    [
      ["Cows examined", "2 of them recorded sound", "4"],
      ["Digital dermatitis", "cows with it", "1"],
      ["Share", "1 / 4", "25 %"],
      ["95 % limits", "Wilson", "4.6 to 69.9 %"],
    ],
    [`2 rows left out: ${noCowOrLesion}`, "Only 4 cows examined: a small number"],
  ],
  // R: prop.test(0, 1, correct = FALSE) 0 0.79345
  [
    lesionShare,
    [...herd(0, 1), "all"],
    [
      ["Cows examined", "1 of them recorded sound", "1"],
      ["All lesions", "cows with it", "0"],
      ["Share", "0 / 1", "0 %"],
      ["95 % limits", "Wilson", "0 to 79.3 %"],
    ],
    ["Only 1 cow examined: a small number"],
  ],
  // Twenty cows are not few. R: prop.test(5, 20, correct = FALSE) 0.11186 0.46870
  [
    lesionShare,
    [...herd(5, 20), "infectious"],
    [
      ["Cows examined", "15 of them recorded sound", "20"],
      ["Infectious lesions", "cows with it", "5"],
      ["Share", "5 / 20", "25 %"],
      ["95 % limits", "Wilson", "11.2 to 46.9 %"],
    ],
  ],
  // R: prop.test(2, 4, correct = FALSE) 0.15004 0.84996
  [
    lesionShares,
    [column(1, 2, 3, 4, 1, null, 5, 6), column("DD", "none", "SU", "none", "DD", "DD", null, "DD"), [...dates, [null]], from, to], // oxfmt-ignore
    [
      ["Cows examined", "2024-01-01 to 2024-12-31, 2 of them recorded sound", "4"],
      ["Ulcer", "1 / 4", "25 % (4.6 % to 69.9 %)"],
      ["Digital dermatitis", "1 / 4", "25 % (4.6 % to 69.9 %)"],
      ["All lesions", "2 / 4", "50 % (15 % to 85 %)"],
    ],
    [`2 rows left out: ${noCowOrLesion}`, "1 row left out: no date", "Only 4 cows examined: a small number"],
  ],
  [
    lesionShares,
    [...herd(5, 20), column(...repeated(20, to)), from, to],
    [
      ["Cows examined", "2024-01-01 to 2024-12-31, 15 of them recorded sound", "20"],
      ["Digital dermatitis", "5 / 20", "25 % (11.2 % to 46.9 %)"],
      ["All lesions", "5 / 20", "25 % (11.2 % to 46.9 %)"],
    ],
  ],
  // 2 / 3 = 66.7 %; the last row has no cow.
  [
    lesionBygroup,
    [column(1, 2, 3, 4, 5, null), column("DD", "none", "DD", "SU", "DD", "DD"), column("heifer", "Heifer", "heifer", 3, null, 1), "DD"], // oxfmt-ignore
    [
      ["Digital dermatitis, heifers", "2 / 3", "66.7 %"],
      ["Digital dermatitis, first lactation", "0 / 0", "no cow"],
      ["Digital dermatitis, second and later", "0 / 1", "0 %"],
      ["Digital dermatitis, lactation not given", "1 / 1", "100 %"],
    ],
    [`1 row left out: ${noCowOrLesion}`],
  ],
  [lesionGroup, ["white line abscess"], [["White line abscess", "WLA", "horn"]]],
  [lesionName, ["su"], [["Claw disorder key", "SU", "Sole ulcer"]]],
  [lesionParent, ["SU"], [["Sole ulcer", "SU is counted as", "U, Ulcer"]]],
  [lesionParent, ["DD"], [["Digital dermatitis", "DD is counted as", "DD, Digital dermatitis"]]],
  [lesionStage, ["m 4.1"], [["Stage", "M4.1", "active"]]],
  // Twelve of 16 findings are 75 %; a corkscrew claw points to no place.
  [
    causeReview,
    [column(...repeated(12, "SU"), ...repeated(4, "CC"), "none"), column(...repeated(17, 4)), column(...repeated(17, 3)), column(...repeated(17, 200))], // oxfmt-ignore
    [
      ["Findings", "rows with a lesion, of 17", "16"],
      ["Lying comfort", "sole lesions: SU 12; zone 4: 12; second and later: 12", "12 (75 %)"],
      ["Standing on concrete", "sole lesions: SU 12; zone 4: 12; second and later: 12", "12 (75 %)"],
    ],
  ],
  // R: prop.test(3, 8, correct = FALSE) 0.13684 0.69426; with conf.level = 0.9 0.1611723 0.6520086
  [shareLow, [3, 8], [["Share", "3 / 8", "37.5 %"], ["Lower limit", "Wilson, level 0.95", "13.68 %"]]], // oxfmt-ignore
  [shareHigh, [3, 8, 0.9], [["Share", "3 / 8", "37.5 %"], ["Upper limit", "Wilson, level 0.9", "65.2 %"]]], // oxfmt-ignore
  // All of them are allowed. R: prop.test(8, 8, correct = FALSE) 0.6755924 1
  [shareLow, [8, 8], [["Share", "8 / 8", "100 %"], ["Lower limit", "Wilson, level 0.95", "67.56 %"]]], // oxfmt-ignore
  // 12 / 0.85 = 14.1176; R: poisson.test(12, conf.level = 0.9) 6.924213, / 0.85 = 8.146132
  [
    rateLow,
    [12, 0.85, 0.9],
    [
      ["Rate", "12 / 0.85", "14.1176"],
      ["Lower limit of the count", "exact Poisson, level 0.9", "6.924"],
      ["Lower limit", "divided by 0.85", "8.1461"],
    ],
  ],
  // R: poisson.test(3) ... 8.767273, / 0.5 = 17.534546
  [
    rateHigh,
    [3, 0.5],
    [
      ["Rate", "3 / 0.5", "6"],
      ["Upper limit of the count", "exact Poisson, level 0.95", "8.767"],
      ["Upper limit", "divided by 0.5", "17.5345"],
    ],
  ],
];

test.each(cases.map((one) => [one[0].id, one] as const))(
  "the working of %s",
  (_, [spec, args, steps, remarks = []]) => {
    expect(told(spec, ...args)).toEqual({ steps, remarks });
  },
);

test("a place with ten findings is not marked as one of few, with nine it is", () => {
  const notes = (ulcers: number, others: number): unknown[] => {
    const rows = ulcers + others;
    const given = [column(...repeated(ulcers, "SU"), ...repeated(others, "CC")), ...[4, 3, 200].map((cell) => column(...repeated(rows, cell)))]; // oxfmt-ignore
    return table(causeReview, ...given)
      .slice(1)
      .map((row) => row.at(-2));
  };
  expect(notes(10, 0)).toEqual(["", ""]);
  expect(notes(9, 1)).toEqual(["few cases", "few cases"]);
});

const CODE = "a code or name of the claw disorder key, such as SU";
const noSound = 'lesions holds no sound cow: record sound cows too, as "none", or a share cannot be told';
const refused: readonly (readonly [FunctionSpec, readonly unknown[], kind: string, message: string])[] = [
  [lesionName, ["HHX"], "unavailable", `code must be ${CODE}; got "HHX": nearest known code is HHE`],
  [lesionName, ["WLX"], "unavailable", `code must be ${CODE}; got "WLX": nearest known codes are WL, WLF, WLA`],
  [lesionName, ["qqqqqq"], "unavailable", `code must be ${CODE}; got "qqqqqq"`],
  [lesionName, [true], "invalid", `code must be ${CODE}; got TRUE`],
  [lesionStage, [true], "invalid", "stage must be a stage of digital dermatitis (M0, M1, M2, M3, M4, M4.1); got TRUE"],
  [
    lesionShare,
    [cows, lesions, false],
    "invalid",
    `lesion must be ${CODE}, or one of all, horn, infectious, shape, other; got FALSE`,
  ],
  [
    lesionShare,
    [column(1, 2), column("none", true), "DD"],
    "invalid",
    `lesions row 2 must be ${CODE}, or "none" for a sound cow; got TRUE`,
  ],
  [
    lesionShare,
    [column(1, true), column("none", "DD"), "DD"],
    "invalid",
    "cows row 2 must be a cow's name or number; got TRUE",
  ],
  [lesionShare, [column(1), column("DD"), "DD"], "unavailable", noSound],
  [lesionBygroup, [column(1), column("DD"), column(1), "DD"], "unavailable", noSound],
  [lesionShares, [column(1), column("DD"), column(from), from, to], "unavailable", noSound],
  [
    lesionShares,
    [column(1), column("DD"), column(from - 1), from, to],
    "unavailable",
    'lesions holds no finding from 2024-01-01 to 2024-12-31: enter a code a row, or "none" for a sound cow',
  ],
  [
    lesionShares,
    [column(1), column("DD"), column(from), to, from],
    "invalid",
    "to must be 2024-12-31 (from) or later; got 2024-01-01",
  ],
  [
    causeReview,
    [column(null, null), column(1, 1), column(1, 1), column(1, 1)],
    "unavailable",
    'lesions holds no findings: enter a code a row, or "none" for a sound cow',
  ],
  [shareLow, [9, 8], "invalid", "cases must be at most 8 (of); got 9"],
];

test.each(refused.map((one) => [one[0].id, one] as const))(
  "HERD.%s says what is wrong",
  (_, [spec, args, kind, message]) => {
    expect(refusal(spec, ...args)).toEqual({ kind, message });
  },
);
