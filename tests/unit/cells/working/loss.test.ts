import { cellHerdCost } from "../../../../src/functions/cells/cell-herd-cost";
import { cellHerdLoss } from "../../../../src/functions/cells/cell-herd-loss";
import { cellLactationLoss } from "../../../../src/functions/cells/cell-lactation-loss";
import { cellLoss } from "../../../../src/functions/cells/cell-loss";
import { refusal, told } from "../call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const HORTET = "Hortet-Seegers 1998";
const CAPPED = "1 count stands at the laboratory's cap (9,999 thousand): the true figure is that or more";

describe("the working of CELL.LOSS", () => {
  test("400 thousand in first lactation, the table of the extension service, in kg", () => {
    // log2(400 / 50) = 3 doublings; 0.75 lb × 0.45359237 = 0.34019 kg; 3 × 0.34019 = 1.02058 kg.
    expect(told(cellLoss, 400, 1, null, null, "kg")).toEqual({
      steps: [
        ["Doublings above 50 thousand", "log2(400 / 50)", "3"],
        ["Slope, first lactation", "US extension table", "0.3402 kg a day for each doubling"],
        ["Loss a day", "3 × 0.3402 kg", "1.021 kg"],
        ["In the unit asked", "in kg", "1.02 kg"],
      ],
      remarks: [],
    });
  });

  test("200,000 cells/mL in a later lactation, in litres unless another unit is asked", () => {
    // log2(200 / 50) = 2 doublings × 0.6 kg = 1.2 kg; 1.2 / 1.03 = 1.165 litres.
    expect(told(cellLoss, 200_000, 4, HORTET, "cells/mL").steps).toEqual([
      ["Doublings above 50 thousand", "log2(200 / 50)", "2"],
      ["Slope, later lactation", HORTET, "0.6 kg a day for each doubling"],
      ["Loss a day", "2 × 0.6 kg", "1.2 kg"],
      ["In the unit asked", "1.2 kg / 1.03 kg a litre", "1.17 litres"],
    ]);
  });

  test.each([50, 49])("%d thousand loses nothing", (count) => {
    expect(told(cellLoss, count, 2, HORTET).steps).toEqual([
      ["Doublings above 50 thousand", `${count} is not above 50`, "0"],
      ["Slope, later lactation", HORTET, "0.6 kg a day for each doubling"],
      ["Loss a day", "0 × 0.6 kg", "0 kg"],
      ["In the unit asked", "0 kg / 1.03 kg a litre", "0 litres"],
    ]);
  });

  test("a count at the cap is said; a model with one slope needs no lactation", () => {
    // By R: log2(9999 / 50) = 7.643712, × 0.83 kg = 6.344281 kg, / 0.45359237 = 13.98675 lb.
    expect(told(cellLoss, 9999, null, "Luo 2022", null, "lb")).toEqual({
      steps: [
        ["Doublings above 50 thousand", "log2(9999 / 50)", "7.6437"],
        ["Slope, any lactation", "Luo 2022", "0.83 kg a day for each doubling"],
        ["Loss a day", "7.6437 × 0.83 kg", "6.344 kg"],
        ["In the unit asked", "6.344 kg / 0.45359237 kg a lb", "13.99 lb"],
      ],
      remarks: [CAPPED],
    });
    expect(told(cellLoss, 9998.9, 2).remarks).toEqual([]);
  });

  test("own slopes are told in kg, whatever their unit", () => {
    // 1 lb is 0.45359 kg; 1 doubling of it is 1 lb.
    expect(told(cellLoss, 100, 1, "own 1/2 lb", null, "lb").steps.slice(1)).toEqual([
      ["Slope, first lactation", "own 1/2 lb", "0.4536 kg a day for each doubling"],
      ["Loss a day", "1 × 0.4536 kg", "0.454 kg"],
      ["In the unit asked", "0.454 kg / 0.45359237 kg a lb", "1 lb"],
    ]);
  });
});

describe("what CELL.LOSS refuses", () => {
  test("a count in the other unit", () => {
    expect(refusal(cellLoss, 10_000, 2)).toEqual({
      kind: "invalid",
      message:
        'count must be below 10000 thousand cells/mL; got 10000, which looks like cells/mL: give "cells/mL" as the unit',
    });
    expect(refusal(cellLoss, 999, 2, null, "cells/mL").message).toBe(
      'count must be 1000 cells/mL or more; got 999, which looks like thousands: give "thousand" as the unit',
    );
  });

  test("a model that is none", () => {
    for (const [given, shown] of [
      [true, "TRUE"],
      [false, "FALSE"],
      ["Hortet", '"Hortet"'],
      ["my own 0.5", '"my own 0.5"'],
      ["own 0.5 kg a day", '"own 0.5 kg a day"'],
    ]) {
      expect(refusal(cellLoss, 400, 2, given)).toEqual({
        kind: "invalid",
        message: `model must be "US extension table", "Hortet-Seegers 1998", "Koldeweij 1999", "Luo 2022", "Potter 2018", or own slopes for first and later lactations such as "own 0.40/0.80"; got ${shown}`,
      });
    }
  });

  test("own slopes above 5 kg a day; 5 itself is taken", () => {
    expect(told(cellLoss, 100, 1, "own 5/5", null, "kg").steps.at(-1)).toEqual(["In the unit asked", "in kg", "5 kg"]);
    expect(refusal(cellLoss, 100, 1, "own 5.01", null, "kg")).toEqual({
      kind: "invalid",
      message:
        'model must be own slopes of at most 5 kg a day for each doubling (more looks like slopes for a lactation); got "own 5.01"',
    });
  });

  test("a blank lactation where the model splits by it", () => {
    expect(refusal(cellLoss, 400)).toEqual({
      kind: "unavailable",
      message:
        'lactation is blank: "US extension table" has one slope for first and another for later lactations, so enter it',
    });
  });
});

describe("the working of CELL.LACTATIONLOSS", () => {
  test("a mean score of 5 in first lactation", () => {
    // 200 lb × 0.45359237 = 90.718474 kg; 3 × 90.718474 = 272.155 kg.
    expect(told(cellLactationLoss, 5, 1, null, "kg").steps).toEqual([
      ["Doublings above 50 thousand (score 2)", "5 - 2", "3"],
      ["Slope, first lactation", "US extension table", "90.718 kg a lactation for each doubling"],
      ["Loss a lactation", "doublings × slope", "272.16 kg"],
      ["In the unit asked", "in kg", "272.16 kg"],
    ]);
  });

  test.each([2, 1.5])("a score of %d loses nothing", (score) => {
    expect(told(cellLactationLoss, score, 3, HORTET).steps).toEqual([
      ["Doublings above 50 thousand (score 2)", `${score} is not above 2`, "0"],
      ["Slope, later lactation", HORTET, "120 kg a lactation for each doubling"],
      ["Loss a lactation", "doublings × slope", "0 kg"],
      ["In the unit asked", "0 kg / 1.03 kg a litre", "0 litres"],
    ]);
  });

  test("own slopes that are one for all lactations need none", () => {
    // 1.5 × 100 lb = 150 lb; × 0.45359237 = 68.03886 kg; the slope 45.359 kg.
    expect(told(cellLactationLoss, 3.5, null, "own 100", "lb").steps).toEqual([
      ["Doublings above 50 thousand (score 2)", "3.5 - 2", "1.5"],
      ["Slope, any lactation", "own 100", "45.359 kg a lactation for each doubling"],
      ["Loss a lactation", "doublings × slope", "68.04 kg"],
      ["In the unit asked", "68.039 kg / 0.45359237 kg a lb", "150 lb"],
    ]);
  });

  test("own slopes above 1500 kg a lactation are refused; 1500 is taken", () => {
    expect(told(cellLactationLoss, 3, 1, "own 1500", "kg").steps.at(-1)).toEqual([
      "In the unit asked",
      "in kg",
      "1500 kg",
    ]);
    expect(refusal(cellLactationLoss, 3, 1, "own 1500,5", "kg").message).toBe(
      'model must be own slopes of at most 1500 kg a lactation for each doubling (more looks like slopes for several lactations); got "own 1500,5"',
    );
    expect(refusal(cellLactationLoss, 3, 1, "Luo 2022").message).toBe(
      'model must be "US extension table", "Hortet-Seegers 1998", "Raubertas-Shook 1982", or own slopes for first and later lactations such as "own 80/160"; got "Luo 2022"',
    );
  });
});

describe("the working of CELL.HERDLOSS", () => {
  test("both groups of lactations, a cow not tested, a row without anything", () => {
    // First: log2(100 / 50) = 1 × 0.4 = 0.4 kg. Later: 2 + 3 doublings × 0.6 = 3 kg. 3.4 kg × 100 days = 340 kg.
    const counts = column(100, 200, 400, null, "dry");
    expect(told(cellHerdLoss, counts, column(1, 2, 3, 2, null), 100, HORTET, null, "kg")).toEqual({
      steps: [
        ["Cows with a count", "1 left out: no count", "3"],
        ["First lactation", "1 cow, together 1 doubling above 50 thousand × 0.4 kg", "0.4 kg a day"],
        ["Later lactations", "2 cows, together 5 doublings above 50 thousand × 0.6 kg", "3 kg a day"],
        ["Loss a day", HORTET, "3.4 kg"],
        ["Over the days", "3.4 kg × 100 days", "340 kg"],
        ["In the unit asked", "in kg", "340 kg"],
      ],
      remarks: ["1 row left out: no count"],
    });
  });

  test("one cow at 50 thousand, one day", () => {
    expect(told(cellHerdLoss, column(50), column(1), 1, HORTET)).toEqual({
      steps: [
        ["Cows with a count", "0 left out: no count", "1"],
        ["First lactation", "1 cow, together 0 doublings above 50 thousand × 0.4 kg", "0 kg a day"],
        ["Later lactations", "0 cows, together 0 doublings above 50 thousand × 0.6 kg", "0 kg a day"],
        ["Loss a day", HORTET, "0 kg"],
        ["Over the days", "0 kg × 1 day", "0 kg"],
        ["In the unit asked", "0 kg / 1.03 kg a litre", "0 litres"],
      ],
      remarks: [],
    });
  });

  test("a model with one slope takes all cows together, whatever their lactation", () => {
    // (2 + 3 + 1 doublings) × 0.83 = 4.98 kg; × 10 = 49.8 kg; / 1.03 = 48.35 litres.
    const counts = column(200, 400, 100, null, null);
    expect(told(cellHerdLoss, counts, column(1, null, 3, 1, 2), 10, "Luo 2022")).toEqual({
      steps: [
        ["Cows with a count", "2 left out: no count", "3"],
        ["All lactations", "3 cows, together 6 doublings above 50 thousand × 0.83 kg", "4.98 kg a day"],
        ["Loss a day", "Luo 2022", "4.98 kg"],
        ["Over the days", "4.98 kg × 10 days", "49.8 kg"],
        ["In the unit asked", "49.8 kg / 1.03 kg a litre", "48.35 litres"],
      ],
      remarks: ["2 rows left out: no count"],
    });
  });

  test("305 days need no word, more do; counts at the cap are counted", () => {
    const remarksOver = (days: number): readonly string[] =>
      told(cellHerdLoss, column(9999, 9999.5, 400), column(1, 2, 2), days, HORTET).remarks;
    const caps = "2 counts stand at the laboratory's cap (9,999 thousand): the true figure is that or more";
    expect(remarksOver(305)).toEqual([caps]);
    expect(remarksOver(306)).toEqual([
      caps,
      "306 days is right only if every cow in the list is in milk on all of them; with dry cows a year has about 305",
    ]);
  });

  test.each([
    [1, "row 1"],
    [2, "rows 1, 2"],
    [5, "rows 1, 2, 3, 4, 5"],
    [6, "rows 1, 2, 3, 4, 5, ..."],
  ])("%d counted cows without a lactation number are refused with their rows", (cows, named) => {
    const counts = Array.from({ length: cows }, () => [100]);
    expect(refusal(cellHerdLoss, [...counts, [100]], [...counts.map(() => [null]), [1]], 10)).toEqual({
      kind: "invalid",
      message: `lactations must hold a lactation number wherever there is a count; got a blank or 0 in ${named}: enter it, since "US extension table" has one slope for first and another for later lactations`,
    });
  });

  test("a column without a count is #N/A", () => {
    expect(refusal(cellHerdLoss, column(null, "dry"), column(1, 2), 10)).toEqual({
      kind: "unavailable",
      message: "counts holds no count: enter at least one",
    });
  });
});

describe("the working of CELL.HERDCOST", () => {
  test.each([
    // 3 doublings × 0.6 = 1.8 kg × 10 days = 18 kg; 18 / 1.03 = 17.4757 litres × 0.5 = 8.7379.
    ["litres", ["In the unit asked", "18 kg / 1.03 kg a litre", "17.48 litres"], "17.48 litres × 0.5 a litre", "8.74"],
    ["kg", ["In the unit asked", "in kg", "18 kg"], "18 kg × 0.5 a kg", "9"],
    // 18 / 0.45359237 = 39.6832 lb × 0.5 = 19.8416.
    ["lb", ["In the unit asked", "18 kg / 0.45359237 kg a lb", "39.68 lb"], "39.68 lb × 0.5 a lb", "19.84"],
  ])("ends in the money for the milk in %s", (unit, inUnit, working, money) => {
    const { steps, remarks } = told(cellHerdCost, column(400), column(2), 10, 0.5, HORTET, null, unit);
    expect(steps.map(([label]) => label)).toEqual([
      "Cows with a count",
      "First lactation",
      "Later lactations",
      "Loss a day",
      "Over the days",
      "In the unit asked",
      "Money",
    ]);
    expect(steps.slice(-2)).toEqual([inUnit, ["Money", working, money]]);
    expect(remarks).toEqual([]);
  });
});
