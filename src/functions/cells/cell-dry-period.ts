import { tallyTwoTests, type TwoTestTally } from "../../core/cells/two-tests";
import { dohooLeslie1991 } from "../../core/reference/dohoo-leslie-1991";
import { fauteux2014 } from "../../core/reference/fauteux-2014";
import { wilson1927 } from "../../core/reference/wilson-1927";
import type { Column } from "../columns";
import { defineFunction, required } from "../define";
import { counted } from "../figure";
import { cellCounts, columnInThousands, type CountUnit, NO_DIAGNOSIS, noCount, unitParameter } from "./kinds";
import { countRow, limitInThousands, limitParameter, SHARE_COLUMNS, SHARE_HEADINGS, shareRow } from "./kinds-of-tests";

interface Given {
  readonly lastBefore: Column<number>;
  readonly firstAfter: Column<number>;
  readonly limit: number | undefined;
  readonly unit: CountUnit;
}

export const cellDryPeriod = defineFunction({
  id: "CELL.DRYPERIOD",
  group: "Cell counts",
  summary: "Over the dry period: new high cows of those that went dry low, cured ones of those that went dry high.",
  parameters: {
    lastBefore: required(cellCounts, "Cell counts of the last test before drying off, one cow a row"),
    firstAfter: required(cellCounts, "Cell counts of the first test after calving, the same cows in the same rows"),
    limit: limitParameter,
    unit: unitParameter,
  },
  result: { shape: "table", columns: SHARE_COLUMNS },
  sources: [fauteux2014, dohooLeslie1991, wilson1927],
  limits: [
    "Take first tests of 5 to about 40 days in milk: in the first days the count is high by nature.",
    "Published: 0.70 of cows low at both tests, 0.03 high at both (Fauteux 2014); in 33 herds 12.6 % new and 66.9 % cured (Lipkens and others, Flanders).",
    "Cows without a test before (first calvers, or not tested) stand in a row of their own and in no rate.",
    "Lower and upper limit are Wilson's, 95 %.",
  ],
  cautions: [NO_DIAGNOSIS],
  examples: [
    {
      arguments: [
        [[100], [150], [90], [120], [250], [400], [null], [300]],
        [[110], [200], [80], [130], [180], [420], [500], [null]],
      ],
      result: [
        [...SHARE_HEADINGS],
        ["new", 1, 4, 0.25, 0.0456, 0.6994, "of cows low before drying off; few cows"],
        ["cured", 1, 2, 0.5, 0.0945, 0.9055, "of cows high before drying off; few cows"],
        ["low both times", 3, 6, 0.5, 0.1876, 0.8124, "of cows with both tests; few cows"],
        ["high both times", 1, 6, 0.1667, 0.0301, 0.5635, "of cows with both tests; few cows"],
        ["first calvers high", 1, 1, 1, 0.2065, 1, "of cows without a test before; few cows"],
        ["left out", 1, "", "", "", "", "not tested after calving"],
      ],
      decimals: 4,
      origin: "oracle",
      where: "counts by hand; limits by R 4.2.2, prop.test(..., correct = FALSE)",
    },
    {
      arguments: [[[250]], [[199]]],
      result: [
        [...SHARE_HEADINGS],
        ["new", 0, 0, "", "", "", "no cows low before drying off"],
        ["cured", 1, 1, 1, 0.2065, 1, "of cows high before drying off; few cows"],
        ["low both times", 0, 1, 0, 0, 0.7935, "of cows with both tests; few cows"],
        ["high both times", 0, 1, 0, 0, 0.7935, "of cows with both tests; few cows"],
        ["first calvers high", 0, 0, "", "", "", "no cows without a test before"],
        ["left out", 0, "", "", "", "", "not tested after calving"],
      ],
      decimals: 4,
      origin: "hand",
      where: "one cow, high then low; Wilson limit of 0 of 1: 1.96² / (1 + 1.96²) = 0.7935",
    },
  ],
  compute(given, remarks) {
    const tally = read(given);
    if (tally.notTestedNow > 0) remarks.add(`${counted(tally.notTestedNow, "row")} left out: not tested after calving`);
    return [[...SHARE_HEADINGS], ...rowsOf(tally)];
  },
  steps(given) {
    const tally = read(given);
    return [
      {
        label: "Low before drying off",
        working: `${tally.low} low again + ${tally.new} new`,
        value: String(tally.low + tally.new),
      },
      {
        label: "High before drying off",
        working: `${tally.recovered} cured + ${tally.lasting} high again`,
        value: String(tally.recovered + tally.lasting),
      },
      { label: "Left out", working: "not tested after calving", value: String(tally.notTestedNow) },
    ];
  },
});

function read({ lastBefore, firstAfter, limit, unit }: Given): TwoTestTally {
  const after = columnInThousands(firstAfter, unit);
  if (after.every((count) => Number.isNaN(count))) throw noCount("firstAfter");
  return tallyTwoTests(columnInThousands(lastBefore, unit), after, limitInThousands(limit, unit));
}

function rowsOf(tally: TwoTestTally): (string | number | boolean)[][] {
  const { low, recovered, lasting, notTestedNow, new: fresh } = tally;
  const pairs = low + fresh + recovered + lasting;
  const first = tally["first high"] + tally["first low"];
  return [
    shareRow("new", fresh, low + fresh, "cows low before drying off"),
    shareRow("cured", recovered, recovered + lasting, "cows high before drying off"),
    shareRow("low both times", low, pairs, "cows with both tests"),
    shareRow("high both times", lasting, pairs, "cows with both tests"),
    shareRow("first calvers high", tally["first high"], first, "cows without a test before"),
    countRow("left out", notTestedNow, "not tested after calving"),
  ];
}
