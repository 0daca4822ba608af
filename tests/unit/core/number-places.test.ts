import fc from "../../random";
import { NumberPlaces } from "../../../src/core/shared/number-places";

/** What a Map does, which is the definition here. */
function expectLikeMap(numbers: readonly number[]): void {
  const [places, map] = [new NumberPlaces(), new Map<number, number>()];
  const isWrong = (number: number): boolean => places.get(number) !== (map.get(number) ?? -1);
  const wrong: number[] = [];
  for (const number of numbers) {
    if (isWrong(number)) wrong.push(number);
    if (map.has(number)) continue;
    places.add(number, map.size);
    map.set(number, map.size);
  }
  wrong.push(...numbers.filter(isWrong));
  expect(wrong.slice(0, 3)).toEqual([]);
}

test.each([
  ["one after another", (index: number) => index],
  ["ear tags", (index: number) => 276_000_900_000_000 + index],
  ["the same last bits", (index: number) => index * 65_536],
  ["below zero", (index: number) => -index],
  ["fractions", (index: number) => index / 1000],
  ["far apart", (index: number) => 1.7 ** (index % 1200) * (index % 2 === 0 ? 1 : -1)],
])("finds every number again: %s", (_, number) => {
  expectLikeMap(Array.from({ length: 5000 }, (_, index) => number(index)));
});

test("any numbers", () => {
  const numbers = fc.oneof(
    fc.integer(),
    fc.double({ noNaN: true }),
    fc.constantFrom(0, -0, 2 ** 31, -(2 ** 31), 1e308),
  );
  fc.assert(fc.property(fc.array(numbers, { maxLength: 400 }), expectLikeMap));
});

test("0 and -0 are one number, and what is no number is never found", () => {
  const places = new NumberPlaces();
  places.add(-0, 7);
  expect([places.get(0), places.get(-0), places.get(NaN)]).toEqual([7, 7, -1]);
});
