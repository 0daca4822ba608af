import { DomainError } from "../../../src/core/shared/domain-error";
import type { FunctionSpec } from "../../../src/functions/define";
import { evaluate, explain } from "../../../src/functions/evaluate";
import { lameCases } from "../../../src/functions/claws/lame-cases";
import { lameSample } from "../../../src/functions/claws/lame-sample";
import { lameShare } from "../../../src/functions/claws/lame-share";
import { lameState } from "../../../src/functions/claws/lame-state";
import { lameSummary } from "../../../src/functions/claws/lame-summary";
import { lameWait } from "../../../src/functions/claws/lame-wait";
import { lameWithin } from "../../../src/functions/claws/lame-within";

const column = (...values: unknown[]) => values.map((value) => [value]);
const value = (spec: FunctionSpec, ...raw: unknown[]) => evaluate(spec, raw).value;

function message(spec: FunctionSpec, ...raw: unknown[]): string {
  try {
    evaluate(spec, raw);
  } catch (error) {
    if (error instanceof DomainError) return `${error.kind}: ${error.message}`;
    throw error;
  }
  return "none";
}

describe("scale and cut-off", () => {
  test("there is no default scale", () => {
    expect(message(lameState, 2, null)).toMatch(/^unavailable: scale is blank/);
    expect(message(lameShare, column(1, 2), null)).toMatch(/^unavailable: scale is blank/);
  });

  test("the same score means another thing on the other scale", () => {
    expect([value(lameState, 2, "0-3"), value(lameState, 2, "1-5")]).toEqual(["lame", "sound"]);
    expect([value(lameState, 3, "0-3"), value(lameState, 3, "1-5")]).toEqual(["severe", "lame"]);
  });

  test("a scale that a cell turned into a date is refused with the remedy", () => {
    expect(message(lameState, 2, 46_027)).toMatch(/scale must be "0-3" or "1-5" .*as text.* got 46027/);
  });

  test.each([
    [4, "0-3", /score must be 0, 1, 2 or 3 on the scale 0-3; got 4/],
    [1.5, "0-3", /score must be 0, 1, 2 or 3 .* got 1.5/],
    [2.3, "1-5", /score must be 1 to 5, halves allowed, .* got 2.3/],
    [0.5, "1-5", /score must be 1 to 5/],
    [0, "1-5", /^unavailable: score is blank/],
    ["2b", "0-3", /score must be .*"2b"/],
  ])("score %p on the scale %s is refused", (score, scale, pattern) => {
    expect(message(lameState, score, scale)).toMatch(pattern);
  });

  test.each([
    [2.5, "sound"],
    [3.5, "lame"],
    [4, "severe"],
  ])("half score %d on the scale 1-5 is %s", (score, state) => {
    expect(value(lameState, score, "1-5")).toBe(state);
  });

  test("a cut-off above the first severe step moves it along", () => {
    expect([value(lameState, 4, "1-5", 5), value(lameState, 5, "1-5", 5)]).toEqual(["sound", "severe"]);
  });

  test.each([
    [1, "1-5"],
    [4, "0-3"],
    [1.5, "0-3"],
  ])("a cut-off of %d does not fit the scale %s", (cutoff, scale) => {
    expect(message(lameState, 2, scale, cutoff)).toMatch(/cutoff must be a score above/);
  });
});

describe("a scoring", () => {
  test("a score with a letter is refused with its row, a word is left out and counted", () => {
    expect(message(lameShare, column(1, "2b", 3), "0-3")).toMatch(/scores row 2 .*"2b"/);
    expect(value(lameSummary, column(1, "dry", null, 3), "0-3")).toEqual([expect.anything(), [2, 1, 1, 0.5, expect.any(Number), expect.any(Number), 1, 0.5]]); // oxfmt-ignore
  });

  test("a score off the scale is refused with its row", () => {
    expect(message(lameShare, column(1, 2, 5), "0-3")).toMatch(/scores row 3 must be 0, 1, 2 or 3/);
  });

  test("a 0 is a sound cow on the scale 0-3 and no score on the scale 1-5", () => {
    expect(value(lameShare, column(0, 0, 2, 1), "0-3")).toBe(0.25);
    expect(value(lameShare, column(0, 0, 3, 1), "1-5")).toBe(0.5);
  });

  test("no score at all is no share", () => {
    expect(message(lameShare, column("dry", null), "0-3")).toMatch(/^unavailable/);
  });
});

describe("HERD.LAME.CASES", () => {
  const states = (scale: string, ...rows: [cow: unknown, date: unknown, score: unknown][]) =>
    (value(lameCases, column(...rows.map(([cow]) => cow)), column(...rows.map(([, date]) => date)), column(...rows.map(([, , score]) => score)), scale) as string[][]).map(([state]) => state); // oxfmt-ignore

  test("keeps cows apart and follows the dates, not the rows", () => {
    const rows: [unknown, unknown, unknown][] = [
      [1, 45_321, 3],
      [2, 45_300, 3],
      [1, 45_300, 1],
      [1, 45_314, 3],
      [1, 45_307, 1],
      [2, 45_307, 1],
    ];
    expect(states("1-5", ...rows)).toEqual(["new", "unconfirmed", "unconfirmed", "sound", "sound", "unconfirmed"]);
  });

  // Cow 1: unconfirmed, sound, sound, new; cow 2: unconfirmed, lame, recovered from the second sound score on.
  test("the working counts the states", () => {
    const rows = [[1, 0, 1], [1, 7, 1], [1, 14, 1], [1, 21, 4], [2, 0, 3], [2, 7, 3], [2, 14, 1], [2, 21, 1]] as const; // oxfmt-ignore
    const part = (place: 0 | 1 | 2, from = 0) => column(...rows.map((row) => from + row[place]));
    const { steps } = explain(lameCases, [part(0), part(1, 45_300), part(2), "1-5"]);
    expect(steps.slice(-3).map(({ label, value: count }) => [label, count])).toEqual([
      ["New cases", "1"],
      ["Recovered", "1"],
      ["Unconfirmed", "2"],
    ]);
  });

  test("on the scale 0-3 two scores of 2, or one of 3", () => {
    expect(states("0-3", [1, 1e5, 0], [1, 100_007, 1], [1, 100_014, 2], [1, 100_021, 2])).toEqual(["unconfirmed", "sound", "sound", "new"]); // oxfmt-ignore
    expect(states("0-3", [1, 1e5, 0], [1, 100_007, 1], [1, 100_014, 3])).toEqual(["unconfirmed", "sound", "new"]);
  });

  test("rows without cow, date or score have no state and do not come between two scores", () => {
    const rows: [unknown, unknown, unknown][] = [
      [1, 45_300, 3],
      [1, 45_307, "dry"],
      [null, 45_308, 1],
      [1, null, 1],
      [1, 45_314, 3],
    ];
    expect(states("1-5", ...rows)).toEqual(["unconfirmed", "", "", "", "lame"]);
  });

  test("two scores of one cow and day are refused with both rows", () => {
    const raw = [column(1, 2, 1), column(45_300, 45_300, 45_300), column(3, 3, 3), "1-5"];
    expect(message(lameCases, ...raw)).toMatch(
      /dates row 3 must be another day than row 1 of the same cow; got 2024-01-09 twice/,
    );
  });
});

describe("time to treatment", () => {
  test("treated before seen lame is refused", () => {
    expect(message(lameWait, 45_300, 45_299)).toMatch(/treatedOn must be 2024-01-09 \(seenLameOn\) or later/);
    expect(message(lameWithin, column(45_300), column(45_299), 48)).toMatch(/treatedOn row 1 .* got 2024-01-08/);
  });

  test("a time of day is cut off", () => {
    expect(value(lameWait, 45_300.9, 45_301.1)).toBe(1);
  });

  test("untreated cows count against; a word for the day is refused", () => {
    expect(value(lameWithin, column(45_300, 45_300), column(45_302, null), 48)).toBe(0.5);
    expect(message(lameWithin, column(45_300, 45_300), column(45_302, "sold"), 48)).toMatch(/treatedOn row 2/);
  });

  test("treated on the day she was seen lame is no wait at all", () => {
    expect(value(lameWait, 45_300, 45_300)).toBe(0);
  });

  test("a treatment without the day she was seen lame is left out, and said", () => {
    const { value: share, remarks } = evaluate(lameWithin, [column(45_300, null), column(45_301, 45_302), 48]);
    expect([share, remarks]).toEqual([1, [expect.stringMatching(/^1 row left out: .*no day on which she was seen lame/)]]); // oxfmt-ignore
  });

  test("exactly the hours is in time", () => {
    expect([47, 48].map((hours) => value(lameWithin, column(45_300), column(45_302), hours))).toEqual([0, 1]);
  });
});

describe("HERD.LAME.SAMPLE", () => {
  test("percent instead of a fraction is refused", () => {
    expect(message(lameSample, 100, 30, 0.05)).toMatch(/expectedShare must be .*0\.3 stands for 30 %.* got 30/);
  });

  test("never more than the herd, never fewer than one", () => {
    expect(value(lameSample, 10, 0.5, 0.01)).toBe(10);
    expect(value(lameSample, 1, 0.01, 0.5)).toBe(1);
  });
});
