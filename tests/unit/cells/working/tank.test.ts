import { day } from "../../../../src/core/shared/days";
import { tankEstimate } from "../../../../src/functions/cells/tank-estimate";
import { tankRolling } from "../../../../src/functions/cells/tank-rolling";
import { tankShares } from "../../../../src/functions/cells/tank-shares";
import { tankWithout } from "../../../../src/functions/cells/tank-without";
import { refusal, table, told } from "../call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const NO_ROW = "counts and milk hold no row with both: enter at least one cow";

// 100 × 30 + 500 × 10 = 8000 thousand in 40 of milk. Two cows with milk and no count, one with a count and no milk.
const counts = column(100, 500, null, "dry", 300, null);
const milk = column(30, 10, 20, 20, null, null);
const ROWS_LEFT_OUT = ["2 rows with milk left out: no count", "1 row with a count left out: no milk"];

describe("the working of TANK.ESTIMATE", () => {
  test("cows left out for each reason", () => {
    expect(told(tankEstimate, counts, milk)).toEqual({
      steps: [
        ["Cows used", "2 left out without a count, 1 without milk", "2"],
        ["Milk", "sum of their milk", "40"],
        ["Cells", "sum of count × milk", "8000"],
        ["Tank", "cells / milk", "200 thousand cells/mL"],
      ],
      remarks: ROWS_LEFT_OUT,
    });
  });

  test("in cells/mL, no cow left out, a count at the cap", () => {
    // 9,999,000 × 10 + 1,000 × 10 = 100,000,000; / 20 = 5,000,000 (a cap of 9,999 thousand).
    expect(told(tankEstimate, column(9_999_000, 1000), column(10, 10), "cells/mL")).toEqual({
      steps: [
        ["Cows used", "0 left out without a count, 0 without milk", "2"],
        ["Milk", "sum of their milk", "20"],
        ["Cells", "sum of count × milk", "100000000"],
        ["Tank", "cells / milk", "5000000 cells/mL"],
      ],
      remarks: ["1 count stands at the laboratory's cap (9,999 thousand): the true figure is that or more"],
    });
  });

  test("no cow with both is #N/A", () => {
    expect(refusal(tankEstimate, column(100, null), column(null, 20))).toEqual({
      kind: "unavailable",
      message: NO_ROW,
    });
  });
});

describe("the working of TANK.SHARES", () => {
  test("names the row with the largest share", () => {
    // 5000 / 8000 = 62.5 %.
    expect(told(tankShares, counts, milk)).toEqual({
      steps: [
        ["Cows used", "2 left out without a count, 1 without milk", "2"],
        ["Cells of all", "sum of count × milk", "8000"],
        ["Largest share", "row 2: her count × milk / all", "62.5 %"],
      ],
      remarks: ROWS_LEFT_OUT,
    });
  });

  test("of equal shares the first row's, wherever the rows left out stand, and in cells/mL", () => {
    const call = [column(null, 200_000, 100_000, 200_000), column(10, 10, 20, 10), "cells/mL"] as const;
    // 2 + 2 + 2 million cells.
    expect(told(tankShares, ...call).steps).toEqual([
      ["Cows used", "1 left out without a count, 0 without milk", "3"],
      ["Cells of all", "sum of count × milk", "6000000"],
      ["Largest share", "row 2: her count × milk / all", "33.3 %"],
    ]);
    expect(table(tankShares, ...call)[0]).toEqual([""]);
  });

  test("the largest may stand first", () => {
    // 9000 / 10000; the smaller below it does not take its place.
    expect(told(tankShares, column(900, 100), column(10, 10)).steps[2]).toEqual([
      "Largest share",
      "row 1: her count × milk / all",
      "90 %",
    ]);
  });

  test("no cow with both is #N/A", () => {
    expect(refusal(tankShares, column(100, null), column(null, 20))).toEqual({ kind: "unavailable", message: NO_ROW });
  });
});

describe("the working of TANK.WITHOUT", () => {
  const cows = column("a", "b", "c", "d", "e", "f");

  test("takes her cells and her milk off", () => {
    expect(told(tankWithout, cows, counts, milk, "b")).toEqual({
      steps: [
        ["Tank with all cows", "8000 / 40 of milk", "200 thousand cells/mL"],
        ["Cow b", "500 × 10", "5000"],
        // 3000 / 30.
        ["Tank without her", "(8000 - 5000) / (40 - 10)", "100 thousand cells/mL"],
      ],
      remarks: ROWS_LEFT_OUT,
    });
  });

  test("the cow in the first row, in cells/mL", () => {
    // 100,000 × 30 + 500,000 × 10 = 8,000,000; without a 5,000,000 / 10.
    const call = [column("a", "b"), column(100_000, 500_000), column(30, 10), "a", "cells/mL"] as const;
    expect(told(tankWithout, ...call)).toEqual({
      steps: [
        ["Tank with all cows", "8000000 / 40 of milk", "200000 cells/mL"],
        ["Cow a", "100000 × 30", "3000000"],
        ["Tank without her", "(8000000 - 3000000) / (40 - 30)", "500000 cells/mL"],
      ],
      remarks: [],
    });
  });

  test("what it cannot answer", () => {
    expect(refusal(tankWithout, column("a"), column(100), column(30), "a")).toEqual({
      kind: "unavailable",
      message: 'no other cow than "a" has a count and milk',
    });
    for (const [cow, place] of [
      ["c", 3],
      ["e", 5],
    ] as const) {
      expect(refusal(tankWithout, cows, counts, milk, cow)).toEqual({
        kind: "unavailable",
        message: `cow "${cow}" has no count or no milk in row ${place}: the tank was reckoned without her`,
      });
    }
    expect(refusal(tankWithout, column("a", "b", "a"), column(1, 2, 3), column(1, 1, 1), "a")).toEqual({
      kind: "invalid",
      message: 'cows must name each cow once (one test day); got "a" in rows 1 and 3',
    });
    expect(refusal(tankWithout, column("a", "a"), column(1, 2), column(1, 1), "a").message).toMatch(/rows 1 and 2$/);
  });
});

describe("the working of TANK.ROLLING", () => {
  const dates = column(...["2024-01-10", "2024-01-20", "2024-02-10", "2024-03-10"].map(day));

  test("every sample, months counted back from the day", () => {
    // 16 December to 15 January holds one sample, 16 January to 15 February two, to 15 March one.
    // Square root of 400 × 100 = 200; fourth root of 100 × 400 × 100 × 400 = 200.
    expect(told(tankRolling, dates, column(100, 400, 100, 400), day("2024-03-15"))).toEqual({
      steps: [
        ["2023-12-16 to 2024-01-15", "1 sample, geometric mean", "100 thousand cells/mL"],
        ["2024-01-16 to 2024-02-15", "2 samples, geometric mean", "200 thousand cells/mL"],
        ["2024-02-16 to 2024-03-15", "1 sample, geometric mean", "400 thousand cells/mL"],
        ["Rolling mean", "geometric mean of every sample", "200 thousand cells/mL"],
      ],
      remarks: [],
    });
  });

  test("calendar months' own means, in cells/mL, a count at the cap", () => {
    // January: square root of 100 × 400 = 200; February 9,999; square root of 200,000 × 9,999,000 = 1,414,142.85 (by R).
    const call = [
      column(100_000, 400_000, 9_999_000, null),
      day("2024-02-29"),
      2,
      "cells/mL",
      "monthly means",
    ] as const;
    expect(told(tankRolling, dates, ...call)).toEqual({
      steps: [
        ["2024-01-01 to 2024-01-31", "2 samples, geometric mean", "200000 cells/mL"],
        ["2024-02-01 to 2024-02-29", "1 sample, geometric mean", "9999000 cells/mL"],
        ["Rolling mean", "geometric mean of the months' means", "1414142.85 cells/mL"],
      ],
      remarks: ["1 count stands at the laboratory's cap (9,999 thousand): the true figure is that or more"],
    });
  });

  test("a count without its day is refused; a day without a count is left alone", () => {
    expect(refusal(tankRolling, column(day("2024-01-10"), null), column(100, 200), day("2024-01-31"), 1)).toEqual({
      kind: "invalid",
      message: "dates row 2 must be a date, since counts row 2 holds a count; got a blank",
    });
    expect(told(tankRolling, column(day("2024-01-10"), null), column(100, null), day("2024-01-31"), 1).steps).toEqual([
      ["2024-01-01 to 2024-01-31", "1 sample, geometric mean", "100 thousand cells/mL"],
      ["Rolling mean", "geometric mean of every sample", "100 thousand cells/mL"],
    ]);
  });

  test("a month without a sample is #N/A", () => {
    expect(refusal(tankRolling, dates, column(100, 400, null, 400), day("2024-03-31"), 2)).toEqual({
      kind: "unavailable",
      message: "counts holds no sample from 2024-02-01 to 2024-02-29: a rolling mean takes at least one a month",
    });
  });
});
