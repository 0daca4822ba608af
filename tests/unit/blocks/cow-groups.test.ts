import type { InputValues } from "../../../src/blocks/compute";
import { groupBlocks } from "../../../src/blocks/herd/blocks";
import type { PlainCell } from "../../../src/workbook/port";
import { type BothSides, bothSides, figure } from "./both-sides";
import { AS_OF_DAY, SETTINGS, smallBook, soundFindings } from "./small-books";

jest.setTimeout(120_000);

/** The year up to the day before AsOf is 46035 to 46399, 365 days. */
const cows = [
  { cow: 1, lactation: 1, entered: 46_000, calved: 46_000 },
  // In her first lactation for the 100 days from 46035 to 46134.
  { cow: 2, lactation: 2, entered: 45_000, calved: 46_135 },
  { cow: 3, lactation: 3, entered: 44_000, calved: 46_200 },
  // Bought after her second calving: 165 days from 46235 to 46399.
  { cow: 4, lactation: 2, entered: 46_235, calved: 46_100 },
  // A heifer.
  { cow: 5, entered: 45_500 },
  // Left on the tenth day.
  { cow: 6, lactation: 1, entered: 46_000, calved: 46_000, left: 46_044 },
] as const;

type CowRow = Readonly<Record<string, PlainCell>>;

function sidesOf(
  rows: readonly CowRow[],
  given: InputValues = {},
  without: readonly string[] = [],
): Promise<BothSides> {
  const book = smallBook({ cows: rows, findings: soundFindings, settings: SETTINGS, without });
  return bothSides(book, AS_OF_DAY, undefined, undefined, [...groupBlocks.values()].flat(), given);
}

function daysAtRisk(sides: BothSides): readonly unknown[] {
  return ["first", "later"].map((name) => figure(sides, `lesion-rates-${name}`, "cowDays"));
}

test("the days of first and later lactations are each cow's own", async () => {
  const sides = await sidesOf(cows);
  expect(sides.differences).toEqual([]);
  expect(daysAtRisk(sides)).toEqual([365 + 100 + 10, 265 + 365 + 165]);
  expect(sides.laidOut.get("lesion-rates-later")!.cells.flat().map((cell) => cell?.value)).toContainEqual(
    expect.stringMatching(/neither a lactation nor a calving are taken for heifers/),
  ); // oxfmt-ignore
});

test("a cow that calved and has no lactation is neither first nor later", async () => {
  const sides = await sidesOf(cows.map((row) => (row.cow === 3 ? { ...row, lactation: null } : row)));
  expect(sides.differences).toEqual([]);
  const sentence = expect.stringMatching(/^A cow that has calved has no lactation under Cows/) as unknown;
  expect(daysAtRisk(sides)).toEqual([sentence, sentence]);
});

test("one that left before the period needs none", async () => {
  const sides = await sidesOf([...cows, { cow: 7, entered: 45_000, calved: 45_000, left: 46_034 }]);
  expect(sides.differences).toEqual([]);
  expect(daysAtRisk(sides)).toEqual([475, 795]);
});

test("a second lactation without its calving is refused", async () => {
  const sides = await sidesOf(cows.map((row) => (row.cow === 2 ? { ...row, calved: null } : row)));
  expect(sides.differences).toEqual([]);
  const sentence = expect.stringMatching(/^A cow in her second lactation has no day of calving/) as unknown;
  expect(daysAtRisk(sides)).toEqual([sentence, sentence]);
});

test("a period in which a cow of many lactations may have been in her first is refused", async () => {
  const sides = await sidesOf(cows, { from: 45_600, to: 45_900 });
  expect(sides.differences).toEqual([]);
  const sentence = expect.stringMatching(/holds only her latest calving: choose a later first day/) as unknown;
  expect(daysAtRisk(sides)).toEqual([sentence, sentence]);
});

test("a list without lactations has no days of theirs, on either side", async () => {
  const sides = await sidesOf(cows, {}, ["Cows lactation"]);
  expect(sides.differences).toEqual([]);
  expect(daysAtRisk(sides)).toEqual(["Cows has no column Lactation.", "Cows has no column Lactation."]);
});
