import { cow, cows } from "../../../src/functions/claws/kinds";
import { type Column, columnOf, wordsOf } from "../../../src/functions/columns";
import { choice, text } from "../../../src/functions/scalars";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const numbered = (length: number): string[] => Array.from({ length }, (_, row) => `cow ${row}`);
const placesOf = (read: Column<string>): number[] => Array.from(wordsOf(read).places);

describe("a column of words", () => {
  test("has a byte a row for up to 255 different words, and more where there are more", () => {
    for (const [different, kind] of [
      [255, Uint8Array],
      [256, Int32Array],
      [257, Int32Array],
    ] as const) {
      const names = [...numbered(different), "cow 0", `cow ${different - 1}`];
      const read = cows.read(column(...names), "cows");
      expect(wordsOf(read).places).toBeInstanceOf(kind);
      expect(read.values).toEqual(names);
      expect(placesOf(read).slice(-2)).toEqual([1, different]);
      expect([wordsOf(read).count, wordsOf(read).distinct.length]).toEqual([different, different]);
    }
  });

  test("of as many numbers keeps them all, and texts after them", () => {
    // Cows 1 to 300 and 64 and 65 again, then a name: the number 64 and its text are one cow.
    const numbers = Array.from({ length: 300 }, (_, row) => row + 1);
    const alone = cows.read(column(...numbers, 64, 65), "cows");
    expect(placesOf(alone)).toEqual([...numbers, 64, 65]);
    expect(alone.values.slice(62, 66)).toEqual(["63", "64", "65", "66"]);
    const withNames = cows.read(column(...numbers, "Ada", "64", 64), "cows");
    expect(placesOf(withNames)).toEqual([...numbers, 301, 64, 64]);
    expect([wordsOf(withNames).distinct.length, withNames.at(300), withNames.at(301)]).toEqual([301, "Ada", "64"]);
  });

  test("of numbers tells each row's as text, with or without their list", () => {
    for (const length of [1, 64, 65, 300]) {
      const numbers = Array.from({ length }, (_, row) => row + 0.5);
      const read = cows.read(column(null, ...numbers, 0.5, ...numbers), "cows");
      const asText = [null, ...numbers.map(String), "0.5", ...numbers.map(String)];
      const rows = asText.map((_, row) => row);
      expect(rows.map((row) => read.at(row))).toEqual(asText);
      expect(wordsOf(read).distinct).toEqual(numbers.map(String));
      expect(rows.map((row) => read.at(row))).toEqual(asText);
    }
  });

  test("says whether all of them are numbers", () => {
    const areNumbers = (...cells: unknown[]): boolean => wordsOf(cows.read(column(...cells), "cows")).areNumbers;
    expect(areNumbers(7, null, 8, 7)).toBe(true);
    expect(areNumbers("7", "8")).toBe(false);
    expect(areNumbers(7, "8")).toBe(false);
    expect(areNumbers("7", 8)).toBe(false);
    expect(areNumbers("Ada", "Eda")).toBe(false);
  });

  test("folds blanks around a word away, in whatever order they come", () => {
    for (const names of [
      ["Ada", " Ada ", "Eda"],
      [" Ada ", "Ada", "Eda"],
      [" Ada ", " Ada", { type: "String", basicValue: "Ada" }].concat("Eda" as never),
    ]) {
      const read = cows.read(column(...names), "cows");
      expect(wordsOf(read).distinct).toEqual(["Ada", "Eda"]);
      expect(placesOf(read)).toEqual(names.map((_, row) => (row === names.length - 1 ? 2 : 1)));
    }
  });

  test("leaves blanks without a place, also a 0 that stands for one", () => {
    const read = cows.read(column(null, undefined, "", " ", 0, 7, "", null), "cows");
    expect(placesOf(read)).toEqual([0, 0, 0, 0, 0, 1, 0, 0]);
    expect(read.values).toEqual([null, null, null, null, null, "7", null, null]);
    expect([read.at(0), read.at(5), read.length, read.noteRows]).toEqual([null, "7", 8, 0]);
    expect(read.values).toBe(read.values);
  });

  test("refuses what is no finite number", () => {
    for (const odd of [Infinity, NaN])
      expect(() => cows.read(column(7, odd), "cows")).toThrow("cows row 2 is not a finite number");
  });

  test("refuses a row of two cells, also where its first was met before", () => {
    for (const row of [["Ada", "Eda"], [null, "Eda"], [7, 8], undefined])
      expect(() => cows.read([["Ada"], [7], row], "cows")).toThrow(
        `cows row 3 must be one cell; got ${row === undefined ? "a blank" : 2}`,
      );
  });

  test("of other hands is read row by row", () => {
    const plain: Column<string> = {
      values: ["b", null, "a", "b"],
      noteRows: 0,
      argument: "x",
      length: 4,
      at: () => null,
    };
    expect(wordsOf(plain).distinct).toEqual(["b", "a"]);
    expect(placesOf(plain)).toEqual([1, 0, 2, 1]);
    const read = cows.read(column("b"), "x");
    expect(wordsOf({ ...plain, repeated: read.repeated! }).distinct).toEqual(["b"]);
  });
});

describe("a column of a few allowed words", () => {
  test("takes a number for the word of its digits, and no number as such", () => {
    const kind = columnOf(choice(["1", "2"]), { notes: "refuse" });
    const read = kind.read(column(1, "2", 2, 1), "x");
    expect(read.values).toEqual(["1", "2", "2", "1"]);
    expect(placesOf(read)).toEqual([1, 2, 2, 1]);
    expect(wordsOf(read).areNumbers).toBe(false);
    expect(() => kind.read(column(1, 3), "x")).toThrow('x row 2 must be "1" or "2"; got 3');
  });

  test("has no heading over numbers: every text is meant", () => {
    const kind = columnOf(choice(["yes", "no"]), { notes: "refuse" });
    expect(() => kind.read(column("Lame", 5), "x")).toThrow('x row 1 must be "yes" or "no"; got "Lame"');
  });
});

test("names of columns are plural", () => {
  expect(columnOf(cow, { notes: "refuse" }).name).toBe("column of cows");
  expect(columnOf(text("lots"), { notes: "refuse" }).name).toBe("column of lots");
});
