import { causePatterns } from "../../../src/core/claws/cause-patterns";
import { reviewCauses } from "../../../src/core/claws/cause-review";
import { SOUND, UNKNOWN } from "../../../src/core/claws/findings";
import { day } from "../../../src/core/shared/days";
import { DomainError } from "../../../src/core/shared/domain-error";
import type { FunctionSpec } from "../../../src/functions/define";
import { evaluate } from "../../../src/functions/evaluate";
import { causeReview } from "../../../src/functions/claws/cause-review";
import { cowRepeats } from "../../../src/functions/claws/cow-repeats";
import { lesionBygroup } from "../../../src/functions/claws/lesion-bygroup";
import { lesionMonths } from "../../../src/functions/claws/lesion-months";

const column = (...values: unknown[]) => values.map((value) => [value]);
const times = (count: number, value: unknown) => Array.from({ length: count }, () => value);
const table = (spec: FunctionSpec, ...raw: unknown[]) => (evaluate(spec, raw).value as (string | number)[][]).slice(1);

function message(spec: FunctionSpec, ...raw: unknown[]): string {
  try {
    evaluate(spec, raw);
  } catch (error) {
    if (error instanceof DomainError) return `${error.kind}: ${error.message}`;
    throw error;
  }
  return "none";
}

describe("HERD.LESION.MONTHS", () => {
  const one = [column(1), column("LH"), column("DD"), column(day("2024-02-29"))];

  test("has every month of the period over the turn of a year, cut months said", () => {
    const raw = [...one, day("2023-12-15"), day("2024-03-01")];
    expect(table(lesionMonths, ...raw).map(([month]) => month)).toEqual(
      ["2023-12-01", "2024-01-01", "2024-02-01", "2024-03-01"].map(day),
    );
    expect(evaluate(lesionMonths, raw).remarks.join()).toMatch(/counted in part/);
  });

  test("a month cut at one end of the period alone is said too", () => {
    for (const [from, to] of [
      ["2024-02-02", "2024-02-29"],
      ["2024-02-01", "2024-02-28"],
    ] as const)
      // oxfmt-ignore
      expect(evaluate(lesionMonths, [...one, day(from), day(to)]).remarks.join()).toMatch(/counted in part/);
  });

  test("whole months are not called cut", () => {
    expect(evaluate(lesionMonths, [...one, day("2024-02-01"), day("2024-02-29")]).remarks.join()).not.toMatch(/part/);
  });

  test("a case outside the period is not counted, and sums are over groups", () => {
    const [cows, feet, lesions, dates] = [column(1, 2, 3), column("LH", "LH", "LH"), column("DD", "SU", "AC"), column(day("2024-01-31"), day("2024-02-01"), day("2024-02-02"))]; // oxfmt-ignore
    expect(table(lesionMonths, cows, feet, lesions, dates, day("2024-02-01"), day("2024-02-29"))).toEqual([[day("2024-02-01"), 1, 0, 1, 0, 2]]); // oxfmt-ignore
  });

  test("the first and the last day of the period are in it, the days around it are not", () => {
    const days = ["2024-01-31", "2024-02-01", "2024-02-20", "2024-02-21"].map(day);
    const raw = [column(1, 2, 3, 4), column(...times(4, "LH")), column(...times(4, "DD")), column(...days)];
    expect(table(lesionMonths, ...raw, day("2024-02-01"), day("2024-02-20"))).toEqual([[day("2024-02-01"), 0, 2, 0, 0, 2]]); // oxfmt-ignore
  });

  test("a period of centuries is refused", () => {
    expect(message(lesionMonths, ...one, day("1900-03-01"), day("2024-02-01"))).toMatch(/at most 50 years/);
  });
});

describe("HERD.LESION.BYGROUP", () => {
  test("a 0 or a blank lactation is no heifer: it has a row of its own", () => {
    const raw = [column(1, 2, 3), column("DD", "none", "DD"), column(0, 1, null), "DD"];
    const rows = table(lesionBygroup, ...raw);
    expect(rows.map(([group, examined]) => [group, examined])).toEqual([
      ["heifers", 0],
      ["first lactation", 1],
      ["second and later", 0],
      ["lactation not given", 2],
    ]);
  });

  test("rows without cow or lesion are left out and counted over all groups", () => {
    const raw = [column(1, null, 3, null, 5), column("DD", "DD", null, null, "none"), column(1, 1, 2, 2, 3), "DD"];
    expect(evaluate(lesionBygroup, raw).remarks.join("; ")).toMatch(/(^|\D)2 rows left out/);
  });

  test("needs sound cows", () => {
    expect(message(lesionBygroup, column(1), column("DD"), column(1), "DD")).toMatch(/record sound cows too/);
  });
});

describe("HERD.COW.REPEATS", () => {
  const raw = (gapDays: number | null, cases: number | null) => [
    column("A", "a", "A", "B", "B", "C"),
    column("LH", "LH", "RH", null, null, "LF"),
    column("DD", "DD", "SU", "IP", "SH", "none"),
    column(45_300, 45_320, 45_321, 45_300, 45_302, 45_300),
    45_292,
    45_657,
    cases,
    gapDays,
  ];

  test("counts new cases by the gap given; capitals make no other cow", () => {
    expect(table(cowRepeats, ...raw(14, 3))).toEqual([["A", 3, 0, 45_321, "LH", "U, DD"]]);
    expect(table(cowRepeats, ...raw(null, 3))).toEqual([]);
  });

  test("the first and the last day of the period are in it, the days around it are not", () => {
    const days = [45_291, 45_292, 45_657, 45_658];
    const cows = column(1, 2, 3, 4);
    const lesions = column("DD", "DD", "DD", "DD");
    const rows = table(cowRepeats, cows, column(...times(4, "LH")), lesions, column(...days), 45_292, 45_657, 1);
    expect(rows).toEqual([
      ["3", 1, 0, 45_657, "LH", "DD"],
      ["2", 1, 0, 45_292, "LH", "DD"],
    ]);
  });

  test("most cases first, then the latest; of feet with as many cases the one affected last", () => {
    expect(table(cowRepeats, ...raw(null, 2))).toEqual([
      ["A", 2, 1, 45_321, "RH", "U, DD"],
      ["B", 2, 0, 45_302, "", "SH, IP"],
    ]);
  });
});

describe("HERD.CAUSE.REVIEW", () => {
  const review = (lesions: unknown[], zones: unknown[], lactations: unknown[], daysInMilk: unknown[]) =>
    table(causeReview, column(...lesions), column(...zones), column(...lactations), column(...daysInMilk));
  const blank = (rows: unknown[]) => rows.map(() => null);

  test("ranks by cases and marks few", () => {
    const lesions = [...times(12, "WLA"), ...times(3, "DD"), "none"];
    const rows = review(lesions, blank(lesions), blank(lesions), blank(lesions));
    expect(rows.map(([area, , , cases, share, note]) => [area, cases, share, note])).toEqual([
      ["Handling and turning", 12, 0.8, ""],
      ["Hygiene and footbath", 3, 0.2, "few cases"],
    ]);
  });

  test("the place with most cases comes first, and those with as many as the list of places has them", () => {
    const lesions = [...times(2, "SU"), ...times(5, "DD"), ...times(3, "TS")];
    const rows = review(lesions, blank(lesions), times(10, 3), blank(lesions));
    expect(rows.map(([area, , , cases]) => [area, cases])).toEqual([
      ["Hygiene and footbath", 5],
      ["Trimming itself", 3],
      ["Wet and worn horn", 3],
      ["Lying comfort", 2],
      ["Standing on concrete", 2],
    ]);
  });

  // Of the sole lesions two are in zone 6, one each in 4 and 5: the lower comes first. Blanks are no zone and no lactation.
  test("the evidence has codes in the order of the key, and the two most frequent zones and lactations", () => {
    const lesions = ["BU", "DD", ...times(4, "DD"), "SU", "BU", "SU", "DD"];
    const zones = [6, 10, ...times(4, null), 5, 6, 4, null];
    const lactations = [3, 3, 1, 1, 1, 1, 1, 3, null, 3];
    const evidence = review(lesions, zones, lactations, blank(lesions)).map(([, , text]) => text);
    expect(evidence.slice(0, 2)).toEqual([
      "infectious lesions: DD 6; zone 10: 1; first lactation: 4; second and later: 2",
      "sole lesions: SU 2, BU 2; zone 6: 2; zone 4: 1; second and later: 2; first lactation: 1",
    ]);
  });

  test("texts that name no lesion are no findings", () => {
    const lesions = [...times(9, "SU"), "none", null];
    expect(review(lesions, blank(lesions), blank(lesions), blank(lesions))[0]![0]).toMatch(/^Too few findings \(9\)/);
    const row = { lesions: ["SU", UNKNOWN, SOUND, null], zones: [NaN, NaN, NaN, NaN] };
    expect(reviewCauses({ ...row, lactations: row.zones, daysInMilk: row.zones }).findings).toBe(1);
  });

  test("only the horn of the sole and the white line points to transition, and never in a heifer", () => {
    const areas = (lesion: string, lactation: unknown) =>
      review(times(10, lesion), times(10, null), times(10, lactation), times(10, 60)).map(([area]) => area);
    for (const lesion of ["SU", "SH", "WL"]) expect(areas(lesion, 2)).toContain("Transition");
    for (const lesion of ["DD", "TN", "TS", "IH"]) expect(areas(lesion, 2)).not.toContain("Transition");
    expect(areas("SU", "heifer")).not.toContain("Transition");
  });

  test("horn lesions of heifers and first lactation point to rearing, others and those of older cows do not", () => {
    const areas = (lesion: string, lactation: unknown) =>
      review(times(10, lesion), times(10, null), times(10, lactation), times(10, 300)).map(([area]) => String(area));
    const rearing = expect.stringMatching(/^Heifers: rearing/);
    for (const lesion of ["SU", "WLA", "TN"]) {
      expect(areas(lesion, 1)).toContainEqual(rearing);
      expect(areas(lesion, "heifer")).toContainEqual(rearing);
      expect(areas(lesion, 2)).not.toContainEqual(rearing);
    }
    expect(areas("DD", 1)).not.toContainEqual(rearing);
  });

  test("a lesion that is no unnamed ulcer keeps its name in every zone", () => {
    const lesions = times(10, "SH");
    expect(review(lesions, times(10, 6), blank(lesions), blank(lesions))[0]![2]).toMatch(
      /^sole lesions: SH 10; zone 6/,
    );
  });

  test("an ulcer is named by its zone", () => {
    const lesions = times(10, "U");
    const areas = (zone: number) =>
      review(lesions, times(10, zone), blank(lesions), blank(lesions)).map(
        ([area, , evidence]) => `${area}: ${evidence}`,
      );
    expect(areas(1)[0]).toMatch(/^Trimming itself: .*TU 10; zone 1: 10/);
    expect(areas(4)[0]).toMatch(/^Lying comfort: .*SU 10; zone 4: 10/);
  });

  test("days in milk and lactation point to transition and to heifers only where they are given", () => {
    const lesions = times(10, "SH");
    const areas = (lactation: unknown, daysInMilk: unknown) =>
      review(lesions, blank(lesions), times(10, lactation), times(10, daysInMilk)).map(([area]) => area);
    const both = ["Lying comfort", "Standing on concrete"];
    expect(areas(null, null)).toEqual(both);
    expect(areas(3, 120)).toEqual([...both, "Transition"]);
    expect(areas(3, 121)).toEqual(both);
    expect(areas("heifer", null)).toEqual([...both, "Heifers: rearing, mixing, feed bunk competition"]);
  });

  test("below ten findings it only says so, and shapes have no pattern", () => {
    const nine = times(9, "SU");
    expect(review(nine, blank(nine), blank(nine), blank(nine))).toEqual([["Too few findings (9): 10 or more are needed", "", "", "", "", "", ""]]); // oxfmt-ignore
    const shapes = times(10, "AC");
    expect(review(shapes, blank(shapes), blank(shapes), blank(shapes))[0]![0]).toMatch(/no published pattern/);
  });

  test("every place names a source and something to look at", () => {
    for (const { sources, look } of causePatterns) {
      expect(sources.length).toBeGreaterThan(0);
      expect(look).not.toBe("");
    }
  });

  test("a zone off the map is refused with its row", () => {
    expect(message(causeReview, column("SU"), column(13), column(1), column(1))).toMatch(/zones row 1/);
  });
});
