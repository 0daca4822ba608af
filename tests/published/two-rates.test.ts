/**
 * How often chance alone parts two counts, against R 4.2.2: the smaller tail of poisson.test for two counts, doubled.
 * The table comes from oracles/two-rates.R. R sums the tails by another way; the last four of 16 digits differ.
 */
import { chanceOfDifference } from "../../src/core/shared/statistics/two-counts";
import { largestDifference, oracleTable } from "./oracle-table";

test("agrees with R to 1e-11, with counts from 0 to a million", () => {
  const rows = oracleTable("two-rates");
  expect(rows.length).toBeGreaterThan(500);
  const pairs = rows.map(({ cases, atRisk, casesBefore, atRiskBefore, chance }) => {
    return [chanceOfDifference(cases!, casesBefore!, atRisk! / (atRisk! + atRiskBefore!)), chance!] as const;
  });
  // Chances below this are nought for every purpose; relative digits of them are not asked for.
  expect(largestDifference(pairs, 1e-100)).toBeLessThan(1e-11);
});

test("by hand: 5 of 5 where half is expected is twice 1/32, 1 of 1 is certain", () => {
  expect(chanceOfDifference(5, 0, 0.5)).toBeCloseTo(1 / 16, 15);
  expect(chanceOfDifference(0, 5, 0.5)).toBeCloseTo(1 / 16, 15);
  expect(chanceOfDifference(1, 0, 0.5)).toBeCloseTo(1, 14);
});
