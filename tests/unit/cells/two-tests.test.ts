import { cellChange } from "../../../src/functions/cells/cell-change";
import { cellDryPeriod } from "../../../src/functions/cells/cell-dry-period";
import { cellStatus } from "../../../src/functions/cells/cell-status";
import { linkTable } from "../../../src/functions/cells/link-table";
import { refusal, remarks, row, table, value } from "./call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const times = (number: number, cell: unknown): unknown[] => Array<unknown>(number).fill(cell);

describe("CELL.STATUS", () => {
  test.each([
    [100, 100, "low"],
    [100, 200, "new"],
    [200, 100, "recovered"],
    [200, 200, "lasting"],
    [null, 200, "first high"],
    [0, 100, "first low"],
  ])("%p then %d is %s", (previous, current, status) => {
    expect(value(cellStatus, previous, current)).toBe(status);
  });

  test("without this test's count it is #N/A", () => {
    expect(refusal(cellStatus, 100, null)).toEqual({
      kind: "unavailable",
      message: "current is blank: enter the cell count of this test",
    });
  });

  test("the limit is in the unit of the counts", () => {
    expect(value(cellStatus, 100_000, 260_000, 250_000, "cells/mL")).toBe("new");
    expect(refusal(cellStatus, 100_000, 260_000, 250, "cells/mL").message).toContain(
      "limit must be 1000 cells/mL or more",
    );
    expect(refusal(cellStatus, 100, 260, 250_000).message).toContain("limit must be below 10000 thousand");
  });

  test("a mix-up of units in either test is named", () => {
    expect(refusal(cellStatus, 100_000, 260).message).toMatch(/^previous must be below/);
    expect(refusal(cellStatus, 100, 260_000).message).toMatch(/^current must be below/);
  });
});

describe("CELL.CHANGE", () => {
  test("cows tested before and not now are left out and counted", () => {
    const call = [column(100, 100, 300), column(300, null, "sold")] as const;
    expect(row(cellChange, "left out", ...call)[1]).toBe(2);
    expect(remarks(cellChange, ...call)).toEqual(["2 rows left out: tested before, not now"]);
    expect(row(cellChange, "new", ...call).slice(1, 4)).toEqual([1, 1, 1]);
  });

  test("without a count of this test day it is #N/A", () => {
    expect(refusal(cellChange, column(100), column(null)).kind).toBe("unavailable");
  });

  test("the number of rows is always the same, so that a cell can point to one", () => {
    expect(table(cellChange, column(null), column(100)).map(([figure]) => figure)).toEqual([
      "figure", "new", "recovered", "lasting", "stayed low", "first high", "high now", "left out",
    ]); // oxfmt-ignore
  });
});

describe("CELL.DRYPERIOD", () => {
  test("new of those dry and low, cured of those dry and high; first calvers apart", () => {
    const before = column(...times(10, 100), ...times(10, 300), ...times(10, null));
    const after = column(
      ...times(2, 300),
      ...times(8, 100),
      ...times(3, 300),
      ...times(7, 100),
      ...times(4, 300),
      ...times(6, 100),
    );
    expect(row(cellDryPeriod, "new", before, after).slice(1, 4)).toEqual([2, 10, 0.2]);
    expect(row(cellDryPeriod, "cured", before, after).slice(1, 4)).toEqual([7, 10, 0.7]);
    expect(row(cellDryPeriod, "low both times", before, after).slice(1, 4)).toEqual([8, 20, 0.4]);
    expect(row(cellDryPeriod, "high both times", before, after).slice(1, 4)).toEqual([3, 20, 0.15]);
    expect(row(cellDryPeriod, "first calvers high", before, after).slice(1, 4)).toEqual([4, 10, 0.4]);
  });
});

describe("LINK.TABLE", () => {
  test("takes the words of LAME.STATE and CELL.STATUS", () => {
    const lame = column("lame", "severe", "sound", "sound", "sound");
    const high = column("new", "low", "first high", "recovered", "lasting");
    expect(row(linkTable, "lame", lame, high).slice(1, 4)).toEqual([1, 1, 2]);
    expect(row(linkTable, "not lame", lame, high).slice(1, 4)).toEqual([2, 1, 3]);
  });

  test("a word it does not know, a number and TRUE are refused with the row", () => {
    for (const odd of ["lameish", 1, true]) {
      expect(refusal(linkTable, column("lame", odd), column("high", "low")).message).toMatch(/^lame row 2 must be/);
    }
  });

  test("a blank, or a 0 that stands for one, is not 'no'", () => {
    const call = [column("lame", 0, null, "sound"), column("high", "low", "high", "low")] as const;
    expect(row(linkTable, "all", ...call).slice(1, 4)).toEqual([1, 1, 2]);
    expect(remarks(linkTable, ...call)).toEqual(["2 rows left out: one of the two unknown"]);
  });

  test("says association, not cause, and calls small numbers few", () => {
    const small = row(
      linkTable,
      "ratio",
      column("lame", "lame", "sound", "sound"),
      column("high", "low", "high", "low"),
    );
    expect(small.slice(4, 5)).toEqual([1]);
    expect(small[7]).toBe("few cows; association, not cause");
    const lame = column(...times(20, "lame"), ...times(20, "sound"));
    const high = column(...times(10, "high"), ...times(10, "low"), ...times(5, "high"), ...times(15, "low"));
    expect(row(linkTable, "ratio", lame, high)[7]).toBe("association, not cause");
  });

  test("gives no ratio where a group has no high cow, or no cow", () => {
    const noHigh = row(linkTable, "ratio", column("lame", "sound"), column("low", "high"));
    expect(noHigh.slice(4)).toEqual(["", "", "", "no ratio: a group without a high cow"]);
    expect(row(linkTable, "lame", column("sound"), column("high"))).toEqual(["lame", 0, 0, 0, "", "", "", "no cows"]);
  });
});
