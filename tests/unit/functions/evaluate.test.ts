import { definition } from "../../../src/core/shared/source";
import { columnOf } from "../../../src/functions/columns";
import { defineFunction, type FunctionSpec, optional, required, withDefault } from "../../../src/functions/define";
import { evaluate, explain } from "../../../src/functions/evaluate";
import { choice, date, number, text } from "../../../src/functions/scalars";
import { settingsTable } from "../../../src/functions/tables";

const shared = {
  group: "Test",
  summary: "A function for this test.",
  sources: [definition("a definition")],
  limits: [],
  cautions: [],
  examples: [],
};

const millimetres = number({ unit: "mm", min: 20, max: 150, reason: "claws of cattle", zeroIsBlank: true });

const scalarSpec = defineFunction({
  ...shared,
  id: "TEST.SCALAR",
  result: { shape: "scalar", type: "number", unit: "mm" },
  parameters: {
    length: required(millimetres, "Length"),
    add: withDefault(number({ unit: "mm" }), "More", 5, "5 mm"),
    when: optional(date(), "Day", "not used"),
  },
  compute: ({ length, add, when }, remarks) => {
    if (when !== undefined) remarks.add(`on ${when}`);
    return length + add;
  },
  steps: ({ length, add }, sum) => [{ label: "Sum", working: `${length} + ${add}`, value: String(sum) }],
});

const columnSpec = defineFunction({
  ...shared,
  id: "TEST.COLUMN",
  result: { shape: "scalar", type: "number", unit: "mm" },
  parameters: {
    lengths: required(columnOf(millimetres, { notes: "leave out" }), "Lengths"),
    feet: optional(columnOf(choice(["LH", "RH"]), { notes: "refuse" }), "Feet", "not used"),
  },
  compute: ({ lengths }) =>
    lengths.values.reduce<number>((sum, value) => sum + (value ?? 0), 0) + lengths.noteRows * 1000,
  steps: () => [],
});

const rules = settingsTable("rules", {
  lesion: { headings: ["Lesion", "Code"], kind: text() },
  days: { headings: ["Recheck (days)"], kind: number({ unit: "days", min: 1, reason: "a later day" }) },
  block: { headings: ["Block"], kind: number(), optional: true },
});

const tableSpec = defineFunction({
  ...shared,
  id: "TEST.TABLE",
  result: { shape: "scalar", type: "text" },
  parameters: { rules: required(rules, "Rules") },
  compute: ({ rules: rows }) => rows.map((row) => `${row.lesion}:${row.days}:${row.block ?? "-"}`).join(" "),
  steps: () => [],
});

const call = (spec: FunctionSpec, ...raw: unknown[]): unknown => evaluate(spec, raw).value;

describe("arguments of one cell", () => {
  test("an optional argument left out, blank or pointing to a blank cell takes its default", () => {
    for (const raw of [[75], [75, null], [75, ""], [75, [[null]]], [75, [[""]], null]]) {
      expect(evaluate(scalarSpec, raw).value).toBe(80);
    }
  });

  test("a 0 where 0 is real is used, not taken for a blank", () => expect(call(scalarSpec, 75, 0)).toBe(75));

  test("a blank says what to enter", () => {
    expect(() => call(scalarSpec, null)).toThrow("length is blank: enter a number from 20 to 150 mm");
    expect(() => call(scalarSpec, 0)).toThrow("length is blank");
    expect(() => call(scalarSpec)).toThrow("length is blank");
  });

  test("limit, reason and value are named", () => {
    expect(() => call(scalarSpec, 7.5)).toThrow("length must be a number from 20 to 150 mm (claws of cattle); got 7.5");
    expect(() => call(scalarSpec, "75")).toThrow(
      'length must be a number from 20 to 150 mm; got the text "75": turn the cell into a number',
    );
    expect(() => call(scalarSpec, true)).toThrow("length must be a number from 20 to 150 mm; got TRUE");
  });

  test("the limits themselves are allowed", () => {
    expect(call(scalarSpec, 20, 0)).toBe(20);
    expect(call(scalarSpec, 150, 0)).toBe(150);
  });

  test("a time of day is cut off a date; text dates are refused", () => {
    expect(evaluate(scalarSpec, [75, 0, 45_000.9]).remarks).toEqual(["on 45000"]);
    expect(() => call(scalarSpec, 75, 0, "20/02/2024")).toThrow('when must be a date; got the text "20/02/2024"');
    expect(() => call(scalarSpec, 75, 0, 12)).toThrow("when must be a date from 1900-03-01 to 9999-12-31; got 12");
  });

  test("a range is refused", () => {
    expect(() => call(scalarSpec, [[75], [80]])).toThrow("length must be one cell; got a range of 2 rows");
  });

  test("a result that is no finite number is refused, never shown", () => {
    expect(() => call(scalarSpec, 75, 1.7e308)).not.toThrow();
    const broken = { ...scalarSpec, compute: () => NaN };
    expect(() => call(broken, 75)).toThrow("not a finite number");
    const brokenBlock = { ...scalarSpec, compute: () => [[1, Infinity]] };
    expect(() => call(brokenBlock, 75)).toThrow("not a finite number");
  });

  test("explains with the numbers that it used", () => {
    expect(explain(scalarSpec, [75])).toMatchObject({
      value: 80,
      arguments: { length: 75, add: 5 },
      steps: [{ label: "Sum", working: "75 + 5", value: "80" }],
    });
  });
});

describe("columns", () => {
  test("blanks and notes are left out; notes are counted", () => {
    expect(call(columnSpec, [[75], [null], ["dry"], [""], [25]])).toBe(1100);
  });

  test("a single cell and a row of cells are columns too", () => {
    expect(call(columnSpec, 75)).toBe(75);
    expect(call(columnSpec, [[75, 25]])).toBe(100);
  });

  test("bad values are named with their row", () => {
    expect(() => call(columnSpec, [[75], ["80"]])).toThrow(
      'lengths row 2 must be a number from 20 to 150 mm; got the text "80"',
    );
    expect(() => call(columnSpec, [[75], [7]])).toThrow("lengths row 2 must be");
    expect(() => call(columnSpec, [[75], [true]])).toThrow("lengths row 2 must be");
    expect(() => call(columnSpec, [[75], ["#N/A"]])).toThrow("lengths row 2 holds the error #N/A");
  });

  test("a heading passed along is refused; a mark for no value in the first row is not", () => {
    expect(() => call(columnSpec, [["Length"], [75]])).toThrow('lengths row 1 holds the text "Length"');
    expect(call(columnSpec, [["dry"], [75]])).toBe(1075);
  });

  test("words are refused, not left out", () => {
    expect(() => call(columnSpec, [[75]], [["XX"]])).toThrow('feet row 1 must be "LH" or "RH"; got "XX"');
  });

  test("unequal lengths are refused with both", () => {
    expect(() => call(columnSpec, [[75], [75]], [["LH"]])).toThrow("feet must have as many rows as lengths (2); got 1");
  });

  test("a block is refused", () => {
    expect(() =>
      call(columnSpec, [
        [75, 1],
        [75, 1],
      ]),
    ).toThrow("lengths must be one column; got 2 rows by 2 columns");
  });
});

describe("settings tables", () => {
  test("columns are found by heading in any order, under any of their names; others and blank rows are left alone", () => {
    const raw = [
      ["note", "Recheck (d)", "code"],
      ["x", 7, "DD"],
      [null, null, ""],
      ["", 14, "SU"],
    ];
    expect(call(tableSpec, raw)).toBe("DD:7:- SU:14:-");
  });

  test("a missing column, a blank cell and a bad cell are named", () => {
    expect(() => call(tableSpec, [["Code"], ["DD"]])).toThrow('rules must have a column headed "Recheck (days)"');
    expect(() =>
      call(tableSpec, [
        ["Code", "Recheck"],
        ["DD", null],
      ]),
    ).toThrow('rules row 2 "Recheck (days)" is blank');
    expect(() =>
      call(tableSpec, [
        ["Code", "Recheck"],
        ["DD", 0],
      ]),
    ).toThrow('rules row 2 "Recheck (days)" must be');
    expect(() =>
      call(tableSpec, [
        ["Code", "Recheck"],
        ["", ""],
      ]),
    ).toThrow("rules has no rows under its headings");
    expect(() => call(tableSpec, "Rules")).toThrow("rules must be a table");
  });
});

test("one argument too many is refused; trailing nothings are not", () => {
  expect(() => call(scalarSpec, 75, 0, 45_000, 1)).toThrow("HERD.TEST.SCALAR takes at most 3 arguments; got 4");
  expect(call(scalarSpec, 75, 0, 45_000, undefined, null)).toBe(75);
});
