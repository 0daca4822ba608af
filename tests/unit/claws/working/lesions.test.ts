import { day } from "../../../../src/core/shared/days";
import { cowRepeats } from "../../../../src/functions/claws/cow-repeats";
import { lesionMonths } from "../../../../src/functions/claws/lesion-months";
import { lesionNewcase } from "../../../../src/functions/claws/lesion-newcase";
import { lesionRate } from "../../../../src/functions/claws/lesion-rate";
import { lesionTable } from "../../../../src/functions/claws/lesion-table";
import type { FunctionSpec } from "../../../../src/functions/define";
import { refusal, table, told } from "../../cells/call";

type Row = readonly [cow: unknown, foot: unknown, lesion: unknown, date: unknown];

/** Cows, feet, lesions and dates as four columns. */
const columns = (rows: readonly Row[]): unknown[][][] => [0, 1, 2, 3].map((place) => rows.map((row) => [row[place]]));

const JAN_10 = day("2024-01-10");
/** Four lesions that count, one of them a repeat and one without a foot; a sound cow; and a row left out for each reason. */
const mixed: readonly Row[] = [
  [1, "LH", "SU", JAN_10],
  [1, "LH", "SU", JAN_10 + 10],
  [2, "RH", "DD", day("2024-02-05")],
  [3, null, "WLA", day("2024-02-10")],
  [4, "LH", "none", JAN_10],
  [5, "LH", null, JAN_10],
  [null, "LH", "DD", JAN_10],
  [6, "LH", "DD", null],
];
/** So many cows with one new sole ulcer each, all in one foot. */
const ulcers = (cows: number): unknown[][][] =>
  columns(Array.from({ length: cows }, (_, cow): Row => [cow + 1, "LH", "SU", JAN_10]));

const GAP = "New case: more than 28 days after the last record of that lesion on that foot";
const RULE = ["Rule", GAP, ""];
const MIXED_LESIONS = ["Lesions counted", "8 rows − 1 sound − 3 not counted", "4"];
const NO_LESION = 'no lesion ("none" is the word for a sound cow; a 0 is read as a blank)';
const LEFT_OUT = [`1 row left out: ${NO_LESION}`, "1 row left out: no cow", "1 row left out: no date"];
const ONE_FOOT = "1 row without a foot: counted as one more foot of each cow";
const MIXED_REMARKS = [...LEFT_OUT, ONE_FOOT, GAP];

const YEAR = [day("2024-01-01"), day("2024-12-31")] as const;
const IN_2024 = "2024-01-01 to 2024-12-31";
/** 100 cow-years: 100 × 365.25. */
const COW_DAYS = 36_525;

describe("the working of LESION.NEWCASE", () => {
  test("every reason for which a row does not count", () => {
    const unknown: Row = [7, "LH", "foot thing", JAN_10];
    // Ten rows less one sound cow and the five of the remarks; the ulcer seen again ten days later is a repeat.
    expect(told(lesionNewcase, ...columns([...mixed, unknown, unknown]))).toEqual({
      steps: [RULE, ["Lesions counted", "10 rows − 1 sound − 5 not counted", "4"], ["New cases", "4 − 1 repeat", "3"]],
      remarks: [...LEFT_OUT, "2 rows left out: no known lesion", ONE_FOOT, GAP],
    });
  });

  test("one row, and a gap of one day", () => {
    const gap = "New case: more than 1 day after the last record of that lesion on that foot";
    expect(told(lesionNewcase, ...ulcers(1), 1)).toEqual({
      steps: [
        ["Rule", gap, ""],
        ["Lesions counted", "1 row − 0 sound − 0 not counted", "1"],
        ["New cases", "1 − 0 repeats", "1"],
      ],
      remarks: [gap],
    });
  });
});

describe("the working of LESION.MONTHS", () => {
  const months = (from: string, to: string): ReturnType<typeof told> =>
    told(lesionMonths, ...columns(mixed), day(from), day(to));

  test("whole months", () => {
    // January: the ulcer (horn), its repeat left aside; February: dermatitis and the white line abscess (horn).
    expect(months("2024-01-01", "2024-02-29")).toEqual({
      steps: [
        RULE,
        MIXED_LESIONS,
        ["New cases, horn", "2 months", "2"],
        ["New cases, infectious", "2 months", "1"],
        ["New cases, shape", "2 months", "0"],
        ["New cases, other", "2 months", "0"],
      ],
      remarks: MIXED_REMARKS,
    });
  });

  test.each([
    ["2024-02-02", "2024-02-29"],
    ["2024-02-01", "2024-02-28"],
  ])("a month that is cut, %s to %s", (from, to) => {
    const { steps, remarks } = months(from, to);
    expect(steps[2]).toEqual(["New cases, horn", "1 month", "1"]);
    expect(remarks.at(-1)).toBe(`The period is ${from} to ${to}: a month that it cuts is counted in part`);
  });

  test("fifty years are taken, no more", () => {
    expect(months("1974-01-01", "2024-12-31").steps[2]).toEqual(["New cases, horn", "612 months", "2"]);
    expect(refusal(lesionMonths, ...columns(mixed), day("1974-01-01"), day("2025-01-01"))).toEqual({
      kind: "invalid",
      message: "to must be at most 50 years after from; got 1974-01-01 to 2025-01-01",
    });
  });
});

describe("the working of LESION.RATE", () => {
  // Limits of the count by R: poisson.test(3) 0.6186721 8.767273.
  test("three new cases in 100 cow-years", () => {
    expect(told(lesionRate, ...columns(mixed), "all", ...YEAR, COW_DAYS)).toEqual({
      steps: [
        ["Lesion", "All lesions", "all"],
        RULE,
        ["New cases", `${IN_2024}, 3 cows, 1 repeat left aside`, "3"],
        ["Cow-years", "36525 / 365.25", "100"],
        ["Per 100 cow-years", "3 / (36525 / 365.25) × 100", "3"],
        ["95 % limits", "exact Poisson", "0.62 to 8.77"],
      ],
      remarks: [...MIXED_REMARKS, "Only 3 new cases: a small number"],
    });
  });

  // 1 / (366 / 365.25) × 100 = 99.795; R: poisson.test(1)$conf.int / (366 / 365.25) * 100 is 2.5266 556.0226.
  test("one new case, and the fewest cow-days that can be: one cow on all 366 days", () => {
    expect(told(lesionRate, ...ulcers(1), "SU", ...YEAR, 366)).toEqual({
      steps: [
        ["Lesion", "Sole ulcer", "SU"],
        RULE,
        ["New cases", `${IN_2024}, 1 cow, 0 repeats left aside`, "1"],
        ["Cow-years", "366 / 365.25", "1"],
        ["Per 100 cow-years", "1 / (366 / 365.25) × 100", "99.8"],
        ["95 % limits", "exact Poisson", "2.53 to 556.02"],
      ],
      remarks: [GAP, "Only 1 new case: a small number"],
    });
    expect(refusal(lesionRate, ...ulcers(1), "SU", ...YEAR, 365)).toEqual({
      kind: "invalid",
      message:
        "cowDays must be at least 366 (one cow on every day of the period); got 365: cow-days are cows times days, from HERD.COW.DAYS",
    });
  });

  test("nine new cases are few, ten are not", () => {
    expect(told(lesionRate, ...ulcers(9), "SU", ...YEAR, COW_DAYS).remarks).toEqual([
      GAP,
      "Only 9 new cases: a small number",
    ]);
    expect(told(lesionRate, ...ulcers(10), "SU", ...YEAR, COW_DAYS).remarks).toEqual([GAP]);
  });
});

describe("the working of LESION.TABLE", () => {
  // R: poisson.test(1) 0.02531781 5.571643, poisson.test(3) as above, both over 100 cow-years and per 100.
  test("a line a lesion, all lesions last", () => {
    const rows: readonly Row[] = [...mixed, [7, "LH", "foot thing", JAN_10]];
    const one = ["1 / (36525 / 365.25) × 100", "1 (0.03 to 5.57)"];
    expect(told(lesionTable, ...columns(rows), ...YEAR, COW_DAYS)).toEqual({
      steps: [
        RULE,
        ["Lesions counted", "9 rows − 1 sound − 4 not counted", "4"],
        ["New cases", `${IN_2024}, 1 repeat left aside`, "3"],
        ["Ulcer", ...one],
        ["White line disease", ...one],
        ["Digital dermatitis", ...one],
        ["All lesions", "3 / (36525 / 365.25) × 100", "3 (0.62 to 8.77)"],
      ],
      remarks: [...LEFT_OUT, "1 row left out: no known lesion", ONE_FOOT, GAP],
    });
    expect(table(lesionTable, ...columns(rows), ...YEAR, COW_DAYS).at(-1)).toEqual([
      "",
      "Left out: lesion not known",
      ...["", "", "", "", "", "", "", ""],
      "1 row",
    ]);
  });

  test("nine new cases are called few, ten are not", () => {
    const notes = (cows: number): unknown[] =>
      table(lesionTable, ...ulcers(cows), ...YEAR, COW_DAYS).map((row) => row.at(-1));
    expect(notes(9).slice(1)).toEqual(["few cases", "few cases; gap 28 d"]);
    expect(notes(10).slice(1)).toEqual(["", "gap 28 d"]);
  });
});

describe("the working of COW.REPEATS", () => {
  test("cows with a case or more", () => {
    expect(told(cowRepeats, ...columns(mixed), ...YEAR, 1)).toEqual({
      steps: [RULE, MIXED_LESIONS, ["Cows listed", `1 new case or more, ${IN_2024}`, "3"]],
      remarks: MIXED_REMARKS,
    });
  });

  test("three cases unless another number is given; rows that are not counted", () => {
    const yes = mixed.map((_, row) => [row < 3 ? "yes" : "no"]);
    // Of the first three rows none is sound, and the five others do not count.
    expect(told(cowRepeats, ...columns(mixed), ...YEAR, null, null, yes)).toEqual({
      steps: [
        RULE,
        ["Lesions counted", "8 rows − 0 sound − 5 not counted", "3"],
        ["Cows listed", `3 new cases or more, ${IN_2024}`, "0"],
      ],
      remarks: [GAP],
    });
  });
});

const blank = columns([[1, "LH", null, JAN_10]]);
const noFindings = 'lesions holds no findings: enter a code a row, or "none" for a sound cow';
const refused: readonly (readonly [FunctionSpec, readonly unknown[]])[] = [
  [lesionNewcase, []],
  [lesionMonths, [...YEAR]],
  [lesionRate, ["all", ...YEAR, COW_DAYS]],
  [lesionTable, [...YEAR, COW_DAYS]],
  [cowRepeats, [...YEAR]],
];
test.each(refused.map((one) => [one[0].id, one] as const))("%s without a finding", (_, [spec, more]) => {
  expect(refusal(spec, ...blank, ...more)).toEqual({ kind: "unavailable", message: noFindings });
});
