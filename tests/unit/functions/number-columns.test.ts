import { type Column, columnOf, numbersOf, wholeNumbersOf } from "../../../src/functions/columns";
import { lactation } from "../../../src/functions/claws/kinds-of-trimming";
import { scores } from "../../../src/functions/claws/kinds-of-scores";
import { date, number, type NumberOptions, scalarKind } from "../../../src/functions/scalars";
import { refusalOf } from "../refusal";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

/** A column of numbers within those limits, notes left out. */
function read(options: NumberOptions, ...cells: unknown[]): Column<number> {
  return columnOf(number({ reason: "a test", ...options }), { notes: "leave out" }).read(column(...cells), "x");
}

describe("whole numbers from 1 take few bytes each", () => {
  const bytes = { min: 1, max: 255, whole: true };

  test("with 0 for none", () => {
    const lengths = read(bytes, 1, 255, null, "dry", "", { type: "Double", basicValue: 7 }, "dry", undefined);
    expect(Array.from(lengths.whole!)).toEqual([1, 255, 0, 0, 0, 7, 0, 0]);
    expect(lengths.values).toEqual([1, 255, null, null, null, 7, null, null]);
    expect([lengths.at(1), lengths.at(2), lengths.at(5)]).toEqual([255, null, 7]);
    expect(Array.from(lengths.numbers!)).toEqual([1, 255, NaN, NaN, NaN, 7, NaN, NaN]);
    expect(numbersOf(lengths)).toBe(lengths.numbers);
    expect(wholeNumbersOf(lengths)).toBe(lengths.whole);
    expect(lengths.values).toBe(lengths.values);
    expect([lengths.length, lengths.noteRows, lengths.argument]).toEqual([8, 2, "x"]);
  });

  test.each([
    [1.5, "1.5"],
    [0, "0"],
    [256, "256"],
    [-1, "-1"],
    [true, "TRUE"],
  ])("%j is refused with its row", (odd, shown) => {
    expect(refusalOf(() => read(bytes, 1, null, odd))).toEqual({
      kind: "invalid",
      message: `x row 3 must be a whole number from 1 to 255${odd === true ? "" : " (a test)"}; got ${shown}`,
    });
  });

  test.each<[string, NumberOptions, unknown]>([
    ["from 1 to 255", bytes, Uint8Array],
    ["from 1 to 256", { ...bytes, max: 256 }, Int32Array],
    ["from 1 to 2 147 483 647", { ...bytes, max: 2_147_483_647 }, Int32Array],
    ["from 1 to 2 147 483 648", { ...bytes, max: 2_147_483_648 }, undefined],
    ["from 0", { ...bytes, min: 0 }, undefined],
    ["from 0, a 0 being a blank", { ...bytes, min: 0, zeroIsBlank: true }, Uint8Array],
    ["from -1", { ...bytes, min: -1 }, undefined],
    ["that need not be whole", { min: 1, max: 255 }, undefined],
  ])("numbers %s", (_, options, kind) => {
    const lengths = read(options, 2, null, 255, options.max);
    expect(lengths.whole?.constructor).toBe(kind);
    expect(lengths.values).toEqual([2, null, 255, options.max]);
    expect(Array.from(wholeNumbersOf(lengths))).toEqual([2, kind === undefined ? NaN : 0, 255, options.max]);
  });

  test("dates among them, a time of day being of its day", () => {
    const dates = columnOf(date(), { notes: "leave out" }).read(column(45_342, null, 45_342.75, "sold", 0), "dates");
    expect(dates.values).toEqual([45_342, null, 45_342, null, null]);
    expect(Array.from(dates.whole!)).toEqual([45_342, 0, 45_342, 0, 0]);
    expect(dates.noteRows).toBe(1);
  });

  test("a heifer among lactations is 0, which is no sign of none", () => {
    const lactations = columnOf(lactation, { notes: "refuse" }).read(
      column(2, null, 0, "Heifer", "", 20),
      "lactations",
    );
    expect(lactations.values).toEqual([2, null, null, 0, null, 20]);
    expect(Array.from(numbersOf(lactations))).toEqual([2, NaN, NaN, 0, NaN, 20]);
    expect([lactations.at(3), lactations.at(1), lactations.whole]).toEqual([0, null, undefined]);
  });

  test("notes above a word that stands for 0 count once", () => {
    const parity = number({ min: 1, max: 9, whole: true, reason: "a test" });
    const kind = scalarKind<number>({ ...parity, readCell: (cell, where) => (cell === "P0" ? 0 : parity.readCell(cell, where)) }); // oxfmt-ignore
    const read = columnOf(kind, { notes: "leave out words" }).read(column(2, "dry", "P0", "dry", 3), "x");
    expect([read.values, read.noteRows]).toEqual([[2, null, 0, null, 3], 2]);
  });
});

describe("other numbers", () => {
  test("at a limit are taken, just outside refused", () => {
    const limits = { min: -2.5, max: 300.5 };
    expect(read(limits, -2.5, 300.5).values).toEqual([-2.5, 300.5]);
    for (const odd of [-2.500001, 300.500001])
      expect(refusalOf(() => read(limits, 0, odd)).message).toBe(`x row 2 must be a number from -2.5 to 300.5 (a test); got ${odd}`); // oxfmt-ignore
  });

  test("whole ones of a wide range", () => {
    const wide = { min: 0, max: 100_000, whole: true };
    const lengths = read(wide, 0, 100_000, "dry", null, { type: "Double", basicValue: 3 });
    expect(lengths.values).toEqual([0, 100_000, null, null, 3]);
    expect(lengths.values).toBe(lengths.values);
    expect([lengths.at(0), lengths.at(2), lengths.noteRows]).toEqual([0, null, 1]);
    expect(refusalOf(() => read(wide, 1, 2.5)).message).toBe("x row 2 must be a whole number from 0 to 100000 (a test); got 2.5"); // oxfmt-ignore
  });

  test("of any kind of column are found without a list of their own", () => {
    const plain: Column<number> = { values: [4, null], noteRows: 0, argument: "x", length: 2, at: () => null };
    expect(Array.from(numbersOf(plain))).toEqual([4, NaN]);
    expect(Array.from(wholeNumbersOf(plain))).toEqual([4, NaN]);
    expect(read({}, 1, 2).numbers).toBeInstanceOf(Float64Array);
  });
});

describe("text among numbers", () => {
  const days = (): ReturnType<typeof columnOf<number>> => columnOf(date(), { notes: "leave out" });

  test("is the heading in row 1 alone, and only over numbers", () => {
    expect(read({}, 5, "SCC", 6).noteRows).toBe(1);
    expect(read({}, "SCC", null, "dry").noteRows).toBe(2);
    expect(read({}, "n/a", 5).noteRows).toBe(1);
    expect(refusalOf(() => read({}, "SCC", null, 5))).toEqual({
      kind: "invalid",
      message: 'x row 1 holds the text "SCC", which looks like the heading: pass the column without its heading',
    });
    expect(refusalOf(() => read({}, "SCC", "SCC", 5)).message).toMatch(/^x row 1 holds the text/);
    expect(refusalOf(() => read({ min: 1, max: 9, whole: true }, "SCC", 5)).message).toMatch(/^x row 1 holds the text/);
  });

  test("that looks like a number or a date is no heading and no note", () => {
    expect(refusalOf(() => read({}, "12", 5)).message).toBe('x row 1 must be a number; got the text "12": turn the cell into a number'); // oxfmt-ignore
    expect(refusalOf(() => days().read(column("20/2/24", 45_000), "days")).message).toBe('days row 1 must be a date; got the text "20/2/24": turn the cell into a date'); // oxfmt-ignore
    expect(refusalOf(() => read({}, 5, "20/2/24")).message).toBe('x row 2 must be a number; got "20/2/24"');
  });

  test("TRUE is neither", () => {
    expect(refusalOf(() => read({}, true, 5)).message).toBe("x row 1 must be a number; got TRUE");
  });

  test("with a digit is meant as a score, a word is a note", () => {
    expect(scores.read(column(1, "absent", "dry", 3), "scores").noteRows).toBe(2);
    expect(refusalOf(() => scores.read(column(1, "2b"), "scores")).message).toMatch(/^scores row 2 must be/);
    // It may be the heading "Score 1-5" as well.
    expect(refusalOf(() => scores.read(column("2b", 1), "scores")).message).toBe(
      'scores row 1 holds the text "2b", which looks like the heading: pass the column without its heading',
    );
    expect(refusalOf(() => scores.read(column("2b", null), "scores")).message).toMatch(/^scores row 1 must be/);
  });

  test("a day is a whole number of days between the first and the last that a sheet shows", () => {
    // 1 March 1900 is serial 61, 31 December 9999 serial 2958465.
    expect(days().read(column(61, 2_958_465.5, 0), "days").values).toEqual([61, 2_958_465, null]);
    for (const odd of [60, 2_958_466])
      expect(refusalOf(() => days().read(column(odd), "days")).message).toBe(`days row 1 must be a date from 1900-03-01 to 9999-12-31; got ${odd}`); // oxfmt-ignore
    expect(days().name).toBe("column of dates");
    expect(days().must).toBe("a column, each row a date");
    expect(days().limits).toEqual({ min: 61, max: 2_958_465, whole: true, reason: "the days a worksheet can show" });
    expect(refusalOf(() => date().read(0, "when"))).toEqual({
      kind: "unavailable",
      message: "when is blank: enter a date",
    });
  });
});

describe("rows that are no one cell", () => {
  test.each<[string, NumberOptions]>([
    ["bytes", { min: 1, max: 9, whole: true }],
    ["numbers", {}],
  ])("are refused among %s", (_, options) => {
    const kind = columnOf(number({ reason: "a test", ...options }), { notes: "leave out" });
    for (const [row, shown] of [
      [[5, 6], "2"],
      [[null, 6], "2"],
      [undefined, "a blank"],
    ])
      expect(refusalOf(() => kind.read([[5], row], "x"))).toEqual({
        kind: "invalid",
        message: `x row 2 must be one cell; got ${shown as string}`,
      });
    expect(refusalOf(() => kind.read([["SCC"], undefined], "x")).message).toBe("x row 2 must be one cell; got a blank");
  });

  test("a block is refused, a list laid across and a lone cell are read", () => {
    expect(refusalOf(() => columnOf(number(), { notes: "leave out" }).read([[1, 2], [3, 4]], "x"))).toEqual({ kind: "invalid", message: "x must be one column; got 2 rows by 2 columns" }); // oxfmt-ignore
    expect(refusalOf(() => columnOf(number(), { notes: "leave out" }).read([], "x"))).toEqual({ kind: "invalid", message: "x must be a column of cells" }); // oxfmt-ignore
    const kind = columnOf(number(), { notes: "leave out" });
    expect(kind.read([[1, "dry", 3]], "x").noteRows).toBe(1);
    expect(kind.read(null, "x").values).toEqual([null]);
    expect(kind.read([[7]], "x").values).toEqual([7]);
  });
});

test("a defect of ours is not taken for a bad cell", () => {
  const broken = scalarKind<number>({
    name: "number",
    must: "a number",
    readCell() {
      throw new TypeError("a defect");
    },
  });
  expect(() => columnOf(broken, { notes: "leave out" }).read(column(1), "x")).toThrow(TypeError);
});
