import { DAILY_MODELS } from "../../../src/core/cells/loss-models";
import { largestLosses } from "../../../src/core/cells/top-cows";
import { cellHerdLoss } from "../../../src/functions/cells/cell-herd-loss";
import { cellHerdCost } from "../../../src/functions/cells/cell-herd-cost";
import { cellSummary } from "../../../src/functions/cells/cell-summary";
import { cellTop } from "../../../src/functions/cells/cell-top";
import { explain } from "../../../src/functions/evaluate";
import { refusal, remarks, row, table, value } from "./call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

describe("CELL.TOP", () => {
  const cows = column(11, 12, 13, 14, 15);
  const counts = column(400, 400, 50, 1600, null);
  const lactations = column(1, 2, 3, 1, 2);
  const milk = column(20, 25, 30, null, 30);

  test("sorts by milk lost, not by count", () => {
    // Doublings × slope: 3 × 0.4, 3 × 0.6, 0, 5 × 0.4.
    const rows = table(cellTop, cows, counts, lactations, milk, 10, 0.5, "Hortet-Seegers 1998", null, "kg").slice(1);
    expect(rows.map(([cow]) => cow)).toEqual(["14", "12", "11"]);
    expect(rows.map((cells) => Number((cells[2] as number).toFixed(6)))).toEqual([2, 1.8, 1.2]);
    expect(rows.map((cells) => Number((cells[4] as number).toFixed(6)))).toEqual([0.4, 0.36, 0.24]);
  });

  test("a cow without milk has no share of the tank", () => {
    const [, first] = table(cellTop, cows, counts, lactations, milk, 1, 0.5, "Hortet-Seegers 1998");
    expect(first!.slice(5)).toEqual(["", ""]);
  });

  test("equal losses keep the order of the rows, and no more than asked are listed", () => {
    const same = table(cellTop, cows, column(100, 100, 100, 100, 100), column(2, 2, 2, 2, 2), milk, 3, 1).slice(1);
    expect(same.map(([cow]) => cow)).toEqual(["11", "12", "13"]);
  });

  test("says who is left out, and when nobody is above 50 thousand", () => {
    expect(remarks(cellTop, cows, counts, lactations, milk, 2, 1)).toEqual(["1 row left out: no count"]);
    expect(remarks(cellTop, column(1), column(40), column(2), column(20), 2, 1)).toEqual([
      "no cow is above 50 thousand cells/mL",
    ]);
  });

  test("refuses a nameless cow, a cow twice, a cow without a lactation", () => {
    const call = (names: unknown[], lactation: unknown): string =>
      refusal(cellTop, column(...names), column(100, 200), column(2, lactation), column(20, 20), 2, 1).message;
    expect(call(["a", null], 2)).toContain("cows row 2 must name the cow, since counts row 2 holds a count");
    expect(call(["a", "a"], 2)).toBe('cows must name each cow once (one test day); got "a" in rows 1 and 2');
    expect(call(["a", "b"], null)).toContain("got a blank or 0 in row 2");
  });

  test("picks the largest without sorting what is not asked for", () => {
    // Doublings above 50: 1, 3, 0, 3, 2; at 2 kg each 18 kg together.
    const model = { ...DAILY_MODELS[0], first: 2, later: 2 };
    const largest = (counted: number[], number: number) =>
      largestLosses(
        counted,
        counted.map(() => 2),
        model,
        number,
      );
    const herd = [100, NaN, 400, 50, 400, 200];
    expect(largest(herd, 3).most.map(({ row: index }) => index)).toEqual([2, 4, 5]);
    expect(largest(herd, 3).totalKg).toBe(18);
    expect(largest(herd, 99).most).toHaveLength(4);
    expect(largest([NaN, 50], 3)).toEqual({ most: [], totalKg: 0 });
  });
});

describe("CELL.SUMMARY", () => {
  const call = [
    column(38, 95, 210, 50, 25, 200, 400, 1600, 0, null, null),
    column(1, 1, 1, 2, 3, 2, 4, 5, 3, 2, null),
    column(24, 26.5, 22, 34, 36, 30, 28, 25, 31, 33, null),
    305,
    0.45,
  ] as const;
  const [counts, lactations] = call;
  const figure = (label: string): number => row(cellSummary, label, ...call)[1] as number;

  test("its central milk and money are those of CELL.HERDLOSS and CELL.HERDCOST", () => {
    expect(figure("milk lost, central")).toBeCloseTo(value(cellHerdLoss, counts, lactations, 305), 9);
    expect(figure("money lost, central")).toBeCloseTo(value(cellHerdCost, counts, lactations, 305, 0.45), 9);
    expect(figure("milk lost, high")).toBeCloseTo(value(cellHerdLoss, counts, lactations, 305, "Luo 2022"), 9);
  });

  test("low, central and high are in order, and the two lactation groups make the central figure", () => {
    expect(figure("milk lost, low")).toBeLessThan(figure("milk lost, central"));
    expect(figure("milk lost, central")).toBeLessThan(figure("milk lost, high"));
    expect(figure("of it first lactation") + figure("of it later lactations")).toBeCloseTo(
      figure("milk lost, central"),
      9,
    );
  });

  test("counts the cows listed and left out; a row blank throughout is no cow", () => {
    expect(figure("cows listed")).toBe(10);
    expect(figure("left out")).toBe(2);
    expect(row(cellSummary, "tank estimate", ...call)[3]).toBe(
      "8 cows, weighted by milk; 2 cows with milk have no count",
    );
  });

  test("gives the share of high cows with its limits, and calls few cows few", () => {
    // 210, 200, 400 and 1600 of eight: R 4.2.2 prop.test(4, 8, correct = FALSE) gives 0.2152 to 0.7848.
    expect(figure("high cows")).toBe(4);
    expect(row(cellSummary, "share high", ...call).slice(1)).toEqual([
      0.5,
      "share",
      "95 % limits 0.22 to 0.78; few cows",
    ]);
  });

  test("counts in cells/mL come back in cells/mL", () => {
    const cells = counts.map(([count]) => [typeof count === "number" ? count * 1000 : count]);
    const inCells = row(cellSummary, "geometric mean", cells, ...call.slice(1), "cells/mL");
    expect(inCells[1] as number).toBeCloseTo(1000 * figure("geometric mean"), 6);
    expect(inCells[2]).toBe("cells/mL");
  });

  test("without any count it is #N/A", () => {
    expect(refusal(cellSummary, column(null, 0), column(1, 2), column(20, 20), 305, 1).kind).toBe("unavailable");
  });

  test("explains low, central and high with slopes and models", () => {
    const { steps } = explain(cellSummary, call);
    expect(steps.map(({ label }) => label)).toEqual(
      expect.arrayContaining(["Milk lost, low", "Milk lost, central", "Milk lost, high", "Money"]),
    );
    expect(steps.find(({ label }) => label === "Milk lost, high")!.working).toContain("Luo 2022");
  });
});

describe("days", () => {
  test("must be given: no year is assumed", () => {
    expect(refusal(cellHerdLoss, column(200), column(2), null)).toEqual({
      kind: "unavailable",
      message: "days is blank: enter a whole number from 1 to 366 days",
    });
  });

  test.each([-1, 0.5, 366.5, 367, 3650])("%d is refused", (days) => {
    expect(refusal(cellHerdLoss, column(200), column(2), days).message).toMatch(
      /^days must be a whole number from 1 to 366/,
    );
  });

  test("above 305 it says that all cows must be in milk on all of them", () => {
    expect(remarks(cellHerdLoss, column(200), column(2), 305)).toEqual([]);
    expect(remarks(cellHerdLoss, column(200), column(2), 306)[0]).toContain("only if every cow in the list is in milk");
    expect(row(cellSummary, "days", column(200), column(2), column(20), 365, 1)[3]).toContain(
      "only right if every cow",
    );
  });
});

describe("long columns", () => {
  test("5,000 cows at 1,600 thousand and 5,000 heifers at 100 lose what one of each loses, 5,000 times", () => {
    const cows = Array.from({ length: 10_000 }, (_, index) => index % 2 === 0);
    const counts = cows.map((isCow) => [isCow ? 1600 : 100]);
    const lactations = cows.map((isCow) => [isCow ? 3 : 1]);
    // 5 doublings × 0.6 kg and 1 doubling × 0.4 kg.
    const loss = value(cellHerdLoss, counts, lactations, 1, "Hortet-Seegers 1998", null, "kg");
    expect(loss).toBeCloseTo(5000 * (3 + 0.4), 6);
  });

  test("a million rows give a figure", () => {
    const rows = 1_000_000;
    const counts = Array.from({ length: rows }, (_, index) => [index % 3 === 0 ? 9999 : 200]);
    const lactations = Array.from({ length: rows }, () => [2]);
    const perDay = (333_334 * Math.log2(9999 / 50) + 666_666 * 2) * 0.6;
    const loss = value(cellHerdLoss, counts, lactations, 1, "Hortet-Seegers 1998", null, "kg");
    expect(loss / perDay).toBeCloseTo(1, 12);
  });
});
