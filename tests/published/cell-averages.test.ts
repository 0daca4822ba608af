/**
 * Averages, tank estimate, scores and milk loss of 600 random herds against R 4.2.2 (oracles/cells-herds.R).
 * Tolerance 1e-12: R goes by natural and common logarithms, we by log2, so a handful of roundings of 2^-53 differ in
 * each sum of up to nine cows; small differences of logarithms near 50 thousand lose some digits, hence not 1e-15.
 */
import { DAILY_MODELS } from "../../src/core/cells/loss-models";
import { evaluate } from "../../src/functions/evaluate";
import { cellHerdLoss } from "../../src/functions/cells/cell-herd-loss";
import { cellMean } from "../../src/functions/cells/cell-mean";
import { cellScore } from "../../src/functions/cells/cell-score";
import { cellSummary } from "../../src/functions/cells/cell-summary";
import { tankEstimate } from "../../src/functions/cells/tank-estimate";
import { largestDifference, oracleTable } from "./oracle-table";

const TOLERANCE = 1e-12;

interface Cows {
  readonly counts: number[][];
  readonly lactations: number[][];
  readonly milk: number[][];
}

const herds = oracleTable("cells-herds");
const cowsByHerd = new Map<number, Cows>();
for (const { herd, count, lactation, milk } of oracleTable("cells-cows")) {
  const cows = cowsByHerd.get(herd!) ?? { counts: [], lactations: [], milk: [] };
  cowsByHerd.set(herd!, cows);
  cows.counts.push([count!]);
  cows.lactations.push([lactation!]);
  cows.milk.push([milk!]);
}

function pairs(figure: string, compute: (cows: Cows) => unknown): (readonly [number, number])[] {
  return herds.map((row) => [compute(cowsByHerd.get(row["herd"]!)!) as number, row[figure]!] as const);
}

test("there are at least 500 herds", () => {
  expect(herds.length).toBeGreaterThanOrEqual(500);
  expect(cowsByHerd.size).toBe(herds.length);
});

test("geometric means agree, in thousands and in cells/mL", () => {
  expect(largestDifference(pairs("geometric", ({ counts }) => evaluate(cellMean, [counts]).value))).toBeLessThan(
    TOLERANCE,
  );
  const inCells = pairs("geometric", ({ counts }) => {
    const cells = counts.map(([count]) => [count! * 1000]);
    return (evaluate(cellMean, [cells, "cells/mL"]).value as number) / 1000;
  });
  expect(largestDifference(inCells)).toBeLessThan(TOLERANCE);
});

test("the mean of CELL.SCORE over the cows agrees with R's mean score", () => {
  const scores = pairs("score", ({ counts }) => {
    const all = counts.map(([count]) => evaluate(cellScore, [count]).value as number);
    return all.reduce((sum, score) => sum + score, 0) / all.length;
  });
  expect(largestDifference(scores, 1)).toBeLessThan(TOLERANCE);
});

test("arithmetic means of CELL.SUMMARY agree", () => {
  const means = pairs("arithmetic", ({ counts, lactations, milk }) => {
    const rows = evaluate(cellSummary, [counts, lactations, milk, 305, 1]).value as unknown[][];
    return rows.find(([figure]) => figure === "mean count")![1];
  });
  expect(largestDifference(means)).toBeLessThan(TOLERANCE);
});

test("milk-weighted tank estimates agree", () => {
  const estimates = pairs("tank", ({ counts, milk }) => evaluate(tankEstimate, [counts, milk]).value);
  expect(largestDifference(estimates)).toBeLessThan(TOLERANCE);
});

test.each([
  ["US extension table", "extension"],
  ["Hortet-Seegers 1998", "hortetSeegers"],
  ["Koldeweij 1999", "koldeweij"],
  ["Luo 2022", "luo"],
  ["Potter 2018", "potter"],
])("herd loss by %s agrees", (model, figure) => {
  const losses = pairs(
    figure,
    ({ counts, lactations }) => evaluate(cellHerdLoss, [counts, lactations, 1, model, null, "kg"]).value,
  );
  expect(largestDifference(losses, 0.1)).toBeLessThan(TOLERANCE);
});

test("every daily model is among those compared", () => {
  expect(DAILY_MODELS.map(({ name }) => name).sort()).toEqual(
    ["US extension table", "Hortet-Seegers 1998", "Koldeweij 1999", "Luo 2022", "Potter 2018"].sort(),
  );
});
