import { asWords, NO_WORD } from "../../../src/core/shared/words";

test("a list of words becomes each word once and its place a row", () => {
  const { distinct, places } = asWords(["DD", null, "SU", "DD"]);
  expect(distinct).toEqual(["DD", "SU"]);
  expect(Array.from(places)).toEqual([1, NO_WORD, 2, 1]);
});

test("what is in that form already is left as it is", () => {
  const column = { distinct: ["DD"], places: Uint8Array.of(1, NO_WORD), count: 1, areNumbers: false };
  expect(asWords(column)).toBe(column);
});
