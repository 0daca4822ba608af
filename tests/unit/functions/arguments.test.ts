import { columnOf } from "../../../src/functions/columns";
import { defineFunction, type FunctionSpec, optional, required, type ResultValue } from "../../../src/functions/define";
import { evaluate } from "../../../src/functions/evaluate";
import { choice, date, number, type NumberOptions, text } from "../../../src/functions/scalars";
import { settingsTable } from "../../../src/functions/tables";
import { refusalOf } from "../refusal";

const shared = { group: "Test", summary: "", sources: [], limits: [], cautions: [], examples: [] };

/** A function of one argument that must be there and one that need not, giving what it was handed. */
function twoArguments(result: (first: number, second: number | undefined) => ResultValue): FunctionSpec {
  return defineFunction({
    ...shared,
    id: "TEST.TWO",
    result: { shape: "scalar", type: "number" },
    parameters: {
      first: required(number(), "One"),
      second: optional(number({ min: 1, reason: "a test", zeroIsBlank: true }), "Two", "none"),
    },
    compute: ({ first, second }) => result(first, second),
    steps: () => [],
  });
}

const echo = twoArguments((first, second) => second ?? -first);

describe("an argument that may be left out", () => {
  test.each([[null], [undefined], [""], [" \u00a0"], [0], [[[0]]], [[[null]]], [{ type: "String", basicValue: "" }], [{ type: "Double", basicValue: 0 }]])(
    "is left out as %j",
    (blank) => expect(evaluate(echo, [7, blank]).value).toBe(-7),
  ); // oxfmt-ignore

  test.each<[unknown, string]>([
    [[[null, null]], "1 row by 2 columns"],
    [[[null], [null]], "2 rows by 1 column"],
    [
      [
        [3, 4],
        [5, 6],
      ],
      "2 rows by 2 columns",
    ],
    [[], "0 rows by 1 column"],
    [[[]], "1 row by 0 columns"],
  ])("is no range %j", (range, shown) =>
    expect(refusalOf(() => evaluate(echo, [7, range]))).toEqual({
      kind: "invalid",
      message: `second must be one cell; got a range of ${shown}`,
    }),
  );

  test("is taken where it is there, alone or as a range of one cell", () => {
    expect([3, [[3]], { type: "Double", basicValue: 3 }].map((given) => evaluate(echo, [7, given]).value)).toEqual([3, 3, 3]); // oxfmt-ignore
  });
});

describe("a call as a whole", () => {
  test("one argument too many is refused wherever it stands", () => {
    for (const extra of [[1], [null, 1], [1, null], [undefined, 0]])
      expect(refusalOf(() => evaluate(echo, [7, 3, ...extra]))).toEqual({
        kind: "invalid",
        message: `HERD.TEST.TWO takes at most 2 arguments; got ${2 + extra.length}`,
      });
    expect(evaluate(echo, [7, 3, null, undefined]).value).toBe(3);
  });

  test("texts, answers and tables are results too; a number in them must be one", () => {
    for (const result of ["low", "", true, false, [["a", 1], ["b", ""]]] as ResultValue[]) // oxfmt-ignore
      expect(evaluate(twoArguments(() => result), [1]).value).toBe(result); // oxfmt-ignore
    for (const result of [
      Infinity,
      NaN,
      [
        ["a", 1],
        ["b", -Infinity],
      ],
    ] as ResultValue[])
      // oxfmt-ignore
      expect(refusalOf(() => evaluate(twoArguments(() => result), [1]))).toEqual({
        kind: "invalid",
        message:
          "the result is not a finite number: one of the arguments is far outside what can be computed",
      });
  });

  test("columns of unequal length are refused, the third as well", () => {
    const columns = defineFunction({
      ...shared,
      id: "TEST.THREE",
      result: { shape: "scalar", type: "number" },
      parameters: {
        one: optional(columnOf(number(), { notes: "leave out" }), "", ""),
        other: required(columnOf(text(), { notes: "refuse" }), ""),
        third: required(columnOf(number(), { notes: "leave out" }), ""),
      },
      compute: ({ other }) => other.length,
      steps: () => [],
    });
    expect(evaluate(columns, [null, [["a"], ["b"]], [[1], [2]]]).value).toBe(2);
    expect(refusalOf(() => evaluate(columns, [null, [["a"], ["b"]], [[1]]]))).toEqual({
      kind: "invalid",
      message: "third must have as many rows as other (2); got 1",
    });
  });
});

describe("a number", () => {
  const refused = (options: NumberOptions, given: unknown): string =>
    refusalOf(() => number(options).read(given, "x")).message;

  test.each<[NumberOptions, unknown, string]>([
    [{}, "two", 'x must be a number; got "two"'],
    [{}, "2", 'x must be a number; got the text "2": turn the cell into a number'],
    [{}, "2024-02-20", 'x must be a number; got "2024-02-20"'],
    [{}, false, "x must be a number; got FALSE"],
    [{ whole: true }, 1.5, "x must be a whole number; got 1.5"],
    [{ whole: true, unit: "days" }, 1.5, "x must be a whole number of days; got 1.5"],
    [{ min: 0, max: 1, exclusiveMin: true, unit: "m", reason: "so" }, 0, "x must be a number above 0 and up to 1 m (so); got 0"], // oxfmt-ignore
    [{ min: 0, max: 1, reason: "so" }, 1.1, "x must be a number from 0 to 1 (so); got 1.1"],
  ])("with %j and %j", (options, given, message) => expect(refused(options, given)).toBe(message));

  test("that is text is a fault of the cell, a blank something missing", () => {
    expect(refusalOf(() => number().read("2", "x")).kind).toBe("invalid");
    expect(refusalOf(() => number().read(" ", "x"))).toEqual({
      kind: "unavailable",
      message: "x is blank: enter a number",
    });
    expect(refusalOf(() => number({ zeroIsBlank: true }).read(0, "x")).kind).toBe("unavailable");
    expect(number().read(0, "x")).toBe(0);
    expect(number().zeroIsBlank).toBe(false);
    expect(number({ zeroIsBlank: true }).zeroIsBlank).toBe(true);
  });
});

test("a date that is text is a fault of the cell", () => {
  expect(refusalOf(() => date().read("20.2.24", "x"))).toEqual({
    kind: "invalid",
    message: 'x must be a date; got the text "20.2.24": turn the cell into a date',
  });
  expect(refusalOf(() => date().read(true, "x"))).toEqual({ kind: "invalid", message: "x must be a date; got TRUE" });
});

test("words are compared without case, spaces, hyphens and underscores", () => {
  const kind = choice(["all samples", "one"], { "no.": "one" });
  expect(["All Samples", "all_samples", "ALL--SAMPLES", "allsamples", "all\u00a0samples"].map((word) => kind.read(word, "x"))).toEqual(Array(5).fill("all samples")); // oxfmt-ignore
  expect(kind.read("NO.", "x")).toBe("one");
  expect(refusalOf(() => kind.read("none", "x"))).toEqual({
    kind: "invalid",
    message: 'x must be "all samples" or "one"; got "none"',
  });
  expect(refusalOf(() => kind.read(0, "x")).kind).toBe("unavailable");
  expect(choice(["0", "1"]).read(0, "x")).toBe("0");
});

describe("a settings table", () => {
  const rules = settingsTable("rules", {
    lesion: { headings: ["Lesion", "Code"], kind: text() },
    days: { headings: ["Days (max)"], kind: number({ min: 1, reason: "a test", zeroIsBlank: true }) },
    block: { headings: ["Block"], kind: number(), optional: true },
  });

  test("reads a column that is there, one that is not, and a blank one", () => {
    expect(rules.read([["Code", 5, "Days", "Block"], ["DD", null, 7, 0], ["SU", 1, 3, null]], "rules")).toEqual([{ lesion: "DD", days: 7, block: 0 }, { lesion: "SU", days: 3, block: undefined }]); // oxfmt-ignore
    expect(rules.read([["Days", "Lesion"], [7, "DD"]], "rules")).toEqual([{ lesion: "DD", days: 7, block: undefined }]); // oxfmt-ignore
  });

  test.each<[string, unknown, string, string]>([
    [
      "no table",
      "DD",
      "invalid",
      "rules must be a table with its headings in the first row and at least one row below",
    ],
    ["headings alone", [["Lesion", "Days"]], "invalid", "rules must be a table with its headings in the first row and at least one row below"], // oxfmt-ignore
    ["a list", [["Lesion"], "DD"], "invalid", "rules must be a table with its headings in the first row and at least one row below"], // oxfmt-ignore
    ["a heading missing", [["Lesion", "Day"], ["DD", 7]], "invalid", 'rules must have a column headed "Days (max)" in its first row'], // oxfmt-ignore
    ["rows of blanks", [["Lesion", "Days"], [0, ""], [null, " "]], "unavailable", "rules has no rows under its headings"], // oxfmt-ignore
    ["a blank", [["Lesion", "Days"], ["DD", 7], ["SU", null]], "unavailable", 'rules row 3 "Days (max)" is blank: enter a number of 1 or more'], // oxfmt-ignore
    ["a 0 for a blank", [["Lesion", "Days"], ["DD", 0]], "unavailable", 'rules row 2 "Days (max)" is blank: enter a number of 1 or more'], // oxfmt-ignore
    ["an error", [["Lesion", "Days"], ["DD", "#N/A"]], "invalid", 'rules row 2 "Days (max)" holds the error #N/A: mend that cell first'], // oxfmt-ignore
    ["a bad value", [["Lesion", "Days"], ["DD", 0.5]], "invalid", 'rules row 2 "Days (max)" must be a number of 1 or more (a test); got 0.5'], // oxfmt-ignore
  ])("refuses %s", (_, raw, kind, message) =>
    expect(refusalOf(() => rules.read(raw, "rules"))).toEqual({ kind, message }),
  );
});
