import { computeBlock } from "../../../src/blocks/compute";
import { BlockData } from "../../../src/blocks/data";
import { blockOf } from "../../../src/blocks/gallery";
import type { PlainCell } from "../../../src/workbook/port";
import { bothSides, figure, specOf } from "./both-sides";
import { tablesOf } from "./sheet-side";
import { AS_OF_DAY, SETTINGS, smallBook } from "./small-books";

jest.setTimeout(60_000);

const block = (id: string) => [blockOf(id)];

test("over the dry period a test without a count is passed over, and two counts of a day are no sum", async () => {
  const calved = 46_200;
  const test = (cow: PlainCell, date: number, count: PlainCell) => ({ cow, date, count });
  const book = smallBook({
    settings: SETTINGS,
    cows: [1, 2, 3, 4, 5].map((cow) => ({ cow, calved })),
    tests: [
      // High before; dry, without a count; too soon after calving; low.
      test(1, 46_100, 300), test(1, 46_150, null), test(1, 46_201, 900), test(1, 46_210, 100),
      // Twice in one test, low; then no sample; then high.
      test(2, 46_100, 120), test(2, 46_100, 120), test(2, 46_206, "no sample"), test(2, 46_240, 400),
      // Low both times.
      test(3, 46_100, 150), test(3, 46_210, 120),
      // First tested after calving, and never after it.
      test(4, 46_210, 90),
      test(5, 46_100, 90),
    ], // oxfmt-ignore
  });
  const sides = await bothSides(book, AS_OF_DAY, undefined, undefined, block("dry-period"));
  expect(sides.differences).toEqual([]);
  const rows = figure(sides, "dry-period", "dry") as unknown[][];
  expect(rows.slice(1).map(([what, cows, of]) => [what, cows, of])).toEqual([
    ["new", 1, 2],
    ["cured", 1, 1],
    ["low both times", 1, 3],
    ["high both times", 0, 3],
    ["first calvers high", 0, 1],
    ["left out", 1, ""],
  ]);
});

describe("how many cows were looked at", () => {
  const cows = [
    { cow: 101, calved: 46_000 },
    // The last day of the period is 46399.
    { cow: 102, calved: 46_000, left: 46_400 },
    { cow: 103, calved: 46_000, left: 46_399 },
    { cow: 104, calved: 46_000, dryOff: 46_399 },
    { cow: 105, calved: 46_000, dryOff: 46_400 },
    { cow: 106, calved: 46_000, dryOff: 45_990 },
    { cow: 107, calved: 46_400 },
  ] as const;
  const findings = ["101", 102, 103].map((cow) => ({ cow, date: 46_100, lesion: "none" }));
  const sidesOf = (rows: readonly Readonly<Record<string, PlainCell>>[]) =>
    bothSides(smallBook({ cows: rows, findings, settings: SETTINGS }), AS_OF_DAY, undefined, undefined, block("coverage")); // oxfmt-ignore

  test("a cow whose number is written as text is the same cow", async () => {
    const sides = await sidesOf(cows);
    expect(sides.differences).toEqual([]);
    // In milk are 101, 102, 105 and 106; of these 101 and 102 were looked at.
    expect(["milking", "examined", "share"].map((part) => figure(sides, "coverage", part))).toEqual([4, 2, 0.5]);
  });

  test.each([
    ["left", "Left", "sold"],
    ["dryOff", "Dry-off", "yes"],
  ])("words in place of a day (%s) are refused, since they do not tell when", async (key, heading, words) => {
    const sides = await sidesOf(cows.map((row) => (row.cow === 103 ? { ...row, [key]: words } : row)));
    expect(sides.differences).toEqual([]);
    expect(figure(sides, "coverage", "milking")).toBe(
      `Cows, ${heading}, row 3 below the headings, must be a day or blank; got "${words}".`,
    );
  });

  test("without a cow in milk there is no share, and no word on whether it is enough", async () => {
    const sides = await sidesOf(cows.slice(2, 4));
    expect(sides.differences).toEqual([]);
    expect(["milking", "share", "enough"].map((part) => figure(sides, "coverage", part))).toEqual([
      0,
      "no milking cow on the last day",
      "no milking cow on the last day",
    ]);
  });
});

test("a lame cow whose number is written as text is found among the tests", async () => {
  const scores = ["101", 102, 103].map((cow, index) => ({ cow, date: 46_390, score: index === 0 ? 3 : 0 }));
  const tests = [101, 102, 103].map((cow, index) => ({ cow, date: 46_390, count: index === 0 ? 400 : 50 }));
  const book = smallBook({ scores, tests, settings: SETTINGS });
  const sides = await bothSides(book, AS_OF_DAY, undefined, undefined, block("lame-and-high"));
  expect(sides.differences).toEqual([]);
  const rows = figure(sides, "lame-and-high", "link") as unknown[][];
  // High, low, and cows in all.
  expect(rows.slice(1, 4).map((row) => row.slice(0, 4))).toEqual([
    ["lame", 1, 0, 1],
    ["not lame", 0, 2, 2],
    ["all", 1, 2, 3],
  ]);
});

test("a day that shows an error is told with its place", () => {
  const findings = [46_100, "#N/A"].map((date) => ({ cow: 1, date, lesion: "DD" }));
  const data = new BlockData({ tables: tablesOf(smallBook({ findings })), asOf: AS_OF_DAY, scale: "0-3" });
  const { parts } = computeBlock(blockOf("against-before"), data, specOf);
  const told = parts.find(({ part }) => part.id === "listFrom")!;
  expect(told.kind === "refused" && told.sentence).toBe(
    "Findings, Date, row 2 below the headings, shows #N/A: mend that cell first.",
  );
});
