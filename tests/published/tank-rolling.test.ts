import { FENLON_TABLE_2 } from "../../src/core/reference/fenlon-2017";
import { day } from "../../src/core/shared/days";
import { cellMean } from "../../src/functions/cells/cell-mean";
import { tankRolling } from "../../src/functions/cells/tank-rolling";
import { evaluate } from "../../src/functions/evaluate";

/** Fenlon 2017, table 2: a sample herd's first three months, seasonally adjusted counts, both ways of the rolling mean. */
const { january, february, march, monthlyGeometricMeans } = FENLON_TABLE_2;
/** The table gives months, not days: the samples are set to the 1st, 5th, 9th ... of theirs. */
const samples = [
  ["2013-01-", january],
  ["2013-02-", february],
  ["2013-03-", march],
] as const;
const dates = samples.flatMap(([month, counts]) =>
  counts.map((_, index) => [day(month + String(1 + 4 * index).padStart(2, "0"))]),
);
const counts = samples.flatMap(([, month]) => month.map((count) => [count]));
const upTo = day("2013-03-31");

test.each(samples.map(([month, list], index) => [month, list, monthlyGeometricMeans[index]!] as const))(
  "geometric mean of %s",
  (_, list, printed) => {
    expect(evaluate(cellMean, [list.map((count) => [count])]).value).toBeCloseTo(printed, 2);
  },
);

test("method 1, the months' own means: 270.79", () => {
  const { value } = evaluate(tankRolling, [dates, counts, upTo, 3, null, "monthly means"]);
  expect(value).toBeCloseTo(FENLON_TABLE_2.rollingOfMonthlyMeans, 2);
});

test("method 2, every sample alike: 278.51", () => {
  const { value } = evaluate(tankRolling, [dates, counts, upTo, 3, null, "all samples"]);
  expect(value).toBeCloseTo(FENLON_TABLE_2.rollingOfAllResults, 2);
});
