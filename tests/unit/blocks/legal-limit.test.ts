import { legalLimit } from "../../../src/blocks/cells/legal-limit";
import { bothSides, figure } from "./both-sides";
import { AS_OF_DAY, smallBook } from "./small-books";

jest.setTimeout(60_000);

const LATEST = AS_OF_DAY - 10;

/** Tests of one cow so many days before the latest, each with her count; null for no milk. */
async function sidesOf(counts: readonly (readonly [daysBefore: number, count: number, milkKg?: null])[]) {
  const tests = counts.map(([days, count, milkKg = 30]) => ({ date: LATEST - days, cow: 1, lactation: 2, milkKg, count })); // oxfmt-ignore
  const sides = await bothSides(smallBook({ tests }), AS_OF_DAY, undefined, undefined, [legalLimit]);
  expect(sides.differences).toEqual([]);
  return sides;
}

test("every test of the three months is in the mean, also where there was one every fortnight", async () => {
  // Seven tests; the two oldest high. Seventh root of 1600² × 100⁵ = 100 × 256^(1/7) = 220.8.
  const sides = await sidesOf([0, 14, 28, 42, 56, 70, 84].map((days) => [days, days >= 70 ? 1600 : 100]));
  expect(figure(sides, "legal-limit", "rolling")).toBeCloseTo(100 * 256 ** (1 / 7), 6);
  expect(figure(sides, "legal-limit", "against")).toBe("not above");
});

test("tests before the three months are not in it, whatever is wrong with them", async () => {
  // Cube root of 200 × 300 × 450.
  const sides = await sidesOf([[0, 450], [31, 300], [61, 200], [95, 5000], [125, 100, null]]); // oxfmt-ignore
  expect(figure(sides, "legal-limit", "rolling")).toBeCloseTo(300, 9);
});

test("more tests than there is room for are no mean of some of them", async () => {
  const sides = await sidesOf(Array.from({ length: 15 }, (_, index) => [index * 5, 100]));
  const sentence = "There are more than 14 tests in those 3 months: the mean of them all cannot be told here.";
  expect(figure(sides, "legal-limit", "rolling")).toBe(sentence);
  expect(figure(sides, "legal-limit", "against")).toBe(sentence);
});
