import fc from "fast-check";
import { orderByDay } from "../../../src/core/shared/day-order";

test("puts places by day and leaves those of a day as they are given", () => {
  const days = [45_003, 45_001, 45_003, 44_000, 45_001];
  expect([...orderByDay(Int32Array.of(0, 1, 2, 3, 4), days)]).toEqual([3, 1, 4, 0, 2]);
  expect([...orderByDay(Int32Array.of(4, 2, 1), days)]).toEqual([4, 1, 2]);
  expect([...orderByDay(Int32Array.of(), days)]).toEqual([]);
});

test("does what the sort of the language does, which leaves equal ones in place", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 45_000, max: 45_020 })), (days) => {
      const places = days.map((_, place) => place).reverse();
      const sorted = [...places].sort((a, b) => days[a]! - days[b]!);
      expect([...orderByDay(Int32Array.from(places), days)]).toEqual(sorted);
    }),
  );
});
