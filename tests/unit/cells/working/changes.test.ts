import { cellChange } from "../../../../src/functions/cells/cell-change";
import { cellDryPeriod } from "../../../../src/functions/cells/cell-dry-period";
import { cellStatus } from "../../../../src/functions/cells/cell-status";
import { linkTable } from "../../../../src/functions/cells/link-table";
import { refusal, row, told } from "../call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const times = (number: number, cell: unknown): unknown[][] => Array.from({ length: number }, () => [cell]);

describe("the working of CELL.STATUS", () => {
  test("exactly 200 thousand is high", () => {
    expect(told(cellStatus, 199, 200).steps).toEqual([
      ["Test before", "199 against 200 thousand", "low"],
      ["This test", "200 against 200 thousand", "high"],
      ["Status", "exactly the limit is high", "new"],
    ]);
    expect(told(cellStatus, 200, 199.9).steps).toEqual([
      ["Test before", "200 against 200 thousand", "high"],
      ["This test", "199.9 against 200 thousand", "low"],
      ["Status", "exactly the limit is high", "recovered"],
    ]);
  });

  test("a first test, a limit of one's own, counts in cells/mL", () => {
    expect(told(cellStatus, null, 250_000, 250_000, "cells/mL").steps).toEqual([
      ["Test before", "none", "first test"],
      ["This test", "250 against 250 thousand", "high"],
      ["Status", "exactly the limit is high", "first high"],
    ]);
  });

  test("a blank current test is #N/A, a count in the other unit is refused by its name", () => {
    expect(refusal(cellStatus, 100)).toEqual({
      kind: "unavailable",
      message: "current is blank: enter the cell count of this test",
    });
    const message = (...given: unknown[]): string => refusal(cellStatus, ...given).message;
    expect(message(20_000, 100)).toMatch(/^previous must be below 10000 thousand cells\/mL; got 20000,/);
    expect(message(100, 20_000)).toMatch(/^current must be below 10000 thousand cells\/mL; got 20000,/);
    expect(message(100, 100, 20_000)).toMatch(/^limit must be below 10000 thousand cells\/mL; got 20000,/);
  });
});

describe("the working of CELL.CHANGE", () => {
  test("each kind of row", () => {
    // Low before: 3 low again, 1 new. High before: 2 low now, 1 high again. No test before: 1 high, 1 low. 2 not tested.
    const previous = column(100, 199, 50, 199, 200, 300, 400, null, null, 100, 300);
    const current = column(150, 199, 60, 200, 199, 100, 400, 500, 60, null, "dry");
    expect(told(cellChange, previous, current)).toEqual({
      steps: [
        ["Low before", "3 stayed low + 1 new", "4"],
        ["High before", "2 recovered + 1 lasting", "3"],
        ["Without a test before", "1 high + 1 low", "2"],
        ["Left out", "tested before, not now", "2"],
      ],
      remarks: ["2 rows left out: tested before, not now"],
    });
  });

  test("one row left out, and none", () => {
    expect(told(cellChange, column(100, 100), column(100, null)).remarks).toEqual([
      "1 row left out: tested before, not now",
    ]);
    expect(told(cellChange, column(100, null), column(100, null)).remarks).toEqual([]);
  });

  test("no count at all is named by its argument", () => {
    expect(refusal(cellChange, column(100), column("dry"))).toEqual({
      kind: "unavailable",
      message: "current holds no count: enter at least one",
    });
  });

  test("few cows are said below ten", () => {
    const note = (cows: number): unknown => row(cellChange, "high now", times(cows, 100), times(cows, 100))[6];
    expect([note(9), note(10)]).toEqual(["of cows tested now; few cows", "of cows tested now"]);
  });
});

describe("the working of CELL.DRYPERIOD", () => {
  test("each kind of row", () => {
    const before = column(100, 199, 150, 250, 400, 200, null, 300, 100);
    const after = column(110, 200, 500, 180, 420, 199, 500, null, null);
    expect(told(cellDryPeriod, before, after)).toEqual({
      steps: [
        ["Low before drying off", "1 low again + 2 new", "3"],
        ["High before drying off", "2 cured + 1 high again", "3"],
        ["Left out", "not tested after calving", "2"],
      ],
      remarks: ["2 rows left out: not tested after calving"],
    });
  });

  test("one row left out, and none", () => {
    expect(told(cellDryPeriod, column(100, 100), column(100, null)).remarks).toEqual([
      "1 row left out: not tested after calving",
    ]);
    expect(told(cellDryPeriod, column(100), column(100)).remarks).toEqual([]);
  });

  test("no count after calving is named by its argument", () => {
    expect(refusal(cellDryPeriod, column(100, 200), column(null, "dry"))).toEqual({
      kind: "unavailable",
      message: "firstAfter holds no count: enter at least one",
    });
  });
});

describe("the working of LINK.TABLE", () => {
  test("shares, their ratio with its limits, and the row left out", () => {
    // 3 of 4 over 1 of 2 = 1.5; Katz' limits by R: 0.3357 to 6.7020.
    const lame = column("yes", "lame", "severe", "yes", "no", "sound", null, null);
    const high = column("yes", "high", "new", "no", "lasting", "low", "no", null);
    expect(told(linkTable, lame, high)).toEqual({
      steps: [
        ["Share high of the lame", "3 of 4", "0.75"],
        ["Share high of the others", "1 of 2", "0.5"],
        ["Ratio", "first share / second share", "1.5 (0.34 to 6.7)"],
        ["Left out", "one of the two unknown", "1 row"],
      ],
      remarks: ["1 row left out: one of the two unknown"],
    });
  });

  test("a group without a cow has no share and the table no ratio", () => {
    const { steps, remarks } = told(linkTable, column("no", "no"), column("high", "low"));
    expect(steps).toEqual([
      ["Share high of the lame", "0 of 0", "no cows"],
      ["Share high of the others", "1 of 2", "0.5"],
      ["Ratio", "first share / second share", "none: a group without a high cow"],
      ["Left out", "one of the two unknown", "0 rows"],
    ]);
    expect(remarks).toEqual([]);
  });

  test("a herd without a low cow: the shares are equal, but no limits can be told", () => {
    const [lame, high] = [column("yes", "yes", "no"), times(3, "high")];
    expect(told(linkTable, lame, high).steps[2]).toEqual([
      "Ratio",
      "first share / second share",
      "none: every cow is high",
    ]);
    expect(row(linkTable, "ratio", lame, high)[7]).toBe("no ratio: every cow is high");
    // All lame cows and one of two others: 1 / 0.5 = 2, by R 0.5002 to 7.9969.
    expect(told(linkTable, column("yes", "yes", "no", "no"), column("yes", "yes", "yes", "no")).steps[2]![2]).toBe(
      "2 (0.5 to 8)",
    );
  });

  test("no row with both is #N/A", () => {
    expect(refusal(linkTable, column("yes", null), column(null, "high"))).toEqual({
      kind: "unavailable",
      message: "lame and high hold no row with both: enter at least one cow",
    });
  });

  test("few cows are said below ten in a group, and below five in one of the four places", () => {
    const call = (lameHigh: number, lameLow: number, soundHigh: number, soundLow: number): unknown[] => [
      [...times(lameHigh + lameLow, "yes"), ...times(soundHigh + soundLow, "no")],
      [...times(lameHigh, "yes"), ...times(lameLow, "no"), ...times(soundHigh, "yes"), ...times(soundLow, "no")],
    ];
    const note = (label: string, given: unknown[]): unknown => row(linkTable, label, ...given)[7];
    expect(["lame", "not lame", "all"].map((label) => note(label, call(5, 5, 4, 5)))).toEqual(["", "few cows", ""]);
    expect(note("ratio", call(5, 5, 5, 5))).toBe("association, not cause");
    for (const few of [call(4, 6, 5, 5), call(6, 4, 5, 5), call(5, 5, 4, 6), call(5, 5, 6, 4)])
      expect(note("ratio", few)).toBe("few cows; association, not cause");
  });
});
