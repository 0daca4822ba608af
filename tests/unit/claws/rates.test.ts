import { againstTarget } from "../../../src/core/claws/lesion-rate";
import { DomainError } from "../../../src/core/shared/domain-error";
import type { FunctionSpec } from "../../../src/functions/define";
import { evaluate, explain } from "../../../src/functions/evaluate";
import { cowDays } from "../../../src/functions/claws/cow-days";
import { lesionRate } from "../../../src/functions/claws/lesion-rate";
import { lesionShare } from "../../../src/functions/claws/lesion-share";
import { lesionTable } from "../../../src/functions/claws/lesion-table";
import { rateHigh } from "../../../src/functions/claws/rate-high";
import { shareLow } from "../../../src/functions/claws/share-low";

const column = (...values: unknown[]) => values.map((value) => [value]);

function message(spec: FunctionSpec, raw: readonly unknown[]): string {
  try {
    evaluate(spec, raw);
  } catch (error) {
    if (error instanceof DomainError) return `${error.kind}: ${error.message}`;
    throw error;
  }
  return "none";
}

describe("HERD.COW.DAYS", () => {
  test("counts first and last day, and a whole leap year", () => {
    expect(evaluate(cowDays, [column(45_292), column(null), 45_292, 45_657]).value).toBe(366);
    expect(evaluate(cowDays, [column(45_300), column(45_300), 45_292, 45_657]).value).toBe(1);
  });

  test("a cow that came later or left before adds nothing", () => {
    expect(evaluate(cowDays, [column(46_000, 40_000), column(null, 45_291), 45_292, 45_657]).value).toBe(0);
  });

  test("leaving before coming is refused with its row", () => {
    const raw = [column(45_300, 45_300), column(45_400, 45_299), 45_292, 45_657];
    expect(message(cowDays, raw)).toBe("invalid: leftOn row 2 must be 2024-01-09 (enteredOn) or later; got 2024-01-08");
  });

  test("a note instead of the day of leaving is refused: the cow would count as still there", () => {
    expect(message(cowDays, [column(45_300, 45_300), column(45_400, "sold"), 45_292, 45_657])).toMatch(/leftOn row 2/);
  });

  test("a cow that left without having come is refused; rows without any day are counted", () => {
    expect(message(cowDays, [column(null), column(45_300), 45_292, 45_657])).toMatch(/enteredOn row 1/);
    const { value, remarks } = evaluate(cowDays, [column(45_292, null, 45_292, null), column(null, null, null, null), 45_292, 45_292]); // oxfmt-ignore
    expect([value, remarks]).toEqual([2, ["1 row left out: no day of entry"]]);
  });

  test("a period that ends before it begins is refused", () => {
    expect(message(cowDays, [column(45_300), column(null), 45_300, 45_299])).toMatch(/^invalid: to must be 2024-01-09/);
  });
});

describe("HERD.LESION.RATE", () => {
  const call = (lesions: unknown[], lesion: unknown, cowDays: unknown) => [
    column(...lesions.map((_, row) => row + 1)),
    column(...lesions.map(() => "LH")),
    column(...lesions),
    column(...lesions.map(() => 45_300)),
    lesion,
    45_292,
    45_657,
    cowDays,
  ];

  test("takes a parent with its forms, a group, or all", () => {
    const lesions = ["WL", "WLF", "WLA", "DD", "AC", "none"];
    const rates = ["WL", "WLF", "horn", "infectious", "shape", "other", "all"].map(
      (lesion) => evaluate(lesionRate, call(lesions, lesion, 36_525)).value,
    );
    expect(rates).toEqual([3, 1, 3, 1, 1, 0, 5]);
  });

  test("an unknown lesion in the rows is refused with its row and the nearest code", () => {
    expect(message(lesionRate, call(["SU", "AF"], "SU", 36_525))).toMatch(/^invalid: lesions row 2 .*"AF".* AC/);
  });

  test("an unknown lesion asked for is told one near code or several, or none where none is near", () => {
    expect(message(lesionRate, call(["SU"], "WFL", 36_525))).toMatch(/got "WFL": nearest known codes are WL, WLF$/);
    expect(message(lesionRate, call(["SU"], "digital dermatitsi", 36_525))).toMatch(/: nearest known code is DD$/);
    expect(message(lesionRate, call(["SU"], "xyzzy", 36_525))).toMatch(/got "xyzzy"$/);
  });

  test("an unknown lesion asked for gives #N/A with the nearest code", () => {
    expect(message(lesionRate, call(["SU"], "WLD", 36_525))).toMatch(/^unavailable: lesion .*WL/);
  });

  test("a number of cows instead of cow-days is refused", () => {
    expect(message(lesionRate, call(["SU"], "SU", 140))).toMatch(/cowDays must be at least 366 .* got 140/);
  });

  test("the gap looks back before the period, and a case before the period is not counted", () => {
    const raw = [
      column(1, 1),
      column("LH", "LH"),
      column("DD", "DD"),
      column(45_280, 45_295),
      "DD",
      45_292,
      45_657,
      36_525,
    ];
    expect(evaluate(lesionRate, raw).value).toBe(0);
    expect(evaluate(lesionRate, [...raw, 14]).value).toBe(1);
  });

  test("counts the first and the last day of the period, and neither the day before nor the day after", () => {
    const days = [45_291, 45_292, 45_657, 45_658];
    const raw = [column(1, 2, 3, 4), column(...days.map(() => "LH")), column(...days.map(() => "DD")), column(...days)];
    expect(evaluate(lesionRate, [...raw, "DD", 45_292, 45_657, 36_525]).value).toBe(2);
  });

  test("no lesion but sound cows is a rate of 0; nothing at all is none", () => {
    expect(evaluate(lesionRate, call(["none", "none"], "all", 36_525)).value).toBe(0);
    expect(message(lesionRate, call([null, null], "all", 36_525))).toMatch(/^unavailable/);
  });

  // The limit stands in the function's help: below 10 a count is small.
  test("nine new cases are a small number, ten are not", () => {
    const remarks = (cases: number) =>
      evaluate(lesionRate, call(Array.from({ length: cases }, () => "SU"), "SU", 36_525)).remarks.join("; "); // oxfmt-ignore
    expect(remarks(1)).toMatch(/Only 1 new case: a small number/);
    expect(remarks(9)).toMatch(/Only 9 new cases: a small number/);
    expect(remarks(10)).not.toMatch(/small/);
  });

  test("rows that are left out and rows without a foot are said with their number", () => {
    const raw = [
      column(1, 2, null, 4, 5),
      column("LH", null, "LH", "LH", "LH"),
      column("SU", "SU", "SU", "SU", null),
      column(45_300, 45_300, 45_300, null, 45_300),
    ];
    const { remarks } = evaluate(lesionRate, [...raw, "SU", 45_292, 45_657, 36_525]);
    for (const said of [
      "1 row left out: no lesion",
      "1 row left out: no cow",
      "1 row left out: no date",
      "1 row without a foot",
    ])
      expect(remarks.join("; ")).toContain(said);
    const whole = [column(1), column("LH"), column("SU"), column(45_300), "SU", 45_292, 45_657, 36_525];
    expect(evaluate(lesionRate, whole).remarks.join("; ")).not.toMatch(/left out|without a foot/);
  });

  test("one cow on every day is enough cow-days", () => {
    expect(evaluate(lesionRate, call(["SU"], "SU", 366)).value).toBeCloseTo(100 * (365.25 / 366), 10);
  });

  test("states the gap and that the count is small, also in the working", () => {
    const { remarks, steps } = explain(lesionRate, call(["SU"], "SU", 36_525));
    expect(remarks.join("; ")).toMatch(/28 days.*a small number/);
    expect(steps.map(({ working }) => working).join("; ")).toMatch(/28 days/);
  });
});

describe("HERD.LESION.TABLE", () => {
  const rows = 40;
  const many = (lesion: string) => Array.from({ length: rows }, () => lesion);
  const call = (targets: unknown, lesions: unknown[] = many("SU")) => [
    column(...lesions.map((_, row) => row + 1)),
    column(...lesions.map(() => "LH")),
    column(...lesions),
    column(...lesions.map(() => 45_300)),
    45_292,
    45_657,
    36_525,
    targets,
  ];
  const table = (...raw: Parameters<typeof call>) => evaluate(lesionTable, call(...raw)).value as (string | number)[][];

  /** Exact limits of 40 cases: 28.6 to 54.5 (R 4.2.2, poisson.test). */
  test.each([
    [28, "above"],
    [29, "within chance"],
    [54, "within chance"],
    [55, "below"],
  ])("40 per 100 cow-years against a target of %d is %s", (target, against) => {
    const [, ulcer] = table([["Lesion", "Target per 100 cow-years"], ["U", target]]); // oxfmt-ignore
    expect(ulcer!.slice(0, 10)).toEqual(["U", "Ulcer", 40, 0, 40, 40, expect.closeTo(28.577, 3), expect.closeTo(54.469, 3), target, against]); // oxfmt-ignore
  });

  test("a form, a group and all have a row of their own where they have a target; blank targets are none", () => {
    const names = table([["Lesion", "Target"], ["all", 50], ["horn", 40], ["SU", 5], ["DD", null]]).map(([code]) => code); // oxfmt-ignore
    expect(names).toEqual(["Code", "U", "SU", "horn", "all"]);
  });

  test("a lesion with two targets is refused", () => {
    expect(message(lesionTable, call([["Lesion", "Target"], ["SU", 5], ["Sole ulcer", 6]]))).toMatch(/SU twice/); // oxfmt-ignore
  });

  test("an unknown target lesion is refused with its row", () => {
    expect(message(lesionTable, call([["Lesion", "Target"], ["SUX", 5]]))).toMatch(/targets row 2 "Lesion".* SU/); // oxfmt-ignore
  });

  test("unknown lesions are counted in a last row", () => {
    const lines = table(null, [...many("DD"), "sore foot", "?"]);
    expect(lines.at(-1)).toEqual(["", "Left out: lesion not known", "", "", "", "", "", "", "", "", "2 rows"]);
    expect(lines.at(-2)!.slice(0, 3)).toEqual(["all", "All lesions", 40]);
  });
});

describe("HERD.LESION.SHARE", () => {
  // The limit is FEW_COWS_EXAMINED, one cow in twenty being five points.
  test("nineteen cows examined are a small number, twenty are not", () => {
    const remarks = (cows: number) =>
      evaluate(lesionShare, [column(...Array.from({ length: cows }, (_, row) => row + 1)), column("DD", ...Array.from({ length: cows - 1 }, () => "none")), "DD"]).remarks; // oxfmt-ignore
    expect(remarks(19)).toEqual(["Only 19 cows examined: a small number"]);
    expect(remarks(20)).toEqual([]);
  });

  test("a target at the very limit of a rate is within chance", () => {
    const interval = { low: 10, high: 20 };
    expect([9.9, 10, 20, 20.1].map((target) => againstTarget(interval, target))).toEqual(["above", "within chance", "within chance", "below"]); // oxfmt-ignore
  });

  test("needs sound cows in the rows", () => {
    expect(message(lesionShare, [column(1, 2), column("DD", "SU"), "DD"])).toMatch(
      /^unavailable: .*record sound cows too/,
    );
  });

  test("counts a cow once, also where she stands sound in another row", () => {
    const raw = [column(1, 1, 1, 2), column("DD", "DD", "none", "none"), "DD"];
    expect(evaluate(lesionShare, raw).value).toBe(0.5);
  });

  test("rows without cow or lesion are left out and counted", () => {
    const raw = [column(1, 2, null, 3), column("DD", "none", "DD", null), "DD"];
    const { value, remarks } = evaluate(lesionShare, raw);
    expect(value).toBe(0.5);
    expect(remarks.join("; ")).toMatch(/^2 rows left out/);
  });
});

describe("limits", () => {
  test("more cases than animals are refused", () => {
    expect(message(shareLow, [46, 45])).toBe("invalid: cases must be at most 45 (of); got 46");
  });

  test("a level of 95 is refused with the fraction to give", () => {
    expect(message(shareLow, [1, 45, 95])).toMatch(/level must be .*0\.95 stands for 95 %.* got 95/);
  });

  test("no time at risk is no rate", () => {
    expect(message(rateHigh, [1, 0])).toMatch(/^unavailable: atRisk is blank/);
    expect(message(rateHigh, [1, -1])).toMatch(/^invalid: atRisk/);
  });
});
