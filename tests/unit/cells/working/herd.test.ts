import { cellSummary } from "../../../../src/functions/cells/cell-summary";
import { cellTop } from "../../../../src/functions/cells/cell-top";
import { refusal, row, table, told } from "../call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const times = (number: number, cell: unknown): unknown[][] => Array.from({ length: number }, () => [cell]);
const HORTET = "Hortet-Seegers 1998";

describe("the working of CELL.TOP", () => {
  const cows = column("a", "b", "c", "d", "e");
  const counts = column(400, 200, 50, null, 800);
  const lactations = column(1, 2, 3, 2, 1);
  const milk = column(20, 25, 30, 30, null);

  test("the two that lose most of three", () => {
    // a: 3 × 0.4 = 1.2, b: 2 × 0.6 = 1.2, e: 4 × 0.4 = 1.6 kg; the herd 4 kg. Listed: e and a, 2.8 kg; × 30 × 0.5 = 42.
    expect(told(cellTop, cows, counts, lactations, milk, 2, 0.5, HORTET, null, "kg")).toEqual({
      steps: [
        ["Cows with a count", "1 left out: no count", "4"],
        ["Loss of the herd a day", HORTET, "4 kg"],
        ["Loss of the 2 listed", "doublings above 50 thousand × slope, cow by cow", "2.8 kg"],
        ["Money", "loss × 30 days × 0.5", "42 for the listed"],
      ],
      remarks: ["1 row left out: no count"],
    });
  });

  test("a model with one slope takes the cow whose lactation is not known", () => {
    // (1 + 2) doublings × 0.83 = 2.49 kg; / 1.03 = 2.4175 litres; × 30 × 2 = 145.05.
    expect(told(cellTop, column("a", "b"), column(100, 200), column(null, 1), column(1, 1), 9, 2, "Luo 2022")).toEqual({
      steps: [
        ["Cows with a count", "0 left out: no count", "2"],
        ["Loss of the herd a day", "Luo 2022", "2.42 litres"],
        ["Loss of the 2 listed", "doublings above 50 thousand × slope, cow by cow", "2.42 litres"],
        ["Money", "loss × 30 days × 2", "145.05 for the listed"],
      ],
      remarks: [],
    });
  });

  test("no cow above 50 thousand", () => {
    expect(told(cellTop, column("a"), column(50), column(2), column(20), 3, 0.5, HORTET, null, "kg")).toEqual({
      steps: [
        ["Cows with a count", "0 left out: no count", "1"],
        ["Loss of the herd a day", HORTET, "0 kg"],
        ["Loss of the 0 listed", "doublings above 50 thousand × slope, cow by cow", "0 kg"],
        ["Money", "loss × 30 days × 0.5", "0 for the listed"],
      ],
      remarks: ["no cow is above 50 thousand cells/mL"],
    });
  });

  test("the rows of a cow's repeat are those with a count", () => {
    const names = column("x", "a", "a", "b", "a");
    expect(refusal(cellTop, names, column(100, null, 100, 100, 100), times(5, 2), times(5, 20), 2, 1)).toEqual({
      kind: "invalid",
      message: 'cows must name each cow once (one test day); got "a" in rows 3 and 5',
    });
  });

  test("a count without a name is refused; a name without a count is not", () => {
    expect(refusal(cellTop, column("x", null), column(null, 100), times(2, 2), times(2, 20), 2, 1)).toEqual({
      kind: "invalid",
      message: "cows row 2 must name the cow, since counts row 2 holds a count; got a blank",
    });
    expect(table(cellTop, column("x", null), column(100, null), times(2, 2), times(2, 20), 2, 1)).toHaveLength(2);
  });
});

describe("the working of CELL.SUMMARY", () => {
  // Doublings: first 3 (400); later 2 (200) + 0 (50). The fourth has no count, the fifth nothing at all.
  const counts = column(400, 200, 50, null, null);
  const lactations = column(1, 2, 3, 2, null);
  const milk = column(20, 25, null, 30, null);

  test("is that of its figures", () => {
    // Mean score (5 + 4 + 2) / 3 = 3.6667: 100 × 2^0.6667 = 158.74. Tank: (400 × 20 + 200 × 25) / 45 = 288.89.
    // A day, low: 3 × 80 / 305 + 2 × 120 / 305 = 1.57377 kg; central: 3 × 0.3401943 + 2 × 0.6803886 = 2.38136 kg;
    // high: 5 × 0.83 = 4.15 kg. Over 100 days: 157.377, 238.136 and 415 kg. Central money 238.136 × 0.5 = 119.07.
    expect(told(cellSummary, counts, lactations, milk, 100, 0.5, null, "kg")).toEqual({
      steps: [
        ["Cows", "4 listed, 1 without a count", "3 cows"],
        ["Geometric mean", "100 × 2^(3.6667 - 3)", "158.74 thousand cells/mL"],
        ["Tank", "sum of count × milk / 45 of milk", "288.89 thousand cells/mL"],
        ["Doublings above 50 thousand", "sum of log2(count / 50), cows above 50 only", "3 first, 2 later lactations"],
        [
          "Milk lost, low",
          "(first × 0.2623 + later × 0.3934) kg × 100 days, Hortet-Seegers 1998, lactation figure / 305 days",
          "157.38 kg",
        ],
        ["Milk lost, central", "(first × 0.3402 + later × 0.6804) kg × 100 days, US extension table", "238.14 kg"],
        ["Milk lost, high", "(first × 0.83 + later × 0.83) kg × 100 days, Luo 2022", "415 kg"],
        ["Money", "central milk × 0.5 a kg", "119.07"],
      ],
      remarks: ["1 row left out: no count"],
    });
  });

  test("in cells/mL and litres, one cow, one day", () => {
    // 1 doubling × 0.6803886 kg / 1.03 = 0.66057 litres; low 0.39344 / 1.03 = 0.38198; high 0.83 / 1.03 = 0.80583.
    expect(told(cellSummary, column(100_000), column(2), column(20), 1, 2, "cells/mL")).toEqual({
      steps: [
        ["Cows", "1 listed, 0 without a count", "1 cow"],
        ["Geometric mean", "100,000 × 2^(3 - 3)", "100000 cells/mL"],
        ["Tank", "sum of count × milk / 20 of milk", "100000 cells/mL"],
        ["Doublings above 50 thousand", "sum of log2(count / 50), cows above 50 only", "0 first, 1 later lactations"],
        [
          "Milk lost, low",
          "(first × 0.2623 + later × 0.3934) kg × 1 day, Hortet-Seegers 1998, lactation figure / 305 days",
          "0.38 litres",
        ],
        ["Milk lost, central", "(first × 0.3402 + later × 0.6804) kg × 1 day, US extension table", "0.66 litres"],
        ["Milk lost, high", "(first × 0.83 + later × 0.83) kg × 1 day, Luo 2022", "0.81 litres"],
        ["Money", "central milk × 2 a litre", "1.32"],
      ],
      remarks: [],
    });
  });

  test("without milk, and with a cow whose lactation is not known, says what is not computed", () => {
    const { steps, remarks } = told(cellSummary, column(200, 400), column(2, null), column(null, null), 10, 0.5);
    const missing = "lactations must hold a lactation number wherever there is a count; got a blank or 0 in row 2";
    expect(steps.map(([label, , shown]) => [label, shown])).toEqual([
      ["Cows", "2 cows"],
      // Square root of 200 × 400.
      ["Geometric mean", "282.84 thousand cells/mL"],
      ["Tank", "not computed"],
      ["Doublings above 50 thousand", "0 first, 2 later lactations"],
      ["Milk lost, low", "not computed"],
      ["Milk lost, central", "not computed"],
      ["Milk lost, high", "not computed"],
      ["Money", "not computed"],
    ]);
    expect(steps[2]![1]).toBe("no cow with count and milk");
    expect(remarks).toEqual([missing]);
    expect(
      row(cellSummary, "money lost, high", column(200, 400), column(2, null), column(null, null), 10, 0.5),
    ).toEqual(["money lost, high", "", "money", missing]);
  });

  test("its notes on the tank, the share and the price", () => {
    const call = (cows: number, unit: string | null, ...more: readonly [unknown, unknown][]): unknown[] => [
      [...times(cows - 2, 100), [300], [200], ...more.map(([count]) => [count])],
      times(cows + more.length, 2),
      [...times(cows, 20), ...more.map(([, yielded]) => [yielded])],
      305,
      0.5,
      null,
      unit,
    ];
    const note = (label: string, given: unknown[]): unknown => row(cellSummary, label, ...given)[3];
    // 95 % limits by R: prop.test(2, 9, correct = FALSE) and prop.test(2, 10, correct = FALSE).
    expect(note("share high", call(9, null))).toBe("95 % limits 0.06 to 0.55; few cows");
    expect(note("share high", call(10, null))).toBe("95 % limits 0.06 to 0.51");
    expect(note("tank estimate", call(9, null))).toBe("9 cows, weighted by milk");
    expect(note("tank estimate", call(2, null, [null, 20], [100, null]))).toBe(
      "2 cows, weighted by milk; 1 cow with milk has no count; 1 cow with a count has no milk",
    );
    expect(note("tank estimate", call(2, null, [null, 20], [null, 20], [100, null], [100, null]))).toBe(
      "2 cows, weighted by milk; 2 cows with milk have no count; 2 cows with a count have no milk",
    );
    expect(note("money lost, central", call(2, null))).toBe("at 0.5 a litre, before feed saved");
    expect(note("money lost, central", call(2, "lb"))).toBe("at 0.5 a lb, before feed saved");
    expect(note("milk lost, central", call(2, null))).toBe("US extension table");
    expect(note("days", call(2, null))).toBe("");
  });

  test("a list without a count is #N/A", () => {
    expect(refusal(cellSummary, column(null), column(2), column(20), 10, 0.5)).toEqual({
      kind: "unavailable",
      message: "counts holds no count: enter at least one",
    });
  });
});
