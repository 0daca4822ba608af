import { day } from "../../../src/core/shared/days";
import { tankEstimate } from "../../../src/functions/cells/tank-estimate";
import { tankRolling } from "../../../src/functions/cells/tank-rolling";
import { tankShares } from "../../../src/functions/cells/tank-shares";
import { tankWithout } from "../../../src/functions/cells/tank-without";
import { refusal, remarks, table, value } from "./call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

describe("TANK.ESTIMATE", () => {
  test("takes cows with both count and milk, and says which it leaves out", () => {
    const call = [column(100, null, 500, 300, "dry"), column(30, 20, 10, null, null)] as const;
    expect(value(tankEstimate, ...call)).toBeCloseTo(200, 10);
    expect(remarks(tankEstimate, ...call)).toEqual([
      "1 row with milk left out: no count",
      "1 row with a count left out: no milk",
    ]);
  });

  test("is #N/A without any such cow", () => {
    expect(refusal(tankEstimate, column(100, null), column(null, 20)).kind).toBe("unavailable");
  });

  test("stays in the unit of the counts, and any unit of milk serves", () => {
    expect(value(tankEstimate, column(100_000, 500_000), column(30, 10), "cells/mL")).toBeCloseTo(200_000, 6);
    expect(value(tankEstimate, column(100, 500), column(66, 22))).toBeCloseTo(200, 10);
  });

  test("refuses milk that is no day's milk", () => {
    expect(refusal(tankEstimate, column(100), column(9500)).message).toContain("milk row 1 must be");
    expect(refusal(tankEstimate, column(100), column(-1)).kind).toBe("invalid");
  });
});

describe("TANK.SHARES", () => {
  test("add up to 1 and stay blank where count or milk is missing", () => {
    const shares = table(tankShares, column(100, null, 500, 300), column(30, 20, 10, null)).map(([share]) => share);
    expect(shares).toEqual([0.375, "", 0.625, ""]);
  });
});

describe("TANK.WITHOUT", () => {
  const counts = column(100, 500, null);
  const milk = column(30, 10, 20);

  test("a cow number matches its text", () => {
    expect(value(tankWithout, column(114, 115, 116), counts, milk, "115")).toBeCloseTo(100, 10);
  });

  test("an unknown cow, or one without a count, is #N/A", () => {
    expect(refusal(tankWithout, column("a", "b", "c"), counts, milk, "d")).toEqual({
      kind: "unavailable",
      message: 'cow "d" is not in cows',
    });
    expect(refusal(tankWithout, column("a", "b", "c"), counts, milk, "c").message).toContain(
      "no count or no milk in row 3",
    );
  });

  test("a cow in two rows is refused: the list holds more than one test day", () => {
    expect(refusal(tankWithout, column("a", "b", "b"), column(1, 2, 3), milk, "b").message).toBe(
      'cows must name each cow once (one test day); got "b" in rows 2 and 3',
    );
  });

  test("the last cow cannot be left out", () => {
    expect(refusal(tankWithout, column("a"), column(100), column(30), "a").kind).toBe("unavailable");
  });
});

describe("TANK.ROLLING", () => {
  const dates = ["2023-12-20", "2024-01-10", "2024-02-10", "2024-03-10"].map((iso) => [day(iso)]);

  test("months are counted back from the day, or are those of the calendar", () => {
    // 16 December to 15 March holds all four; January to March the last three.
    const counts = column(10, 200, 200, 200);
    expect(value(tankRolling, dates, counts, day("2024-03-15"))).toBeCloseTo((10 * 200 ** 3) ** 0.25, 8);
    expect(value(tankRolling, dates, counts, day("2024-03-15"), null, null, "monthly means")).toBeCloseTo(200, 8);
  });

  test("at the end of a month both ways take the same samples, a leap February included", () => {
    const samples = ["2023-11-30", "2023-12-01", "2024-01-31", "2024-02-29", "2024-03-01"].map((iso) => [day(iso)]);
    const counts = column(9000, 100, 100, 100, 9000);
    for (const way of ["all samples", "monthly means"]) {
      expect(value(tankRolling, samples, counts, day("2024-02-29"), 3, null, way)).toBeCloseTo(100, 8);
    }
  });

  test("a month without a sample is named, not passed over", () => {
    expect(refusal(tankRolling, dates, column(1, 2, null, 4), day("2024-03-31"))).toEqual({
      kind: "unavailable",
      message: "counts holds no sample from 2024-02-01 to 2024-02-29: a rolling mean takes at least one a month",
    });
  });

  test("a count without a day is refused with its row; a day without a count is no sample", () => {
    const open = [...dates.slice(0, 3), [null]];
    expect(refusal(tankRolling, open, column(1, 2, 3, 4), day("2024-03-31")).message).toContain(
      "dates row 4 must be a date",
    );
    expect(value(tankRolling, dates, column(null, 100, 200, 400), day("2024-03-31"))).toBeCloseTo(200, 8);
  });

  test("equal counts give that count, not a hair more: at 400 the limit of 400 is held", () => {
    for (const count of [200, 400, 399, 150.5]) {
      expect(value(tankRolling, dates.slice(1), column(count, count, count), day("2024-03-31"))).toBe(count);
    }
    expect(value(tankRolling, dates.slice(1), column(200, 300, 450), day("2024-03-31"))).toBe(300);
  });

  test("one month is that month's geometric mean; 13 months are refused", () => {
    expect(value(tankRolling, dates, column(1, 2, 3, 400), day("2024-03-31"), 1)).toBeCloseTo(400, 8);
    expect(refusal(tankRolling, dates, column(1, 2, 3, 4), day("2024-03-31"), 13).kind).toBe("invalid");
  });

  test("samples after the day do not count", () => {
    const later = [...dates, [day("2024-03-20")]];
    expect(value(tankRolling, later, column(100, 100, 100, 100, 9000), day("2024-03-15"))).toBeCloseTo(100, 8);
  });
});
