import { cows } from "../../../src/functions/claws/kinds";
import { columnOf, numbersOf, wordsOf } from "../../../src/functions/columns";
import { choice, date, number, text } from "../../../src/functions/scalars";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const counts = columnOf(number({ min: 0, max: 100, reason: "a test", zeroIsBlank: true }), { notes: "leave out" });
const shares = columnOf(number({ min: 0, max: 1, exclusiveMin: true, reason: "a test" }), { notes: "leave out" });
const anyNumber = columnOf(number(), { notes: "leave out" });
const changes = columnOf(number({ min: -5, max: 5, reason: "a test", zeroIsBlank: true }), { notes: "leave out" });
const wholes = columnOf(number({ min: 1, max: 9, whole: true, reason: "a test" }), { notes: "leave out" });
const days = columnOf(date(), { notes: "leave out" });
const words = columnOf(choice(["yes", "no"]), { notes: "refuse" });

describe("a column of numbers", () => {
  test("keeps values, blanks and notes apart", () => {
    const read = counts.read(column(1, 2.5, null, "", " ", undefined, "dry", 0, -0, 100), "counts");
    expect(read.values).toEqual([1, 2.5, null, null, null, null, null, null, null, 100]);
    expect(read.noteRows).toBe(1);
    expect(read.length).toBe(10);
    expect(Array.from(numbersOf(read))).toEqual([1, 2.5, NaN, NaN, NaN, NaN, NaN, NaN, NaN, 100]);
  });

  test("takes a formatted number as its number", () => {
    expect(counts.read(column({ type: "Double", basicValue: 7 }), "counts").values).toEqual([7]);
  });

  test.each([[NaN], [Infinity], [-Infinity], [100.5], [-1], ["12"], ["12,5"], [true], ["#N/A"]])(
    "refuses %p with its row",
    (odd) => expect(() => counts.read(column(1, odd), "counts")).toThrow(/^counts row 2 /),
  );

  test("numbers that are not finite are refused where there is no limit", () => {
    for (const odd of [NaN, Infinity, -Infinity])
      expect(() => anyNumber.read(column(1, odd), "x")).toThrow(/^x row 2 /);
    expect(anyNumber.read(column(-1e300, 0, 1e300), "x").values).toEqual([-1e300, 0, 1e300]);
  });

  test("a limit that is not allowed itself is refused, and a 0 in the middle of the limits is a blank", () => {
    expect(() => shares.read(column(0.5, 0), "shares")).toThrow("shares row 2 must be a number above 0 and up to 1");
    expect(shares.read(column(Number.MIN_VALUE, 1), "shares").values).toEqual([Number.MIN_VALUE, 1]);
    expect(changes.read(column(-1, 0, 1), "changes").values).toEqual([-1, null, 1]);
  });

  test("whole numbers only, where asked", () => {
    expect(wholes.read(column(1, 9), "wholes").values).toEqual([1, 9]);
    for (const odd of [1.5, 0, 10]) expect(() => wholes.read(column(1, odd), "wholes")).toThrow(/^wholes row 2 /);
  });

  test("notes are counted row by row, also the same one again", () => {
    expect(counts.read(column("dry", "dry", 5, "sold", "dry"), "counts").noteRows).toBe(4);
  });

  test("a limit on one side is told as such", () => {
    expect(number({ max: 9, reason: "a test" }).must).toBe("a number of at most 9");
    expect(number({ min: 1, reason: "a test" }).must).toBe("a number of 1 or more");
    expect(number({ min: 0, exclusiveMin: true, reason: "a test" }).must).toBe("a number above 0");
  });

  test("a row of several cells, or none, is refused: no value beside the column is passed over", () => {
    for (const kind of [counts, wholes, days, words])
      for (const row of [[45_000, 45_000], []])
        expect(() => kind.read([[null], row], "x")).toThrow(`x row 2 must be one cell; got ${row.length}`);
    expect(() => counts.read([1, 2], "counts")).toThrow("counts must be a column of cells");
  });

  test("a heading over numbers is refused; a mark for no value is not", () => {
    expect(() => counts.read(column("SCC", 5), "counts")).toThrow(/counts row 1 .*heading/);
    expect(counts.read(column("dry", 5), "counts").values).toEqual([null, 5]);
  });
});

test("a word is no day; text that looks like one is refused with what to do", () => {
  expect(days.read(column("unknown", null), "days").noteRows).toBe(1);
  expect(() => date().read("soon", "when")).toThrow(/^when must be a date; got "soon"$/);
  for (const given of ["20/2/24", "45342"])
    expect(() => date().read(given, "when")).toThrow(`when must be a date; got the text "${given}": turn the cell into a date`); // oxfmt-ignore
});

test("TRUE is neither a text nor a word, whatever the words", () => {
  expect(() => text().read(true, "name")).toThrow("name must be text; got TRUE");
  expect(() => text("cow's name").read(false, "cow")).toThrow("cow must be a cow's name; got FALSE");
  expect(() => choice(["true", "false"]).read(true, "answer")).toThrow('answer must be "true" or "false"; got TRUE');
});

test("days lose their time of day", () => {
  expect(days.read(column(45_000, 45_000.75, null), "days").values).toEqual([45_000, 45_000, null]);
  expect(() => days.read(column(45_000, 12), "days")).toThrow(/^days row 2 /);
});

test("a row of cells, or one cell, is a column too; a block is not", () => {
  expect(counts.read([[1, null, 3]], "counts").values).toEqual([1, null, 3]);
  expect(counts.read(4, "counts").values).toEqual([4]);
  expect(() => counts.read([[1, 2], [3, 4]], "counts")).toThrow("one column; got 2 rows by 2 columns"); // oxfmt-ignore
});

test("words have no numbers, and a 0 among them is a blank", () => {
  const read = words.read(column("Yes", 0, null, "no"), "words");
  expect(read.values).toEqual(["yes", null, null, "no"]);
  expect(read.numbers).toBeUndefined();
  expect(() => words.read(column("yes", 1), "words")).toThrow(/^words row 2 /);
});

test("a word that stands in many rows is one word, however its cells are written", () => {
  const read = wordsOf(
    words.read(column("yes", "Yes", " YES ", null, { type: "String", basicValue: "yes" }, "no"), "words"),
  );
  expect(read.distinct).toEqual(["yes", "no"]);
  expect(Array.from(read.places)).toEqual([1, 1, 1, 0, 1, 2]);
});

test.each<[string, unknown[], string[], number[]]>([
  ["numbers", [114, 27.5, 114], ["114", "27.5"], [1, 2, 1]],
  ["texts", ["a", "b", "a"], ["a", "b"], [1, 2, 1]],
  ["numbers and the same as text", [114, "114", "27", 27, "114 "], ["114", "27"], [1, 1, 2, 2, 1]],
])("cows written as %s", (_, cells, names, places) => {
  const read = wordsOf(cows.read(column(...cells), "cows"));
  expect(read.distinct).toEqual(names);
  expect(Array.from(read.places)).toEqual(places);
});

test("more different words than a byte counts keep their places", () => {
  const names = Array.from({ length: 700 }, (_, row) => `cow ${row % 600}`);
  const read = cows.read(column(...names), "cows");
  expect(read.values).toEqual(names);
  expect([wordsOf(read).count, read.at(0), read.at(699)]).toEqual([600, "cow 0", "cow 99"]);
});

test("a repeated word of a bad column is refused with its own row", () => {
  expect(() => words.read(column("yes", "no", "maybe", "maybe"), "words")).toThrow(/^words row 3 /);
});

test("a million rows are read without a stack overflow", () => {
  const rows = Array.from({ length: 1_000_000 }, (_, row) => [row % 100]);
  expect(counts.read(rows, "counts").length).toBe(1_000_000);
});
