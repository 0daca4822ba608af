/** The mistakes that milk tests invite, one by one: each must be refused or reckoned right, never look right and be wrong. */
import { USUAL_LIMIT_THOUSAND } from "../../../src/core/cells/high-counts";
import { DAILY_MODELS, LACTATION_MODELS } from "../../../src/core/cells/loss-models";
import { scoreOfCount } from "../../../src/core/cells/score";
import { cellChange } from "../../../src/functions/cells/cell-change";
import { cellHerdCost } from "../../../src/functions/cells/cell-herd-cost";
import { cellHerdLoss } from "../../../src/functions/cells/cell-herd-loss";
import { cellLactationLoss } from "../../../src/functions/cells/cell-lactation-loss";
import { cellLoss } from "../../../src/functions/cells/cell-loss";
import { cellMean } from "../../../src/functions/cells/cell-mean";
import { cellScore } from "../../../src/functions/cells/cell-score";
import { cellStatus } from "../../../src/functions/cells/cell-status";
import { cellSummary } from "../../../src/functions/cells/cell-summary";
import { tankEstimate } from "../../../src/functions/cells/tank-estimate";
import { evaluate } from "../../../src/functions/evaluate";
import { remarks, refusal, row, value } from "./call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

describe("0, blank, a dash or a word is no count", () => {
  test.each([0, null, "", "  "])("alone, %p gives #N/A and not 0", (blank) => {
    for (const spec of [cellScore, cellLoss]) {
      expect(refusal(spec, blank, 2)).toMatchObject({ kind: "unavailable" });
      expect(refusal(spec, blank, 2).message).toMatch(/^count is blank: enter/);
    }
  });

  test.each(["-", "dry", "not tested"])("alone, the text %p is refused", (text) => {
    expect(refusal(cellLoss, text, 2)).toMatchObject({ kind: "invalid" });
  });

  test("in a column such rows stay out of the average, and the loss says how many cows have no count", () => {
    const counts = column(100, 0, null, "-", "dry", 400);
    const lactations = column(1, 2, 3, 2, 2, 2);
    expect(value(cellMean, counts)).toBeCloseTo(200, 10);
    expect(value(cellHerdLoss, counts, lactations, 10, "Hortet-Seegers 1998", null, "kg")).toBeCloseTo(22, 10);
    expect(remarks(cellHerdLoss, counts, lactations, 10)).toContain("4 rows left out: no count");
  });

  test("rows blank in every column are no cows", () => {
    expect(remarks(cellHerdLoss, column(100, null, 0), column(1, null, 0), 10)).toEqual([]);
  });
});

describe("9999 is the laboratory's cap", () => {
  test("it is used, and counted as capped", () => {
    expect(value(cellScore, 9999)).toBeCloseTo(9.6437, 4);
    expect(remarks(cellScore, 9999)[0]).toContain("cap");
    expect(remarks(cellHerdLoss, column(9999, 100), column(2, 2), 10)).toContain(
      "1 count stands at the laboratory's cap (9,999 thousand): the true figure is that or more",
    );
    const capped = row(
      cellSummary,
      "counts at the cap",
      column(9999, 9999, 80),
      column(1, 2, 2),
      column(20, 20, 20),
      305,
      1,
    );
    expect(capped[1]).toBe(2);
    expect(capped[3]).toContain("or more");
  });

  test("in cells/mL the cap is 9,999,000", () => {
    expect(remarks(cellMean, column(9_999_000, 100_000), "cells/mL")[0]).toContain("1 count stands");
    expect(remarks(cellMean, column(9_998_000, 12_000_000), "cells/mL")).toEqual([]);
  });

  test("it dominates the tank and hardly moves the geometric mean", () => {
    const [counts, milk] = [column(100, 100, 100, 9999), column(30, 30, 30, 30)];
    expect(value(tankEstimate, counts, milk)).toBeCloseTo(2574.75, 2);
    expect(value(cellMean, counts)).toBeCloseTo(100 * 99.99 ** 0.25, 8);
  });
});

describe("units of the count", () => {
  test("cells/mL taken for thousands are refused with the likely mix-up", () => {
    expect(refusal(cellLoss, 200_000, 2).message).toBe(
      'count must be below 10000 thousand cells/mL; got 200000, which looks like cells/mL: give "cells/mL" as the unit',
    );
  });

  test("thousands taken for cells/mL are refused with the likely mix-up", () => {
    expect(refusal(cellLoss, 200, 2, null, "cells/mL").message).toBe(
      'count must be 1000 cells/mL or more; got 200, which looks like thousands: give "thousand" as the unit',
    );
  });

  test("10,000 is refused and 9,999 is not; 999 cells/mL is refused and 1,000 is not", () => {
    expect(refusal(cellScore, 10_000).kind).toBe("invalid");
    expect(value(cellScore, 9999)).toBeGreaterThan(9);
    expect(refusal(cellScore, 999, "cells/mL").kind).toBe("invalid");
    expect(value(cellScore, 1000, "cells/mL")).toBeCloseTo(scoreOfCount(1), 12);
  });

  test("both kinds in one column are refused with the row, never switched cell by cell", () => {
    const message =
      "counts row 3 must be below 10000 thousand cells/mL; got 230000, which looks like cells/mL: a column must hold one unit throughout";
    expect(refusal(cellHerdLoss, column(120, 80, 230_000), column(1, 2, 3), 305).message).toBe(message);
    expect(refusal(cellMean, column(120, 80, 230_000)).message).toBe(message);
    expect(refusal(cellMean, column(120_000, 80_000, 230), "cells/mL").message).toContain("counts row 3");
  });

  test("a whole column in the other unit is answered with the unit to give", () => {
    expect(refusal(cellMean, column(120_000, null, 230_000)).message).toContain('give "cells/mL" as the unit');
  });
});

test("a count at or below 50 thousand loses nothing, and never a negative amount", () => {
  for (const count of [0.5, 1, 12.5, 49.9, 50]) {
    for (const { name } of DAILY_MODELS) expect(value(cellLoss, count, 2, name)).toBe(0);
  }
  for (const score of [-4, 0, 1.9, 2]) {
    for (const { name } of LACTATION_MODELS) expect(value(cellLactationLoss, score, 2, name)).toBe(0);
  }
  expect(value(cellLoss, 50.1, 2)).toBeGreaterThan(0);
});

describe("lactation", () => {
  test("blank is not taken for a later one", () => {
    expect(refusal(cellLoss, 200, null)).toEqual({
      kind: "unavailable",
      message:
        'lactation is blank: "US extension table" has one slope for first and another for later lactations, so enter it',
    });
    expect(refusal(cellLactationLoss, 4, null).kind).toBe("unavailable");
  });

  test("0, a heifer that has not calved, is not taken for a cow", () => {
    expect(refusal(cellLoss, 200, 0).kind).toBe("unavailable");
  });

  test.each([-1, 1.5, 21, 305, "2", true])("%p is refused", (lactation) => {
    expect(refusal(cellLoss, 200, lactation).message).toMatch(/^lactation must be a whole number from 1 to 20/);
  });

  test("in a column a counted cow without one is refused with her row, so that the total is never short", () => {
    for (const missing of [null, 0, "?"]) {
      const { kind, message } = refusal(cellHerdLoss, column(200, null, 400), column(2, 2, missing), 305);
      expect(kind).toBe("invalid");
      expect(message).toContain("wherever there is a count; got a blank or 0 in row 3: enter it");
    }
    expect(refusal(cellHerdCost, column(200, 400), column(2, null), 305, 0.4).message).toContain("row 2");
  });

  test("at most five rows are named", () => {
    const { message } = refusal(cellHerdLoss, column(1, 2, 3, 4, 5, 6, 7), column(1, 0, 0, 0, 0, 0, 0), 305);
    expect(message).toContain("rows 2, 3, 4, 5, 6, ...");
  });

  test("a model with one slope for all does without", () => {
    expect(value(cellHerdLoss, column(100, 100), column(1, null), 10, "Luo 2022", null, "kg")).toBeCloseTo(16.6, 10);
    expect(value(cellHerdLoss, column(100, 100), column(1, null), 10, "own 0.5", null, "kg")).toBeCloseTo(10, 10);
  });

  test("CELL.SUMMARY then leaves milk and money blank, and says where", () => {
    const call = [column(200, 400), column(2, null), column(20, 20), 305, 0.4] as const;
    for (const figure of ["milk lost, low", "milk lost, high", "of it later lactations", "money lost, central"]) {
      const [, amount, , note] = row(cellSummary, figure, ...call);
      expect(amount).toBe("");
      expect(note).toContain("got a blank or 0 in row 2");
    }
    expect(row(cellSummary, "mean count", ...call)[1]).toBe(300);
    expect(remarks(cellSummary, ...call).join()).toContain("row 2");
  });
});

describe("a single test is not a lactation", () => {
  test("the daily slope times 305 is not the printed lactation figure: 228.75 and 200 lb, 183 and 120 kg", () => {
    expect(305 * value(cellLoss, 100, 1, null, null, "lb")).toBeCloseTo(228.75, 8);
    expect(value(cellLactationLoss, 3, 1, null, "lb")).toBeCloseTo(200, 8);
    expect(305 * value(cellLoss, 100, 2, "Hortet-Seegers 1998", null, "kg")).toBeCloseTo(183, 8);
    expect(value(cellLactationLoss, 3, 2, "Hortet-Seegers 1998", "kg")).toBeCloseTo(120, 8);
  });

  test("a count given as a mean score is refused", () => {
    expect(refusal(cellLactationLoss, 200, 2).message).toContain("more is a count");
  });

  test("a lactation model is not taken for single tests, nor the other way round", () => {
    expect(refusal(cellLoss, 200, 2, "Raubertas-Shook 1982").message).toMatch(/^model must be/);
    expect(refusal(cellLactationLoss, 4, 2, "Luo 2022").message).toMatch(/^model must be/);
  });
});

test("scores are averaged, not counts", () => {
  const scores = [50, 50, 50, 50, 1600].map((count) => value(cellScore, count));
  const meanScore = scores.reduce((sum, score) => sum + score, 0) / scores.length;
  expect(value(cellLactationLoss, meanScore, 2, null, "lb")).toBeCloseTo(400, 8);
});

describe("kg, litres and lb", () => {
  test("a litre is 1.03 kg and a lb 0.45359237 kg, converted once", () => {
    const kg = value(cellLoss, 200, 2, "Hortet-Seegers 1998", null, "kg");
    expect(kg).toBeCloseTo(1.2, 12);
    expect(value(cellLoss, 200, 2, "Hortet-Seegers 1998")).toBeCloseTo(1.2 / 1.03, 12);
    expect(value(cellLoss, 200, 2, "Hortet-Seegers 1998", null, "lb")).toBeCloseTo(1.2 / 0.45359237, 12);
  });

  test("the price is that of the unit given", () => {
    const call = [column(200), column(2), 100, 0.5, "Hortet-Seegers 1998", null] as const;
    expect(value(cellHerdCost, ...call, "kg")).toBeCloseTo(60, 10);
    expect(value(cellHerdCost, ...call)).toBeCloseTo(60 / 1.03, 10);
  });
});

describe("ln, log2 and log10", () => {
  test("a slope for each unit of ln is 0.693 of it for each doubling, of log10 0.301", () => {
    expect(value(cellLactationLoss, 3, 1, "Raubertas-Shook 1982", "kg")).toBeCloseTo(135 * 0.693147, 3);
    expect(value(cellLoss, 100, 1, "Koldeweij 1999", null, "kg")).toBeCloseTo(1.29 * 0.30103, 4);
  });

  test("the score goes by log2 of cells/mL over 100,000: ln or thousands put in would not give 4", () => {
    expect(value(cellScore, 200_000, "cells/mL")).toBeCloseTo(4, 12);
    expect(Math.log(200_000 / 100_000) + 3).not.toBeCloseTo(4, 1);
    expect(Math.log2(200 / 100_000) + 3).not.toBeCloseTo(4, 1);
  });
});

describe("exactly 200 is high", () => {
  test("199.9 is not", () => {
    expect(USUAL_LIMIT_THOUSAND).toBe(200);
    expect(value(cellStatus, 100, 200)).toBe("new");
    expect(value(cellStatus, 200, 199.9)).toBe("recovered");
    expect(row(cellSummary, "high cows", column(199, 200, 201), column(1, 2, 3), column(1, 1, 1), 10, 1)[1]).toBe(2);
  });
});

describe("rates", () => {
  test("are shares of the cows at risk, not of all cows", () => {
    const previous = column(...Array<number>(10).fill(100), ...Array<number>(10).fill(300));
    const current = column(
      ...Array<number>(4).fill(300),
      ...Array<number>(6).fill(100),
      ...Array<number>(10).fill(300),
    );
    expect(row(cellChange, "new", previous, current).slice(1, 4)).toEqual([4, 10, 0.4]);
    expect(row(cellChange, "recovered", previous, current).slice(1, 4)).toEqual([0, 10, 0]);
  });

  test("of fewer than ten cows are called few", () => {
    const call = (cows: number): unknown =>
      row(cellChange, "new", column(...Array<number>(cows).fill(100)), column(...Array<number>(cows).fill(300)))[6];
    expect(call(9)).toContain("few cows");
    expect(call(10)).not.toContain("few cows");
  });

  test("of no cow at risk are blank, not 0", () => {
    expect(row(cellChange, "recovered", column(100), column(300)).slice(1, 7)).toEqual([
      0,
      0,
      "",
      "",
      "",
      "no cows high before",
    ]);
  });
});

test("the tank's count is never spread over the cows by itself: one row is one cow", () => {
  const { value: loss } = evaluate(cellHerdLoss, [column(300), column(2), 1, "Hortet-Seegers 1998", null, "kg"]);
  expect(loss).toBeCloseTo(0.6 * Math.log2(6), 12);
});

test("less than one cell per mL is no count: its score would lie below all numbers", () => {
  expect(refusal(cellMean, column(5e-324)).message).toContain("counts row 1 must be a number from 0.001 ");
  expect(refusal(cellScore, 5e-324).message).toContain("count must be a number from 0.001 ");
});
