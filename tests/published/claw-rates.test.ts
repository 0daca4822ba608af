/** Shares, rates and limits of published herds and trials, at the precision in which they are printed. */
import { casesPer100CowYears } from "../../src/core/claws/lesion-rate";
import { cowDays } from "../../src/functions/claws/cow-days";
import { lameCases } from "../../src/functions/claws/lame-cases";
import { lameSample } from "../../src/functions/claws/lame-sample";
import { lameShare } from "../../src/functions/claws/lame-share";
import { lesionRate } from "../../src/functions/claws/lesion-rate";
import { lesionShare } from "../../src/functions/claws/lesion-share";
import { rateHigh } from "../../src/functions/claws/rate-high";
import { rateLow } from "../../src/functions/claws/rate-low";
import { shareHigh } from "../../src/functions/claws/share-high";
import { shareLow } from "../../src/functions/claws/share-low";
import { evaluate } from "../../src/functions/evaluate";

const column = (values: readonly unknown[]) => values.map((value) => [value]);
const repeated = (value: unknown, times: number): unknown[] => Array.from({ length: times }, () => value);
const scores = (lame: number, scored: number) => column([...repeated(3, lame), ...repeated(1, scored - lame)]);
const rounded = (value: unknown, decimals: number) => Number((value as number).toFixed(decimals));

/** Sound at 35 days by treatment. Source: Thomas et al. 2015, J Dairy Sci 98:4477-4486. */
test.each([
  [11, 45, 24.4],
  [14, 39, 35.9],
  [12, 42, 28.6],
  [23, 41, 56.1],
])("Thomas et al. 2015: %d of %d cows cured are %d %%", (cured, treated, percent) => {
  const cows = column(Array.from({ length: treated }, (_, cow) => cow + 1));
  const lesions = column([...repeated("none", cured), ...repeated("SU", treated - cured)]);
  const uncured = evaluate(lesionShare, [cows, lesions, "all"]).value as number;
  expect(rounded(100 * (1 - uncured), 1)).toBe(percent);
});

/** Source: Griffiths et al. 2018: 61 herds, 4,145 lame of 14,700 cows, mean within-herd prevalence 31.6 %. */
describe("Griffiths et al. 2018", () => {
  test("4,145 of 14,700 cows are 28.2 % pooled", () => {
    expect(rounded(100 * (evaluate(lameShare, [scores(4145, 14_700), "1-5"]).value as number), 1)).toBe(28.2);
  });

  test("the pooled share of herds of unequal size is not the mean of their shares", () => {
    const small = evaluate(lameShare, [scores(30, 60), "1-5"]).value as number;
    const large = evaluate(lameShare, [scores(60, 300), "1-5"]).value as number;
    const pooled = evaluate(lameShare, [[...scores(30, 60), ...scores(60, 300)], "1-5"]).value;
    expect([small, large, pooled]).toEqual([0.5, 0.2, 0.25]);
  });
});

/**
 * Heifers lame in a trimming trial (172 of 419, 41.1 %), and lesions and lameness in a trial of larger modelling
 * (205 of 1,265, 16.2 %; 501 of 1,167, 43 %).
 */
test.each([
  [172, 419, 41.1, 1],
  [205, 1265, 16.2, 1],
  [501, 1167, 43, 0],
])("%d of %d cows are %d %%", (lame, scored, percent, decimals) => {
  expect(rounded(100 * (evaluate(lameShare, [scores(lame, scored), "1-5"]).value as number), decimals)).toBe(percent);
});

/** 12.8 % lame in first lactation and 8 points more each lactation. Source: Espejo et al. 2006, J Dairy Sci 89:3052. */
test.each([
  [1, 12.8],
  [2, 20.8],
  [3, 28.8],
  [4, 36.8],
])("Espejo et al. 2006: herd built by the rule, lactation %d has %d %% lame", (lactation, percent) => {
  const lame = 128 + 80 * (lactation - 1);
  expect(rounded(100 * (evaluate(lameShare, [scores(lame, 1000), "1-5"]).value as number), 1)).toBe(percent);
});

/** 41 lesions in 1,032 cow foot-months are 4 per 100 foot-months. Source: Krull et al. 2016, J Dairy Sci 99:3718. */
test("Krull et al. 2016: dermatitis lesions per 100 foot-months", () => {
  const footMonths = 1032;
  const daysAMonth = 365.25 / 12;
  expect(rounded(casesPer100CowYears(41, footMonths * daysAMonth) / 12, 0)).toBe(4);
});

/**
 * Clinical mastitis of 1,675 cows: 1,491, 134, 36 and 14 cows with 0, 1, 2 and 3 or more cases; incidence 0.11.
 * Source: R package pedigreemm, data set mastitis. Counts cows, however many cases each had.
 */
test("pedigreemm mastitis: 184 of 1,675 cows are 0.11, by cow and not by case", () => {
  const rows: [cow: number, lesion: string][] = [];
  let cow = 0;
  for (const [cows, cases] of [
    [1491, 0],
    [134, 1],
    [36, 2],
    [14, 3],
  ] as const)
    // oxfmt-ignore
    for (let one = 0; one < cows; one++) {
      cow++;
      for (let row = 0; row < Math.max(cases, 1); row++) rows.push([cow, cases === 0 ? "none" : "IP"]);
    }
  const share = evaluate(lesionShare, [column(rows.map(([name]) => name)), column(rows.map(([, code]) => code)), "IP"]);
  expect(rounded(share.value, 2)).toBe(0.11);
  expect(share.value).toBe(184 / 1675);
});

/** Wilson limits. Source: R 4.2.2 with epiR 2.0.57, epi.conf(method = "wilson"). */
test.each([
  [11, 45, 0.1424, 0.3867],
  [14, 39, 0.2274, 0.5158],
  [12, 42, 0.1717, 0.4357],
  [23, 41, 0.4104, 0.7011],
  [184, 1675, 0.0958, 0.1257],
  [0, 20, 0, 0.1611],
  [1, 30, 0.0059, 0.1667],
  [3, 30, 0.0346, 0.2562],
  [5, 50, 0.0435, 0.2136],
  [4145, 14_700, 0.2748, 0.2893],
])("Wilson limits of %d of %d", (cases, of, low, high) => {
  expect([evaluate(shareLow, [cases, of]), evaluate(shareHigh, [cases, of])].map(({ value }) => rounded(value, 4))).toEqual([low, high]); // oxfmt-ignore
});

/** Exact Poisson limits. Source: Garwood 1936 by R 4.2.2, poisson.test. */
test.each([
  [0, 0, 3.689],
  [1, 0.0253, 5.572],
  [3, 0.6187, 8.767],
  [6, 2.202, 13.059],
  [12, 6.201, 20.962],
])("Poisson limits of %d cases", (cases, low, high) => {
  const decimals = low > 1 ? 3 : 4;
  expect(rounded(evaluate(rateLow, [cases, 1]).value, decimals)).toBe(low);
  expect(rounded(evaluate(rateHigh, [cases, 1]).value, 3)).toBe(high);
});

/** 12 new sole ulcers in 85 cow-years: 14.118 per 100 cow-years, 1.1765 per 100 cow-months. By hand, limits by R. */
test("12 new sole ulcers in 85 cow-years", () => {
  const cows = column(Array.from({ length: 12 }, (_, cow) => cow + 1));
  const raw = [cows, column(repeated("LH", 12)), column(repeated("SU", 12)), column(repeated(45_300, 12))];
  const rate = evaluate(lesionRate, [...raw, "SU", 45_292, 45_657, 85 * 365.25]).value as number;
  expect([rounded(rate, 3), rounded(rate / 12, 4)]).toEqual([14.118, 1.1765]);
  expect(rounded(evaluate(rateLow, [12, 0.85]).value, 3)).toBe(7.295);
  expect(rounded(evaluate(rateHigh, [12, 0.85]).value, 3)).toBe(24.661);
});

/** Sample sizes at 95 %. Source: R 4.2.2 with epiR 2.0.57, epi.sssimpleestb. */
test.each([
  [100, 0.3, 0.05, 77],
  [200, 0.3, 0.05, 124],
  [500, 0.3, 0.05, 197],
  [1000, 0.3, 0.05, 245],
  [200, 0.25, 0.1, 54],
  [80, 0.5, 0.05, 67],
])("herd of %d, share %d, margin %d: score %d cows", (herd, share, margin, size) => {
  expect(evaluate(lameSample, [herd, share, margin]).value).toBe(size);
});

/** Whole years of one cow: 2023 has 365 days, 2024 has 366 (calendar). */
test.each([
  [44_927, 45_291, 365],
  [45_292, 45_657, 366],
])("a cow is at risk on every day from %d to %d", (from, to, days) => {
  expect(evaluate(cowDays, [[[40_000]], [[null]], from, to]).value).toBe(days);
});

/**
 * "Sound when 2 consecutive scores were <= 2 and lame when 2 consecutive scores = 3, or any assessment with score > 3;
 * when in a sequence of scores only one score = 3 (or <= 2), the cow was considered sound (or alternatively lame)."
 * Source: Daros et al. 2019, J Dairy Sci 102:11414-11427, abstract.
 */
describe("Daros et al. 2019", () => {
  const states = (...given: number[]) => {
    const raw = [column(given.map(() => 1)), column(given.map((_, week) => 45_300 + 7 * week)), column(given), "1-5"];
    return (evaluate(lameCases, raw).value as string[][]).map(([state]) => state);
  };

  test("two consecutive scores of 3 are a case", () => {
    expect(states(2, 2, 3, 3).at(-1)).toBe("new");
  });

  test("any score above 3 is a case", () => {
    expect(states(2, 2, 4).at(-1)).toBe("new");
    expect(states(2, 2, 5).at(-1)).toBe("new");
  });

  test("one score of 3 among sound ones leaves the cow sound", () => {
    expect(states(2, 2, 3, 2, 3, 1)).toEqual(["unconfirmed", "sound", "sound", "sound", "sound", "sound"]);
  });

  test("one score of 2 among lame ones leaves the cow lame", () => {
    expect(states(1, 1, 3, 3, 2, 3, 2, 3).slice(3)).toEqual(["new", "lame", "lame", "lame", "lame"]);
  });

  test("two consecutive scores of 2 or less are a cure", () => {
    expect(states(4, 2, 1, 1)).toEqual(["lame", "lame", "recovered", "sound"]);
  });
});
