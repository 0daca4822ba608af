import { day } from "../../../../src/core/shared/days";
import { findBlocks } from "../../../../src/herd/mapping/find-blocks";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import type { PlainSheet } from "../../../../src/workbook/plain-book";
import type { PlainCell } from "../../../../src/workbook/port";
import { book, type Rows, sheet } from "../plain-sheet";

const DAY = day("2026-03-01");
const HEADINGS = ["Cow", "Date", "Foot", "Lesion", "Treatment"];
const FEET = ["LH", "RH", "LF", "RF"];

function findings(rows: number): PlainCell[][] {
  return Array.from({ length: rows }, (_, row) => [
    101 + row,
    DAY + row,
    FEET[row % 4]!,
    row % 2 ? "DD" : "SU",
    "trim",
  ]);
}

function blocks(rows: Rows, extras: Parameters<typeof sheet>[2] = {}) {
  return findBlocks(book(sheet("Feet", rows, extras))).map(({ table, headingRow, columns, firstRow, lastRow }) => ({
    table,
    headingRow,
    headings: columns.map(({ heading }) => heading),
    firstRow,
    lastRow,
  }));
}

describe("lists in a workbook", () => {
  test("a plain range below lines of text", () => {
    const rows: Rows = [["Our feet"], [], ["Written by hand"], HEADINGS, ...findings(6)];
    expect(blocks(rows)).toEqual([{ table: undefined, headingRow: 3, headings: HEADINGS, firstRow: 4, lastRow: 9 }]);
  });

  test("a table, with the blank rows at its end left out", () => {
    const rows: Rows = [HEADINGS, ...findings(3), [null, null, null, null, null]];
    expect(blocks(rows, { table: "Feet" })).toEqual([
      { table: "Feet", headingRow: 0, headings: HEADINGS, firstRow: 1, lastRow: 3 },
    ]);
  });

  test("a list with blank rows in it goes on; what stands far below does not belong to it", () => {
    const gap = Array.from({ length: 3 }, (): PlainCell[] => []);
    const far = Array.from({ length: 30 }, (): PlainCell[] => []);
    const rows: Rows = [HEADINGS, ...findings(3), ...gap, ...findings(2), ...far, ["a note at the end"]];
    expect(blocks(rows).map(({ lastRow }) => lastRow)).toEqual([8]);
  });

  test("two lists side by side", () => {
    const left = findings(5);
    const rows = [HEADINGS, ...left].map((cells, row): PlainCell[] => [
      ...cells,
      null,
      ...(row === 0 ? ["Cow", "Cell count"] : [101 + row, 100 * row]),
    ]);
    expect(blocks(rows).map(({ headings }) => headings)).toEqual([HEADINGS, ["Cow", "Cell count"]]);
  });

  test("a row of units below the headings is read with them", () => {
    const rows: Rows = [
      ["Cow", "Date", "Milk", "Cells"],
      [null, null, "kg", "thousand"],
      ...Array.from({ length: 6 }, (_, row): PlainCell[] => [101 + row, DAY, 25.5 + row, 120 + row]),
    ];
    expect(blocks(rows)[0]).toMatchObject({ headings: ["Cow", "Date", "Milk kg", "Cells thousand"], firstRow: 2 });
    expect(
      guessBook(book(sheet("Milk", rows, { days: [1] }))).sources[0]!.columns.map(({ key, unit }) => [key, unit]),
    ).toEqual([
      // oxfmt-ignore
      ["cow", undefined],
      ["date", undefined],
      ["milkKg", "kg"],
      ["count", "thousand cells/mL"],
    ]);
  });

  test("merged headings over a second row are read with it and said", () => {
    const rows: Rows = [
      ["Cow", "Date", "Left hind", null, "Treatment"],
      [null, null, "Lesion", "Toe mm", null],
      ...Array.from({ length: 6 }, (_, row): PlainCell[] => [101 + row, DAY, "DD", 80 + row, "trim"]),
    ];
    const merges = [{ firstRow: 0, lastRow: 0, firstColumn: 2, lastColumn: 3 }];
    const [source] = guessBook(book(sheet("Feet", rows, { merges, days: [1] }))).sources;
    expect(source!.columns.map(({ key, heading }) => [key, heading])).toEqual([
      ["cow", "Cow"],
      ["date", "Date"],
      ["lesion", "Left hind Lesion"],
      ["toeMm", "Left hind Toe mm"],
      ["treatment", "Treatment"],
    ]);
    expect(source!.remarks).toEqual([
      'Feet: the heading "Left hind" in C1:D1 lies over 2 columns; give each column a heading of its own.',
      "Feet: the headings stand in two rows (1 and 2); they are read together.",
    ]);
  });
});

describe("bad books get a plain sentence", () => {
  const problems = (...sheets: readonly PlainSheet[]): readonly string[] => guessBook(book(...sheets)).problems;

  test("no sheet of cells", () => {
    expect(problems()).toEqual(["The workbook has no sheet of cells."]);
  });

  test("empty, or only pictures", () => {
    expect(problems(sheet("Sheet1", []), sheet("Sheet2", [[null, ""]]))).toEqual([
      "No cell of the workbook holds anything: it is empty, or holds pictures only. Lists must stand in cells.",
    ]);
  });

  test("text only", () => {
    expect(problems(sheet("Letter", [["Dear all"], ["the trimmer comes on Monday"]]))).toEqual([
      "No list was found: a list has its headings side by side in one row and its rows directly below.",
    ]);
  });

  test("lists of something else", () => {
    const rows: Rows = [["Field", "Hectares", "Crop"], ["Long acre", 4.2, "maize"], ["Low field", 6.1, "grass"], ["Hill", 3.3, "maize"]]; // oxfmt-ignore
    expect(problems(sheet("Fields", rows))[0]).toMatch(/^There are lists \(Fields\), but none of cows, findings/);
  });

  test("fifty sheets: the list is found, and the rest is said", () => {
    const empty = Array.from({ length: 49 }, (_, index) => sheet(`Old ${index}`, [["nothing here"]]));
    const { sources, problems: said } = guessBook(
      book(...empty, sheet("Feet", [HEADINGS, ...findings(8)], { days: [1] })),
    );
    expect(sources.map(({ table, sheet: name }) => [table, name])).toEqual([["Findings", "Feet"]]);
    expect(said).toEqual([
      "The workbook has 50 sheets; only those with a list of cows, findings, scores or milk tests are read.",
    ]);
  });

  test("headings without rows are no list", () => {
    expect(guessBook(book(sheet("Feet", [HEADINGS]))).sources).toEqual([]);
  });

  test("days counted from 1904", () => {
    const said = guessBook({
      ...book(sheet("Feet", [HEADINGS, ...findings(8)], { days: [1] })),
      from1904: true,
    }).problems;
    expect(said[0]).toMatch(/^The workbook counts its days from 1904/);
  });
});
