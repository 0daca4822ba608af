/**
 * Limits, ratios and sample sizes against R 4.2.2 with epiR 2.0.57. The tables come from oracles/statistics.R.
 * Tolerances: R and we use double precision along different ways, so that the last three or four of 16 digits differ;
 * Wilson limits close to 0 lose more of them to the subtraction, in R as here, and are compared to 1e-12 in absolute
 * terms; R's gamma quantile, behind the Poisson limits, is good to about 1e-12.
 */
import { normalQuantile } from "../../src/core/shared/statistics/normal-quantile";
import { poissonInterval } from "../../src/core/shared/statistics/poisson-interval";
import { relativeRisk, type TwoGroups } from "../../src/core/shared/statistics/relative-risk";
import { sampleSize } from "../../src/core/shared/statistics/sample-size";
import { wilsonInterval } from "../../src/core/shared/statistics/wilson-interval";
import { largestDifference, oracleTable } from "./oracle-table";

/** Cases that each family must have at least. */
const FEWEST_CASES = 500;

test.each(["wilson", "poisson", "incidence", "relative-risk", "sample-size", "normal"])("%s has its cases", (name) => {
  expect(oracleTable(name).length).toBeGreaterThanOrEqual(FEWEST_CASES);
});

test("normal quantiles agree with qnorm to 1e-14", () => {
  const pairs = oracleTable("normal").map(
    ({ probability, quantile }) => [normalQuantile(probability!), quantile!] as const,
  );
  expect(largestDifference(pairs)).toBeLessThan(1e-14);
});

test("Wilson limits agree with epi.conf to 1e-12", () => {
  const pairs = oracleTable("wilson").flatMap(({ cases, of, level, low, high }) => {
    const interval = wilsonInterval(cases!, of!, level!);
    return [[interval.low, low!] as const, [interval.high, high!] as const];
  });
  expect(largestDifference(pairs, 1)).toBeLessThan(1e-12);
});

test("exact Poisson limits agree with R to 1e-11", () => {
  const pairs = oracleTable("poisson").flatMap(({ cases, level, low, high }) => {
    const interval = poissonInterval(cases!, level!);
    return [[interval.low, low!] as const, [interval.high, high!] as const];
  });
  expect(largestDifference(pairs)).toBeLessThan(1e-11);
});

test("incidence rates with exact limits agree with epi.conf to 1e-11", () => {
  const pairs = oracleTable("incidence").flatMap(({ cases, atRisk, rate, low, high }) => {
    const interval = poissonInterval(cases!, 0.95);
    return [
      [cases! / atRisk!, rate!] as const,
      [interval.low / atRisk!, low!] as const,
      [interval.high / atRisk!, high!] as const,
    ];
  });
  expect(largestDifference(pairs)).toBeLessThan(1e-11);
});

test("relative risks with Wald limits agree with epi.2by2 to 1e-12", () => {
  const pairs = oracleTable("relative-risk").flatMap((row) => {
    const risk = relativeRisk(row as unknown as TwoGroups, row["level"]!)!;
    return [[risk.ratio, row["ratio"]!] as const, [risk.low, row["low"]!] as const, [risk.high, row["high"]!] as const];
  });
  expect(largestDifference(pairs)).toBeLessThan(1e-12);
});

test("sample sizes agree with epi.sssimpleestb exactly", () => {
  for (const { population, share, margin, level, size } of oracleTable("sample-size")) {
    expect([population, share, margin, level, sampleSize(population!, share!, margin!, level!)]).toEqual([
      population,
      share,
      margin,
      level,
      size,
    ]);
  }
});
