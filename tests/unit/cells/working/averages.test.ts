import { cellCount } from "../../../../src/functions/cells/cell-count";
import { cellMean } from "../../../../src/functions/cells/cell-mean";
import { cellScore } from "../../../../src/functions/cells/cell-score";
import { refusal, told } from "../call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

describe("the working of CELL.COUNT", () => {
  test("a score of 5 is 100 thousand doubled twice", () => {
    expect(told(cellCount, 5).steps).toEqual([["Count", "100 × 2^(5 - 3)", "400 thousand cells/mL"]]);
  });
  test("in cells/mL", () => {
    // 100,000 × 2^-1.
    expect(told(cellCount, 2, "cells/mL").steps).toEqual([["Count", "100,000 × 2^(2 - 3)", "50000 cells/mL"]]);
  });
  test("a mean score is shown with four decimals", () => {
    // 2^0.12345 × 100 = 108.934 (by R).
    expect(told(cellCount, 3.12345).steps).toEqual([["Count", "100 × 2^(3.1235 - 3)", "108.93 thousand cells/mL"]]);
  });
});

describe("the working of CELL.SCORE", () => {
  test("in thousand", () => {
    // log2(0.25) + 3 = 1.
    expect(told(cellScore, 25)).toEqual({
      steps: [
        ["Count", "25 thousand", "25 thousand cells/mL"],
        ["Score", "log2(25 / 100) + 3", "1"],
      ],
      remarks: [],
    });
  });
  test("in cells/mL", () => {
    expect(told(cellScore, 400_000, "cells/mL").steps).toEqual([
      ["Count", "400000 cells/mL", "400 thousand cells/mL"],
      ["Score", "log2(400 / 100) + 3", "5"],
    ]);
  });
  test("a count at the cap is said", () => {
    expect(told(cellScore, 9999).remarks).toEqual([
      "1 count stands at the laboratory's cap (9,999 thousand): the true figure is that or more",
    ]);
  });
  test("a count in the other unit is refused by its name", () => {
    expect(refusal(cellScore, 10_000).message).toBe(
      'count must be below 10000 thousand cells/mL; got 10000, which looks like cells/mL: give "cells/mL" as the unit',
    );
    expect(refusal(cellScore, 0.0009).message).toBe(
      "count must be a number from 0.001 to 100000000 (a count of cells; no milk holds more, and less than one per mL is none); got 0.0009",
    );
  });
});

describe("the working of CELL.MEAN", () => {
  test("blanks and notes are told apart from counts", () => {
    // Scores 3 and 4: mean 3.5; 100 × 2^0.5 = 141.42. Arithmetic mean 150.
    expect(told(cellMean, column(100, 200, null, 0, "dry"))).toEqual({
      steps: [
        ["Counts used", "5 rows, 3 blank or without a count", "2"],
        ["Mean score", "mean of log2(count / 100) + 3", "3.5"],
        ["Geometric mean", "100 × 2^(3.5 - 3)", "141.42 thousand cells/mL"],
        ["For comparison, the arithmetic mean", "sum of the counts / their number", "150 thousand cells/mL"],
      ],
      remarks: ["1 row left out: a note instead of a count"],
    });
  });

  test("one cow, in cells/mL", () => {
    expect(told(cellMean, column(400_000), "cells/mL")).toEqual({
      steps: [
        ["Counts used", "1 row, 0 blank or without a count", "1"],
        ["Mean score", "mean of log2(count / 100) + 3", "5"],
        ["Geometric mean", "100,000 × 2^(5 - 3)", "400000 cells/mL"],
        ["For comparison, the arithmetic mean", "sum of the counts / their number", "400000 cells/mL"],
      ],
      remarks: [],
    });
  });

  test("several notes, several counts at the cap", () => {
    expect(told(cellMean, column(9999, 9999, "dry", "dry", "sold")).remarks).toEqual([
      "3 rows left out: a note instead of a count",
      "2 counts stand at the laboratory's cap (9,999 thousand): the true figure is that or more",
    ]);
  });

  test("nothing but blanks and notes is #N/A", () => {
    expect(refusal(cellMean, column(null, "dry", 0))).toEqual({
      kind: "unavailable",
      message: "counts holds no count: enter at least one",
    });
  });
});

describe("a column of counts in two units", () => {
  test.each([
    [column(100, 10_000), null, "counts row 2 must be below 10000 thousand cells/mL; got 10000, which looks like cells/mL: a column must hold one unit throughout"], // oxfmt-ignore
    [column(10_000, null, 20_000), null, 'counts row 1 must be below 10000 thousand cells/mL; got 10000, which looks like cells/mL: give "cells/mL" as the unit'], // oxfmt-ignore
    [column(1000, 999), "cells/mL", "counts row 2 must be 1000 cells/mL or more; got 999, which looks like thousands: a column must hold one unit throughout"], // oxfmt-ignore
    [column(null, 200, 300), "cells/mL", 'counts row 2 must be 1000 cells/mL or more; got 200, which looks like thousands: give "thousand" as the unit'], // oxfmt-ignore
  ])("%j in %j is refused with its row", (counts, unit, message) => {
    expect(refusal(cellMean, counts, unit)).toEqual({ kind: "invalid", message });
  });
  test("the limits themselves are taken", () => {
    expect(told(cellMean, column(9999.9)).steps[0]![2]).toBe("1");
    expect(told(cellMean, column(1000), "cells/mL").steps[2]![2]).toBe("1000 cells/mL");
  });
});
