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

/** First count, thousand cells/mL, of each class as fact sheets print the ranges (0-17, 18-34, 35-70 ...), from memory. */
const classStarts: readonly (readonly [score: number, thousandPerMl: number])[] = [
  [1, 18],
  [2, 35],
  [3, 71],
  [4, 141],
  [5, 283],
  [6, 566],
  [7, 1131],
  [8, 2263],
  [9, 4526],
];

/** Working by hand: log2(count / 100) + 3, to three decimals. */
const byHand: readonly (readonly [thousandPerMl: number, score: number])[] = [
  [10, -0.322],
  [12.5, 0],
  [50, 2],
  [100, 3],
  [150, 3.585],
  [200, 4],
  [250, 4.322],
  [300, 4.585],
  [400, 5],
  [500, 5.322],
  [750, 5.907],
  [1000, 6.322],
];

describe("somatic cell score against the printed table", () => {
  test.each(midpoints)("score %d has its midpoint at %d thousand", (score, thousandPerMl) => {
    expect(scoreOfCount(thousandPerMl)).toBeCloseTo(score, 12);
    expect(countOfScore(score)).toBeCloseTo(thousandPerMl, 9);
  });

  test.each(classStarts)("class %d begins at %d thousand, as printed in whole thousands", (score, thousandPerMl) => {
    const edge = countOfScore(score - 0.5);
    expect(Math.round(edge)).toBeGreaterThanOrEqual(thousandPerMl - 1);
    expect(Math.abs(edge - thousandPerMl)).toBeLessThan(0.55);
  });

  test.each(byHand)("%d thousand is score %d", (thousandPerMl, score) => {
    expect(scoreOfCount(thousandPerMl)).toBeCloseTo(score, 3);
  });
});
