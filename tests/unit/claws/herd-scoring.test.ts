import { lastHerdScoring } from "../../../src/core/claws/herd-scoring";

const scores = (day: number, cows: number): number[] => Array.from({ length: cows }, () => day);

test("a day with few cows is no scoring of the herd, one with more than half of the fullest day's is", () => {
  expect(lastHerdScoring([...scores(100, 40), ...scores(114, 30), ...scores(120, 8)])).toBe(114);
  expect(lastHerdScoring([...scores(100, 40), ...scores(120, 20)])).toBe(100);
  expect(lastHerdScoring([...scores(100, 40), ...scores(120, 21)])).toBe(120);
});

test("a herd that was larger more than a year ago is measured by what it is now", () => {
  expect(lastHerdScoring([...scores(100, 200), ...scores(465, 40)])).toBe(465);
  expect(lastHerdScoring([...scores(101, 200), ...scores(465, 40)])).toBe(101);
});

test("without a score there is no scoring; where single cows alone are scored, they are what there is", () => {
  expect(lastHerdScoring([])).toBeUndefined();
  expect(lastHerdScoring([100, 107])).toBe(107);
});
