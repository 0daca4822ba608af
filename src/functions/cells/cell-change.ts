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
  readonly previous: Column<number>;
  readonly current: Column<number>;
  readonly limit: number | undefined;
  readonly unit: CountUnit;
}

export const cellChange = defineFunction({
  id: "CELL.CHANGE",
  group: "Cell counts",
  summary:
    "From one test day to the next: new high cows of those that were low, recovered ones of those that were high.",
  parameters: {
    previous: required(cellCounts, "Cell counts of the test day before, one cow a row"),
    current: required(cellCounts, "Cell counts of this test day, the same cows in the same rows"),
    limit: limitParameter,
    unit: unitParameter,
  },
  result: { shape: "table", columns: SHARE_COLUMNS },
  sources: [fauteux2014, dohooLeslie1991, wilson1927],
  limits: [
    "A rate is one of the time between the two tests, not of a month; published means a month are 0.11 new and 0.27 recovered (Fauteux 2014).",
    "Both tests must be of the same lactation: leave the earlier count of fresh cows blank.",
    "Lower and upper limit are Wilson's, 95 %.",
  ],
  cautions: [NO_DIAGNOSIS],
  examples: [
    {
      arguments: [
        [[100], [150], [90], [120], [250], [400], [null], [null], [300], [200]],
        [[110], [200], [80], [130], [180], [420], [500], [60], [null], [199]],
      ],
      result: [
        [...SHARE_HEADINGS],
        ["new", 1, 4, 0.25, 0.0456, 0.6994, "of cows low before; few cows"],
        ["recovered", 2, 3, 0.6667, 0.2077, 0.9385, "of cows high before; few cows"],
        ["lasting", 1, 7, 0.1429, 0.0257, 0.5131, "of cows with both tests; few cows"],
        ["stayed low", 3, 7, 0.4286, 0.1582, 0.7495, "of cows with both tests; few cows"],
        ["first high", 1, 2, 0.5, 0.0945, 0.9055, "of cows without a test before; few cows"],
        ["high now", 3, 9, 0.3333, 0.1206, 0.6458, "of cows tested now; few cows"],
        ["left out", 1, "", "", "", "", "tested before, not now"],
      ],
      decimals: 4,
      origin: "oracle",
      where: "counts by hand (exactly 200 is high); limits by R 4.2.2, prop.test(..., correct = FALSE)",
    },
    {
      arguments: [[[null], [100_000]], [[null], [300_000]], 250_000, "cells/mL"],
      result: [
        [...SHARE_HEADINGS],
        ["new", 1, 1, 1, 0.2065, 1, "of cows low before; few cows"],
        ["recovered", 0, 0, "", "", "", "no cows high before"],
        ["lasting", 0, 1, 0, 0, 0.7935, "of cows with both tests; few cows"],
        ["stayed low", 0, 1, 0, 0, 0.7935, "of cows with both tests; few cows"],
        ["first high", 0, 0, "", "", "", "no cows without a test before"],
        ["high now", 1, 1, 1, 0.2065, 1, "of cows tested now; few cows"],
        ["left out", 0, "", "", "", "", "tested before, not now"],
      ],
      decimals: 4,
      origin: "hand",
      where: "one cow, low then high; Wilson limit of 0 of 1: 1.96² / (1 + 1.96²) = 0.7935",
    },
  ],
  compute(given, remarks) {
    const tally = read(given);
    if (tally.notTestedNow > 0) remarks.add(`${counted(tally.notTestedNow, "row")} left out: tested before, not now`);
    return [[...SHARE_HEADINGS], ...rowsOf(tally)];
  },
  steps(given) {
    const tally = read(given);
    return [
      {
        label: "Low before",
        working: `${tally.low} stayed low + ${tally.new} new`,
        value: String(tally.low + tally.new),
      },
      {
        label: "High before",
        working: `${tally.recovered} recovered + ${tally.lasting} lasting`,
        value: String(tally.recovered + tally.lasting),
      },
      {
        label: "Without a test before",
        working: `${tally["first high"]} high + ${tally["first low"]} low`,
        value: String(tally["first high"] + tally["first low"]),
      },
      { label: "Left out", working: "tested before, not now", value: String(tally.notTestedNow) },
    ];
  },
});

function read({ previous, current, limit, unit }: Given): TwoTestTally {
  const now = columnInThousands(current, unit);
  if (now.every((count) => Number.isNaN(count))) throw noCount("current");
  return tallyTwoTests(columnInThousands(previous, unit), now, limitInThousands(limit, unit));
}

function rowsOf(tally: TwoTestTally): (string | number | boolean)[][] {
  const { low, recovered, lasting, notTestedNow, new: fresh } = tally;
  const pairs = low + fresh + recovered + lasting;
  const first = tally["first high"] + tally["first low"];
  return [
    shareRow("new", fresh, low + fresh, "cows low before"),
    shareRow("recovered", recovered, recovered + lasting, "cows high before"),
    shareRow("lasting", lasting, pairs, "cows with both tests"),
    shareRow("stayed low", low, pairs, "cows with both tests"),
    shareRow("first high", tally["first high"], first, "cows without a test before"),
    shareRow("high now", fresh + lasting + tally["first high"], pairs + first, "cows tested now"),
    countRow("left out", notTestedNow, "tested before, not now"),
  ];
}
