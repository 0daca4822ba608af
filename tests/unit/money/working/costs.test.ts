import { costCase } from "../../../../src/functions/money/cost-case";
import { costCases } from "../../../../src/functions/money/cost-cases";
import { costDelay } from "../../../../src/functions/money/cost-delay";
import { costPayback } from "../../../../src/functions/money/cost-payback";
import { costTable } from "../../../../src/functions/money/cost-table";
import { refusal, table, told } from "../../cells/call";

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const HEADINGS = ["Lesion", "Cost per case", "Currency", "Year", "Source"];
const farm = [
  HEADINGS,
  ["SU", 200.5, "EUR", 2025, "own"],
  ["WL", 100, "EUR", 2025, "own"],
  ["HHE", "none", "EUR", 2025, "own"],
];
const mixed = [HEADINGS, ["SU", 200, "", 2024, "one"], ["WL", 100, "", 2025, "other"]];
const MIXED = [
  "costs of different years are added without inflation",
  "costs of different sources are added; each counts other things",
];

describe("the working of COST.CASE", () => {
  test.each([
    ["SU", farm, ["Cost of a case", "SU, from the costs table", "200.5 EUR"]],
    ["HHE", farm, ["Cost of a case", "HHE, from the costs table", "0 EUR"]],
    ["WL", mixed, ["Cost of a case", "WL, from the costs table", "100"]],
  ])("of %s", (lesion, costs, line) => expect(told(costCase, lesion, costs)).toEqual({ steps: [line], remarks: [] }));

  test("a sound cow is no case, and a lesion without a row has no cost", () => {
    expect(refusal(costCase, "none", farm)).toEqual({
      kind: "unavailable",
      message: "lesion says that nothing was found: there is no case",
    });
    expect(refusal(costCase, "DD", farm)).toEqual({ kind: "unavailable", message: "costs must have a row for DD" });
  });
});

describe("the working of COST.CASES", () => {
  test("a line a lesion, the dearest first, and all together", () => {
    // 3 × 100 = 300; 1 × 200.5; 2 at no cost: 500.5 for six cases.
    const lesions = column("SU", "WL", "HHE", "WL", "none", null, "HHE", "WL");
    expect(told(costCases, lesions, farm)).toEqual({
      steps: [
        ["WL", "3 × 100", "300"],
        ["SU", "1 × 200.5", "200.5"],
        ["HHE", "2 × 0", "0"],
        ["Together", "6 cases", "500.5"],
      ],
      remarks: [],
    });
  });

  test("one case, of a table that mixes years and sources", () => {
    expect(told(costCases, column("SU"), mixed)).toEqual({
      steps: [
        ["SU", "1 × 200", "200"],
        ["Together", "1 case", "200"],
      ],
      remarks: MIXED,
    });
  });

  test("sound cows alone", () => {
    expect(told(costCases, column("none", null), farm).steps).toEqual([["Together", "0 cases", "0"]]);
  });

  test("what it cannot add", () => {
    expect(refusal(costCases, column("SU", "none", null, "DD"), farm)).toEqual({
      kind: "invalid",
      message: "lesions row 4 is DD, for which costs must have a row",
    });
    expect(refusal(costCases, column("DD"), farm).message).toBe("lesions row 1 is DD, for which costs must have a row");
    expect(refusal(costCases, column(null, null), farm)).toEqual({
      kind: "unavailable",
      message: "lesions holds no row: enter what was found",
    });
  });
});

describe("the working of COST.TABLE", () => {
  test("lesions with a cost first, those without last", () => {
    // 2 × 200.5 = 401 and 1 × 100: 501.
    expect(told(costTable, column("SU", "DD", "WL", "none", "SU", "TU", "TU"), farm)).toEqual({
      steps: [
        ["SU", "2 × 200.5", "401"],
        ["WL", "1 × 100", "100"],
        ["DD", "1 case, no row in costs", "no cost"],
        ["TU", "2 cases, no row in costs", "no cost"],
        ["Together", "of the lesions with a cost", "501"],
      ],
      remarks: ["DD has no cost: 1 left out of the shares", "TU has no cost: 2 left out of the shares"],
    });
  });

  test("years and sources that differ are said; lesions at no cost have no share", () => {
    expect(told(costTable, column("SU"), mixed).remarks).toEqual(MIXED);
    expect(table(costTable, column("HHE"), farm)[1]!.slice(2)).toEqual([1, 0, 0, ""]);
  });
});

describe("the working of COST.DELAY and COST.PAYBACK", () => {
  test.each([
    [1, 13, ["Cost", "1 week × 13", "13"]],
    [2.5, 13.25, ["Cost", "2.5 weeks × 13.25", "33.13"]],
  ])("%d weeks at %d", (weeks, perWeek, line) => expect(told(costDelay, weeks, perWeek).steps).toEqual([line]));

  test.each([
    // 12 × 80 = 960; 2000 / 960 = 2.083.
    [2000, 12, 80, ["Saved a year", "12 cases × 80", "960"], ["Paid back in", "2000 / saved a year", "2.08 years"]],
    [80, 1, 80, ["Saved a year", "1 case × 80", "80"], ["Paid back in", "80 / saved a year", "1 year"]],
  ])("%d paid back by %d cases", (price, cases, cost, ...steps) =>
    expect(told(costPayback, price, cases, cost)).toEqual({ steps, remarks: [] }),
  );
});
