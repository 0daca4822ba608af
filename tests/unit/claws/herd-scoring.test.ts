import { lastHerdScoring } from "../../../src/core/claws/herd-scoring";

const scores = (day: number, cows: number): number[] => Array.from({ length: cows }, () => day);
const lastOf = (dates: readonly number[], upTo?: number): number | undefined => lastHerdScoring(dates, upTo)?.date;

test("a day with few cows is no scoring of the herd, one with more than half of the fullest day's is", () => {
  expect(lastOf([...scores(100, 40), ...scores(114, 30), ...scores(120, 8)])).toBe(114);
  expect(lastOf([...scores(100, 40), ...scores(120, 20)])).toBe(100);
  expect(lastOf([...scores(100, 40), ...scores(120, 21)])).toBe(120);
});

test("a herd that was larger more than a year ago is measured by what it is now", () => {
  expect(lastOf([...scores(100, 200), ...scores(465, 40)])).toBe(465);
  expect(lastOf([...scores(101, 200), ...scores(465, 40)])).toBe(101);
});

test("scores at the chute do not change what an earlier day was", () => {
  const herd = [...scores(101, 200), ...scores(465, 40)];
  expect(lastOf([...herd, ...scores(470, 3)])).toBe(101);
});

test("the last up to a day looks at nothing after it", () => {
  const herd = [...scores(100, 10), ...scores(114, 40), ...scores(128, 12)];
  expect(lastHerdScoring(herd, 127)).toEqual({ date: 114, cows: 40, fullest: 40 });
  expect(lastHerdScoring(herd, 114)).toEqual({ date: 114, cows: 40, fullest: 40 });
  expect(lastHerdScoring(herd, 113)).toEqual({ date: 100, cows: 10, fullest: 10 });
  expect(lastHerdScoring(herd, 99)).toBeUndefined();
});

test("without a score there is no scoring; where single cows alone are scored, they are what there is", () => {
  expect(lastOf([])).toBeUndefined();
  expect(lastOf([NaN])).toBeUndefined();
  expect(lastOf([100, 107])).toBe(107);
});
