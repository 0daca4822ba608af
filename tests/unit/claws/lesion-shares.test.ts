import { DomainError } from "../../../src/core/shared/domain-error";
import { evaluate, explain } from "../../../src/functions/evaluate";
import { lesionShare } from "../../../src/functions/claws/lesion-share";
import { lesionShares } from "../../../src/functions/claws/lesion-shares";

const [FROM, TO] = [45_292, 45_657];
const column = (...values: unknown[]) => values.map((value) => [value]);

function refusal(...raw: unknown[]): string {
  try {
    evaluate(lesionShares, raw);
  } catch (error) {
    if (error instanceof DomainError) return `${error.kind}: ${error.message}`;
    throw error;
  }
  return "none";
}

test.each(lesionShares.examples)("example: $where", ({ arguments: raw, result }) => {
  const got = evaluate(lesionShares, raw).value as (string | number)[][];
  const wanted = result as (string | number)[][];
  expect(got.map((row) => row.slice(0, 4))).toEqual(wanted.map((row) => row.slice(0, 4)));
  wanted.forEach((row, r) =>
    row.forEach((cell, c) => typeof cell === "number" && expect(got[r]![c]).toBeCloseTo(cell, 4)),
  );
  for (const { label, working, value } of explain(lesionShares, raw).steps)
    expect(`${label} ${working} ${value}`).not.toMatch(/undefined|NaN/);
});

test("forms count under their parent, a cow once however she is written, and the row of a parent is LESION.SHARE's", () => {
  const cows = column("a", "A", 7, "7", 8, 9);
  const lesions = column("SU", "BU", "WLA", "none", "none", "none");
  const dates = column(...Array.from({ length: 6 }, () => 45_300));
  const { value } = evaluate(lesionShares, [cows, lesions, dates, FROM, TO]);
  // Four cows: a with two ulcers, 7 with an abscess of the white line, and sound once.
  expect((value as unknown[][]).slice(1).map((row) => row.slice(0, 5))).toEqual([
    ["U", "Ulcer", 1, 4, 0.25],
    ["WL", "White line disease", 1, 4, 0.25],
    ["all", "All lesions", 2, 4, 0.5],
  ]);
  for (const [code, share] of [
    ["U", 0.25],
    ["WL", 0.25],
    ["all", 0.5],
  ] as const)
    // oxfmt-ignore
    expect(evaluate(lesionShare, [cows, lesions, code]).value).toBe(share);
});

test("rows without a day, a cow or a lesion are left out, and said", () => {
  const raw = [column(1, 2, null, 4, 5), column("DD", "none", "SU", null, "SU"), column(45_300, 45_300, 45_300, 45_300, null)]; // oxfmt-ignore
  const { value, remarks } = evaluate(lesionShares, [...raw, FROM, TO]);
  expect((value as unknown[][])[1]!.slice(0, 4)).toEqual(["DD", "Digital dermatitis", 1, 2]);
  expect(remarks).toEqual([
    '2 rows left out: no cow or no lesion ("none" is the word for a sound cow)',
    "1 row left out: no date",
    "Only 2 cows examined: a small number",
  ]);
});

test("both ends of the period belong to it", () => {
  const raw = [column(1, 2, 3, 4), column("DD", "DD", "none", "none"), column(FROM - 1, FROM, TO, TO + 1)];
  const { value } = evaluate(lesionShares, [...raw, FROM, TO]);
  expect((value as unknown[][])[1]!.slice(0, 4)).toEqual(["DD", "Digital dermatitis", 1, 2]);
});

test("what cannot be told is refused in words", () => {
  const one = [column(1), column("DD"), column(45_300)];
  expect(refusal(...one, FROM, TO)).toMatch(/^unavailable: lesions holds no sound cow/);
  expect(refusal(...one, FROM + 100, TO)).toBe(
    'unavailable: lesions holds no finding from 2024-04-10 to 2024-12-31: enter a code a row, or "none" for a sound cow',
  );
  expect(refusal(...one, TO, FROM)).toMatch(/^invalid: to must be 2024-12-31 \(from\) or later/);
  expect(refusal(column(1), column("foot thing"), column(45_300), FROM, TO)).toMatch(/^invalid: lesions row 1 /);
  expect(refusal(column(1, 2), column("DD"), column(45_300), FROM, TO)).toMatch(/^invalid: /);
});
