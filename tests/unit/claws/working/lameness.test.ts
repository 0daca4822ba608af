import { day } from "../../../../src/core/shared/days";
import { cowDays } from "../../../../src/functions/claws/cow-days";
import { lameCases } from "../../../../src/functions/claws/lame-cases";
import { lameSample } from "../../../../src/functions/claws/lame-sample";
import { lameScoring } from "../../../../src/functions/claws/lame-scoring";
import { lameShare } from "../../../../src/functions/claws/lame-share";
import { lameState } from "../../../../src/functions/claws/lame-state";
import { lameSummary } from "../../../../src/functions/claws/lame-summary";
import { lameWait } from "../../../../src/functions/claws/lame-wait";
import { lameWithin } from "../../../../src/functions/claws/lame-within";
import type { FunctionSpec } from "../../../../src/functions/define";
import { refusal, told } from "../../cells/call";

type Told = ReturnType<typeof told>;
type Case = readonly [spec: FunctionSpec, args: readonly unknown[], steps: Told["steps"], remarks?: Told["remarks"]];

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const [day20, day22] = [day("2024-02-20"), day("2024-02-22")];
const MIDDLE = ["Take them from the middle of the milking order"];
const JANUARY = [day("2024-01-01"), day("2024-01-31")] as const;

const cases: readonly Case[] = [
  [lameState, [2, "1-5"], [["Lame from", "scale 1-5", "3"], ["State", "score 2", "sound"]]], // oxfmt-ignore
  [lameState, [2.5, "1-5", 2.5], [["Lame from", "scale 1-5", "2.5"], ["State", "score 2.5", "lame"]]], // oxfmt-ignore
  [lameState, [3, "0-3"], [["Lame from", "scale 0-3", "2"], ["State", "score 3", "severe"]]], // oxfmt-ignore
  // Of 8 scored 2, 3 and 2 are lame, the 3 severe: 3 / 8 = 37.5 %. R: prop.test(3, 8, correct = FALSE) 0.13684 0.69426
  [
    lameShare,
    [column(0, 1, 2, 3, "dry", 1, 0, 2, 1, null), "0-3"],
    [
      ["Lame from", "scale 0-3", "2"],
      ["Lame cows", "1 of them severe", "3"],
      ["Share", "3 / 8", "37.5 %"],
      ["95 % limits", "Wilson", "13.7 to 69.4 %"],
    ],
    ["1 row left out: no score"],
  ],
  // A 0 is a blank on this scale. 2 / 3 = 66.7 %. R: prop.test(2, 3, correct = FALSE) 0.20766 0.93851
  [
    lameShare,
    [column(1, 0, 2, 3), "1-5", 2],
    [
      ["Lame from", "scale 1-5", "2"],
      ["Lame cows", "0 of them severe", "2"],
      ["Share", "2 / 3", "66.7 %"],
      ["95 % limits", "Wilson", "20.8 to 93.9 %"],
    ],
  ],
  [
    lameSummary,
    [column(0, 1, 2, 3, "dry", 1, 0, 2, 1), "0-3"],
    [
      ["Scored", "1 row left out", "8"],
      ["Lame", "score 2 or more: 3 / 8", "37.5 %"],
      ["Severe", "1 / 8", "12.5 %"],
    ],
    ["1 row left out: no score"],
  ],
  [
    lameSummary,
    [column(1, 3, "dry", "sold"), "1-5", 2.5],
    [
      ["Scored", "2 rows left out", "2"],
      ["Lame", "score 2.5 or more: 1 / 2", "50 %"],
      ["Severe", "0 / 2", "0 %"],
    ],
    ["2 rows left out: no score"],
  ],
  [lameSummary, [column(3), "0-3"], [["Scored", "0 rows left out", "1"], ["Lame", "score 2 or more: 1 / 1", "100 %"], ["Severe", "1 / 1", "100 %"]]], // oxfmt-ignore
  [lameWait, [day20, day22], [["Wait", "2024-02-20 to 2024-02-22", "2 days"]]],
  [lameWait, [day20, day20 + 1], [["Wait", "2024-02-20 to 2024-02-21", "1 day"]]],
  [lameWait, [day20, day20], [["Wait", "2024-02-20 to 2024-02-20", "0 days"]]],
  // After 0 and 2 days in time; after 3 days and never, not. R: prop.test(2, 4, correct = FALSE) 0.15004 0.84996
  [
    lameWithin,
    [column(day20, day20, day20, day20, null, null), column(day20, day22, day20 + 3, null, day22, null), 48],
    [
      ["Seen lame", "1 not treated", "4"],
      ["In time", "within 48 hours", "2"],
      ["Share", "2 / 4", "50 %"],
      ["95 % limits", "Wilson", "15 to 85 %"],
    ],
    ["1 row left out: treated, but no day on which she was seen lame"],
  ],
  // R: prop.test(1, 3, correct = FALSE) 0.06149 0.79234
  [
    lameWithin,
    [column(day20, day20, day20), column(day20, day20 + 1, day20 + 1), 1],
    [
      ["Seen lame", "0 not treated", "3"],
      ["In time", "within 1 hour", "1"],
      ["Share", "1 / 3", "33.3 %"],
      ["95 % limits", "Wilson", "6.1 to 79.2 %"],
    ],
  ],
  // R: qnorm(0.975) = 1.960; 1.959964² × 0.3 × 0.7 / 0.05² = 322.7; / (1 + 321.7 / 100) = 76.5
  [
    lameSample,
    [100, 0.3, 0.05],
    [
      ["Very large herd", "1.96² × 0.3 × 0.7 / 0.05²", "322.7"],
      ["Herd of 100", "322.7 / (1 + (322.7 − 1) / 100), rounded up", "77"],
    ],
    MIDDLE,
  ],
  // R: qnorm(0.95) = 1.645; 1.644854² × 0.2 × 0.8 / 0.1² = 43.3; / (1 + 42.3 / 50) = 23.5
  [
    lameSample,
    [50, 0.2, 0.1, 0.9],
    [
      ["Very large herd", "1.645² × 0.2 × 0.8 / 0.1²", "43.3"],
      ["Herd of 50", "43.3 / (1 + (43.3 − 1) / 50), rounded up", "24"],
    ],
    MIDDLE,
  ],
  // Three cows on the 20th, two on the 22nd: more than half of three.
  [
    lameScoring,
    [column(day20, day20, day20, day22, day22, "dry", "sold")],
    [
      ["Fullest day", "of the 365 days up to 2024-02-22", "3 cows"],
      ["Scored on the day", "more than half of 3", "2 cows"],
      ["Last scoring of the herd", "the last such day", "2024-02-22"],
    ],
    ["2 rows left out: no day"],
  ],
  [
    lameScoring,
    [column(day20, day22), day20],
    [
      ["Fullest day", "of the 365 days up to 2024-02-20", "1 cow"],
      ["Scored on the day", "more than half of 1", "1 cow"],
      ["Last scoring of the herd", "the last such day", "2024-02-20"],
    ],
  ],
  // unconfirmed, sound, new, lame, recovered; then the rows without a cow, a day or a score, and a blank one.
  [
    lameCases,
    [
      column(1, 1, 1, 1, 1, null, 2, 2, null),
      column(1, 2, 3, 4, 5, 1, null, 1, null).map(([week]) => [week === null ? null : day20 + 7 * Number(week)]),
      column(1, 2, 4, 1, 2, 3, 3, "dry", null),
      "1-5",
    ],
    [
      ["Rule", "two scores in a row, or one severe one; scale 1-5", ""],
      ["New cases", "sound before, now confirmed lame", "1"],
      ["Recovered", "lame before, now confirmed sound", "1"],
      ["Unconfirmed", "scores before the first two that agree", "1"],
    ],
    ["3 rows left out: no cow, date or score"],
  ],
  // 31 days; 11 from the 21st on; 10 up to the 10th; the last cow left before. 52 / 365.25 = 0.1424; 52 / 31 = 1.68
  [
    cowDays,
    [
      column(day("2023-01-01"), day("2024-01-21"), null, day("2023-01-01"), day("2023-01-01"), null),
      column(null, null, null, day("2024-01-10"), day("2023-12-31"), null),
      ...JANUARY,
    ],
    [
      ["Period", "2024-01-01 to 2024-01-31", "31 days"],
      ["Cows in the herd then", "3 of 4 rows", "52 cow-days"],
      ["Cow-years", "52 / 365.25", "0.14"],
      ["Cows on an average day", "52 / 31", "1.7"],
    ],
    ["1 row left out: no day of entry"],
  ],
  // 1 / 365.25 = 0.0027
  [
    cowDays,
    [column(day20), column(day20), day20, day20],
    [
      ["Period", "2024-02-20 to 2024-02-20", "1 day"],
      ["Cows in the herd then", "1 of 1 row", "1 cow-day"],
      ["Cow-years", "1 / 365.25", "0"],
      ["Cows on an average day", "1 / 1", "1"],
    ],
  ],
];

test.each(cases.map((one) => [one[0].id, one] as const))(
  "the working of %s",
  (_, [spec, args, steps, remarks = []]) => {
    expect(told(spec, ...args)).toEqual({ steps, remarks });
  },
);

const refused: readonly (readonly [FunctionSpec, readonly unknown[], kind: string, message: string])[] = [
  [lameState, [0, "1-5"], "unavailable", "score is blank: enter a score from 1 to 5"],
  [lameState, [1.5, "0-3"], "invalid", "score must be 0, 1, 2 or 3 on the scale 0-3; got 1.5"],
  [lameState, [2.2, "1-5"], "invalid", "score must be 1 to 5, halves allowed, on the scale 1-5; got 2.2"],
  [lameState, [2, "1-5", 1], "invalid", "cutoff must be a score above 1 and up to 5 on the scale 1-5; got 1"],
  [
    lameState,
    [2, day20],
    "invalid",
    'scale must be "0-3" or "1-5" (in a cell, as text: it turns into a date); got 45342',
  ],
  [lameShare, [column("dry"), "0-3"], "unavailable", "scores holds no scores: enter a score a cow"],
  [lameShare, [column(1, 4), "0-3"], "invalid", "scores row 2 must be 0, 1, 2 or 3 on the scale 0-3; got 4"],
  [lameWait, [day22, day20], "invalid", "treatedOn must be 2024-02-22 (seenLameOn) or later; got 2024-02-20"],
  [
    lameWithin,
    [column(day20, day22), column(day20, day20), 48],
    "invalid",
    "treatedOn row 2 must be 2024-02-22 (seenLameOn) or later; got 2024-02-20",
  ],
  [
    lameWithin,
    [column(null), column(day20), 48],
    "unavailable",
    "seenLameOn holds no dates: enter the day on which each cow was seen lame",
  ],
  [lameScoring, [column(null, "dry")], "unavailable", "dates holds no day of a score"],
  [lameScoring, [column(day22), day20], "unavailable", "dates holds no day of a score up to 2024-02-20"],
  [
    lameCases,
    [column(1, 2, 1), column(day20, day20, day20), column(1, 1, 3), "0-3"],
    "invalid",
    "dates row 3 must be another day than row 1 of the same cow; got 2024-02-20 twice",
  ],
  [
    lameCases,
    [column(1), column(null), column(1), "0-3"],
    "unavailable",
    "scores holds no score with its cow and date",
  ],
  [
    cowDays,
    [column(day20, null), column(null, day22), ...JANUARY],
    "invalid",
    "enteredOn row 2 must be a date, since the cow left; got a blank",
  ],
  [
    cowDays,
    [column(day22), column(day20), ...JANUARY],
    "invalid",
    "leftOn row 1 must be 2024-02-22 (enteredOn) or later; got 2024-02-20",
  ],
  [cowDays, [column(day20), column(null), day22, day20], "invalid", "to must be 2024-02-22 (from) or later; got 2024-02-20"], // oxfmt-ignore
];

test.each(refused.map((one) => [one[0].id, one] as const))(
  "HERD.%s says what is wrong",
  (_, [spec, args, kind, message]) => {
    expect(refusal(spec, ...args)).toEqual({ kind, message });
  },
);
