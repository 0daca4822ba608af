/** A herd of ten worked by hand, with the mistakes that a sheet invites beside it. Counts in thousand cells/mL. */
import { cellHerdLoss } from "../../src/functions/cells/cell-herd-loss";
import { cellLactationLoss } from "../../src/functions/cells/cell-lactation-loss";
import { cellLoss } from "../../src/functions/cells/cell-loss";
import { cellMean } from "../../src/functions/cells/cell-mean";
import { cellScore } from "../../src/functions/cells/cell-score";
import { cellSummary } from "../../src/functions/cells/cell-summary";
import { tankEstimate } from "../../src/functions/cells/tank-estimate";
import { tankShares } from "../../src/functions/cells/tank-shares";
import { tankWithout } from "../../src/functions/cells/tank-without";
import type { FunctionSpec } from "../../src/functions/define";
import { evaluate } from "../../src/functions/evaluate";

/** cow, lactation, milk, count, score, loss a day in kg by the three models, share of the tank's cells in %. */
const herd: readonly (readonly [string, number, number, number | null, ...number[]])[] = [
  ["A1", 1, 24.0, 38, 1.6041, 0, 0, 0, 1.3],
  ["A2", 1, 26.5, 95, 2.926, 0.315, 0.37, 0.769, 3.7],
  ["A3", 1, 22.0, 210, 4.0704, 0.704, 0.828, 1.718, 6.8],
  ["B1", 2, 34.0, 50, 2.0, 0, 0, 0, 2.5],
  ["B2", 3, 36.0, 25, 1.0, 0, 0, 0, 1.3],
  ["B3", 2, 30.0, 200, 4.0, 1.361, 1.2, 1.66, 8.8],
  ["B4", 4, 28.0, 400, 5.0, 2.041, 1.8, 2.49, 16.5],
  ["B5", 5, 25.0, 1600, 7.0, 3.402, 3.0, 4.15, 59.0],
  ["B6", 3, 31.0, 0],
  ["B7", 2, 33.0, null],
];
const cows = herd.map(([cow]) => [cow]);
const lactations = herd.map(([, lactation]) => [lactation]);
const milk = herd.map(([, , yielded]) => [yielded]);
const counts = herd.map(([, , , count]) => [count]);
const tested = herd.filter(([, , , count]) => count !== 0 && count !== null);

const value = (spec: FunctionSpec, ...raw: unknown[]): number => evaluate(spec, raw).value as number;
const summary = (days: number): ReadonlyMap<unknown, unknown> =>
  new Map(
    (evaluate(cellSummary, [counts, lactations, milk, days, 1]).value as unknown[][]).map(([figure, figureValue]) => [
      figure,
      figureValue,
    ]),
  );

test.each(tested)("%s: score, loss by three models", (...row) => {
  const [, lactation, , count, score, extension, hortetSeegers, luo] = row as unknown as [string, ...number[]];
  expect(value(cellScore, count)).toBeCloseTo(score!, 4);
  expect(value(cellLoss, count, lactation, null, null, "kg")).toBeCloseTo(extension!, 3);
  expect(value(cellLoss, count, lactation, "Hortet-Seegers 1998", null, "kg")).toBeCloseTo(hortetSeegers!, 3);
  expect(value(cellLoss, count, lactation, "Luo 2022", null, "kg")).toBeCloseTo(luo!, 3);
});

test("shares of the tank's cells, blank for the cows without a count", () => {
  const shares = evaluate(tankShares, [counts, milk]).value as (number | string)[][];
  herd.forEach((row, index) => {
    const share = shares[index]![0]!;
    if (row.length === 4) expect(share).toBe("");
    else expect((share as number) * 100).toBeCloseTo(row[8] as number, 1);
  });
});

test("averages and tank", () => {
  expect(summary(305).get("cows with a count")).toBe(8);
  expect(summary(305).get("left out")).toBe(2);
  expect(summary(305).get("mean count")).toBeCloseTo(327.25, 10);
  expect(summary(305).get("mean score")).toBeCloseTo(3.4501, 4);
  expect(value(cellMean, counts)).toBeCloseTo(136.61, 2);
  expect(value(tankEstimate, counts, milk)).toBeCloseTo(300.88, 2);
  expect(value(tankWithout, cows, counts, milk, "B5")).toBeCloseTo(138.9, 2);
});

test.each([
  ["US extension table", 7.823, 2772, 2317],
  ["Hortet-Seegers 1998", 7.199, 2551, 2132],
  ["Luo 2022", 10.787, 3823, 3194],
])("%s: %d kg a day, %d litres over 365 days, %d over 305", (model, kgPerDay, litres365, litres305) => {
  expect(value(cellHerdLoss, counts, lactations, 1, model, null, "kg")).toBeCloseTo(kgPerDay, 3);
  expect(Math.round(value(cellHerdLoss, counts, lactations, 365, model))).toBe(litres365);
  expect(Math.round(value(cellHerdLoss, counts, lactations, 305, model))).toBe(litres305);
});

test("the mistake of putting the tank's count in for every cow gives 11.45 kg a day, 46 % too much", () => {
  const tank = value(tankEstimate, counts, milk);
  const wrong = tested.reduce((sum, [, lactation]) => sum + value(cellLoss, tank, lactation, null, null, "kg"), 0);
  expect(wrong).toBeCloseTo(11.45, 2);
  expect(wrong / value(cellHerdLoss, counts, lactations, 1, null, null, "kg")).toBeCloseTo(1.46, 2);
});

describe("a lactation of five tests: 50, 50, 50, 50, 1600", () => {
  const tests = [[50], [50], [50], [50], [1600]];

  test("scores averaged: 3.0, 400 lb in a later lactation", () => {
    const meanScore = value(cellScore, value(cellMean, tests));
    expect(meanScore).toBeCloseTo(3, 10);
    expect(value(cellLactationLoss, meanScore, 2, null, "lb")).toBeCloseTo(400, 8);
  });

  test("counts averaged first, the mistake: 360 thousand, 4.848, 1,139 lb", () => {
    const wrongScore = value(cellScore, 360);
    expect(wrongScore).toBeCloseTo(4.848, 3);
    expect(Math.round(value(cellLactationLoss, wrongScore, 2, null, "lb"))).toBe(1139);
  });
});
