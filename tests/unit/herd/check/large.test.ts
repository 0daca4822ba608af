import { day } from "../../../../src/core/shared/days";
import { checkBook } from "../../../../src/herd/check/check-book";
import type { PlainCell } from "../../../../src/workbook/port";
import { book, sheet } from "../plain-sheet";

const AS_OF = day("2026-09-01");
const COWS = 2000;
/** A machine that does other things meanwhile is given this much more. */
const PATIENCE = 3;

const cows = Array.from({ length: COWS }, (_, cow): PlainCell[] => [1000 + cow, AS_OF - 1500, 2, AS_OF - 400, null]);
const milk = Array.from({ length: 40_000 }, (_, row): PlainCell[] => [
  1000 + (row % COWS),
  AS_OF - 400 + Math.floor(row / COWS) * 14,
  2,
  Math.floor(row / COWS) * 14,
  25 + (row % 90) / 10,
  40 + ((row * 37) % 700),
]);
const feet = Array.from({ length: 20_000 }, (_, row): PlainCell[] => [
  AS_OF - 390 + (row % 380),
  1000 + ((row * 7) % COWS),
  ["LH", "RH"][row % 2]!,
  "outer",
  ["DD", "SU", "none", "WL", "hairy wart"][row % 5]!,
  70 + (row % 25),
  "hard horn",
  "trim",
  AS_OF - 380 + (row % 380),
  `seen in round ${row}`,
]);

const farm = book(
  sheet("Herd", [["Cow", "Born", "Lactation", "Calved", "Left"], ...cows], { table: "Herd", days: [1, 3, 4] }),
  sheet("Milk", [["Cow", "Test date", "Lactation", "DIM", "Milk kg", "SCC"], ...milk], { days: [1] }),
  sheet("Feet", [["Date", "Cow", "Foot", "Claw", "Lesion", "Toe length", "Measured from", "Treatment", "Recheck", "Notes"], ...feet], { days: [0, 8] }), // oxfmt-ignore
);

test("60,000 rows are checked in less than 2 seconds", () => {
  const started = performance.now();
  const { tables, doubts } = checkBook(farm, AS_OF);
  const milliseconds = performance.now() - started;
  expect(tables.reduce((sum, { content }) => sum + content.rows.length, 0)).toBe(62_000);
  expect(doubts.map(({ check, cells }) => [check, cells])).toEqual([["unknown lesion", 4000]]);
  expect(milliseconds).toBeLessThan(2000 * PATIENCE);
});
