import { day } from "../../../../src/core/shared/days";
import { checkTables } from "../../../../src/herd/check/check-book";
import { LesionWords } from "../../../../src/herd/codes/words";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import { readMapped } from "../../../../src/herd/mapping/read-mapped";
import { resolveMapping } from "../../../../src/herd/mapping/resolve";
import type { PlainSheet } from "../../../../src/workbook/plain-book";
import type { PlainCell } from "../../../../src/workbook/port";
import { book, sheet } from "../plain-sheet";

const AS_OF = day("2026-09-01");
const D = (iso: string): number => day(iso);

function doubts(...sheets: readonly PlainSheet[]) {
  const farm = book(...sheets);
  const tables = resolveMapping(guessBook(farm), farm).sources.map((source) => readMapped(source, new LesionWords()));
  return checkTables(tables, AS_OF, new LesionWords());
}

/** "check: address" of what is found. */
function found(...sheets: readonly PlainSheet[]): readonly string[] {
  return doubts(...sheets).map(({ check, address }) => `${check}: ${address}`);
}

const COWS: readonly PlainCell[][] = Array.from({ length: 12 }, (_, cow) => [100 + cow, D("2021-03-01") + cow, 2, D("2026-01-10") + cow, null]); // oxfmt-ignore

function cows(...rows: readonly PlainCell[][]): PlainSheet {
  return sheet("Cows", [["Cow", "Born", "Lactation", "Calved", "Left"], ...COWS, ...rows], { days: [1, 3, 4] });
}

function milk(...rows: readonly PlainCell[][]): PlainSheet {
  const sound = COWS.map(([cow], row): PlainCell[] => [
    cow!,
    D("2026-05-01"),
    2,
    100 - row,
    25 + row / 2,
    80 + row * 30,
  ]);
  return sheet("Milk", [["Cow", "Test date", "Lactation", "DIM", "Milk kg", "SCC"], ...sound, ...rows], { days: [1] });
}

function feet(...rows: readonly PlainCell[][]): PlainSheet {
  const sound = COWS.map(([cow], row): PlainCell[] => [D("2026-06-01"), cow!, "LH", "outer", "HHE", 75 + row, "hard horn", "trim", null]); // oxfmt-ignore
  return sheet("Feet", [["Date", "Cow", "Foot", "Claw", "Lesion", "Toe mm", "Measured from", "Treatment", "Recheck"], ...sound, ...rows], { days: [0, 8] }); // oxfmt-ignore
}

test("sound lists are not accused", () => {
  expect(found(cows(), milk(), feet())).toEqual([]);
});

describe("what a farm may well write is not accused", () => {
  test.each<[string, PlainSheet[]]>([
    ["notes in place of a number", [milk([101, D("2026-06-01"), 2, "dry", "no sample", "-"])]],
    ["a cow's number as text, with spaces", [cows(), milk([" 101 ", D("2026-06-01"), 2, 130, 24, 90])]],
    ["a test of the lactation before her latest calving", [cows(), milk([101, D("2025-11-01"), 1, 280, 18, 90])]],
    ["the day she left", [cows([130, D("2020-01-01"), 4, D("2025-12-01"), D("2026-05-01")]), milk([130, D("2026-05-01"), 4, 151, 20, 99])]], // oxfmt-ignore
    [
      "two lesions on one claw on one day",
      [feet([D("2026-06-01"), 100, "LH", "outer", "DS", null, null, "trim", null])],
    ],
    [
      "skin lesions without a claw",
      [feet([D("2026-06-05"), 100, "LH", null, "DD", null, null, "topical", D("2026-06-12")])],
    ],
    ["a foot without a lesion and without a place", [feet([D("2026-06-05"), 100, null, null, "none", null, null, "trim", null])]], // oxfmt-ignore
    ["a lesion without a rule and without a recheck", [feet([D("2026-06-05"), 100, "LH", "outer", "HHE", null, null, "trim", null])]], // oxfmt-ignore
    [
      "a recheck that lies ahead",
      [feet([D("2026-08-30"), 100, "LH", null, "DD", null, null, "topical", D("2026-09-30")])],
    ],
    ["pain relief without a medicine's name", [feet([D("2026-06-05"), 100, "LH", "outer", "HHE", null, null, "trim, pain relief", null])]], // oxfmt-ignore
    [
      "a count of 9,998 and one of 1",
      [milk([101, D("2026-06-01"), 2, 130, 24, 9998], [102, D("2026-06-01"), 2, 130, 24, 1])],
    ],
  ])("%s", (_, sheets) => {
    expect(found(...sheets)).toEqual([]);
  });
});

describe("what is doubtful", () => {
  test.each<[string, PlainSheet[], readonly string[]]>([
    ["a treated wart without a recheck", [feet([D("2026-06-05"), 100, "LH", null, "DD", null, null, "topical", null])], ["treatment without recheck: I14"]], // oxfmt-ignore
    ["of two looks at one wart the later one only", [feet([D("2026-06-05"), 100, "LH", null, "DD", null, null, "topical", null], [D("2026-06-15"), 100, "LH", null, "DD", null, null, "topical", null])], ["treatment without recheck: I15"]], // oxfmt-ignore
    ["a medicine named in the treatment", [feet([D("2026-06-05"), 100, "LH", "outer", "HHE", null, null, "trim, ketoprofen", null])], ["withdrawal left blank: H14"]], // oxfmt-ignore
    ["a count in cells among thousands", [milk([101, D("2026-06-01"), 2, 130, 24, 253_000])], ["mixed unit: F14"]],
    ["a toe in cm among mm", [feet([D("2026-06-05"), 100, "LH", "outer", "HHE", 8.4, "hard horn", "trim", null])], ["mixed unit: F14"]], // oxfmt-ignore
    ["the one lactation that does not fit the others", [milk([101, D("2026-06-01"), 1, 130, 24, 90], [101, D("2026-07-01"), 2, 160, 24, 90])], ["lactation going down: C14"]], // oxfmt-ignore
    ["a finding before birth", [cows(), feet([D("2021-02-01"), 105, "LH", "outer", "HHE", null, null, "trim", null])], ["impossible date: A14"]], // oxfmt-ignore
    ["a test before the calving of its lactation", [cows(), milk([101, D("2025-12-20"), 2, 5, 24, 90])], ["impossible date: B14"]], // oxfmt-ignore
    ["one finding typed twice", [feet([D("2026-06-01"), 100, "LH", "outer", "HHE", 75, "hard horn", "trim", null])], ["double row: B14"]], // oxfmt-ignore
    ["a year of long ago", [milk([101, D("1926-06-01"), 2, 130, 24, 90])], ["date out of time: B14"]],
    ["TRUE in place of a number", [milk([101, D("2026-06-01"), 2, 130, true, 90])], ["unreadable cell: E14"]],
  ])("%s", (_, sheets, expected) => {
    expect(found(...sheets)).toEqual(expected);
  });

  test("a list without landmarks is one doubt, not one a row", () => {
    const rows = Array.from({ length: 20 }, (_, row): PlainCell[] => [
      D("2026-06-01") + row,
      100 + row,
      "LH",
      "HHE",
      80,
    ]);
    const [doubt, ...more] = doubts(
      sheet("Feet", [["Date", "Cow", "Foot", "Lesion", "Toe mm"], ...rows], { days: [0] }),
    );
    expect(doubt).toMatchObject({ check: "toe length", address: "E2:E21", cells: 20 });
    expect(more).toEqual([]);
  });

  test("a column of numbers as text is one doubt whose repair names every cell", () => {
    const rows = Array.from({ length: 20 }, (_, row): PlainCell[] => [100 + row, D("2026-05-01"), 2, 50, 25.5, `${80 + row}`]); // oxfmt-ignore
    const [doubt, ...more] = doubts(sheet("Milk", [["Cow", "Test date", "Lactation", "DIM", "Milk kg", "SCC"], ...rows], { days: [1] })); // oxfmt-ignore
    expect(doubt).toMatchObject({ check: "text number", address: "F2:F21", cells: 20 });
    expect(doubt!.repair!.cells.slice(0, 2)).toEqual([
      { address: "F2", from: "80", to: 80 },
      { address: "F3", from: "81", to: 81 },
    ]);
    expect(more).toEqual([]);
  });

  test("scores 1-5 are checked on their own scale", () => {
    const scores = [1, 2, 3, 4, 5, 2.5, 1, 2, 3, 4, 1, 2, 3, 2, 1, 1, 2, 3, 0, 6];
    const rows = scores.map((score, row): PlainCell[] => [D("2026-06-01"), 100 + row, score]);
    expect(found(sheet("Walk", [["Date", "Cow", "Locomotion score"], ...rows], { days: [0] }))).toEqual([
      "score off the scale: C20",
      "score off the scale: C21",
    ]);
  });
});
