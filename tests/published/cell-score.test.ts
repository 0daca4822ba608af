import { countOfScore, scoreOfCount } from "../../src/core/cells/score";

/** Table of scores and their midpoints. Source: Ali & Shook 1980, Shook 1993 (from memory). */
const midpoints: readonly (readonly [score: number, thousandPerMl: number])[] = [
  [0, 12.5],
  [1, 25],
  [2, 50],
  [3, 100],
  [4, 200],
  [5, 400],
  [6, 800],
  [7, 1600],
  [8, 3200],
  [9, 6400],
];

describe("somatic cell score against the printed table", () => {
  test.each(midpoints)("score %d has its midpoint at %d thousand", (score, thousandPerMl) => {
    expect(scoreOfCount(thousandPerMl)).toBeCloseTo(score, 12);
    expect(countOfScore(score)).toBeCloseTo(thousandPerMl, 9);
  });
});
