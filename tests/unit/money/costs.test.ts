import { publishedCosts } from "../../../src/core/money/published-costs";
import { costCase } from "../../../src/functions/money/cost-case";
import { costCases } from "../../../src/functions/money/cost-cases";
import { costDelay } from "../../../src/functions/money/cost-delay";
import { costPayback } from "../../../src/functions/money/cost-payback";
import { costTable } from "../../../src/functions/money/cost-table";
import { costs, printedCosts } from "../../../src/functions/money/kinds";
import { evaluate } from "../../../src/functions/evaluate";

const column = (...lesions: unknown[]) => lesions.map((lesion) => [lesion]);
const table = (...rows: unknown[][]) => [["Lesion", "Cost per case", "Currency", "Year", "Source"], ...rows];
const farm = table(["SU", 200, "EUR", 2025, "own books"], ["WL", 100, "EUR", 2025, "own books"]);

describe("costs table", () => {
  test("costs in two currencies are never taken together", () => {
    const mixed = table(["SU", 200, "EUR", "", ""], ["DD", 64, "USD", "", ""]);
    expect(() => evaluate(costCase, ["SU", mixed])).toThrow(
      'costs must be in one currency; got "EUR" for SU and "USD" for DD',
    );
    const half = table(["SU", 200, "EUR", "", ""], ["DD", 64, "", "", ""]);
    expect(() => evaluate(costCases, [column("SU"), half])).toThrow(/got "EUR" for SU and a blank for DD/);
  });

  test("a long text in the place of a currency is cut in the message", () => {
    const mixed = table(["SU", 200, "EUR", "", ""], ["DD", 64, "7".repeat(900), "", ""]);
    expect(() => evaluate(costCase, ["SU", mixed])).toThrow(/^.{1,120}$/);
  });

  test("costs of different years or sources are taken, and it is said", () => {
    const mixed = table(["SU", 200, "EUR", 2024, "a"], ["DD", 64, "EUR", 2025, "b"]);
    expect(evaluate(costCases, [column("SU"), mixed]).remarks).toEqual([
      expect.stringContaining("different years"),
      expect.stringContaining("different sources"),
    ]);
    expect(evaluate(costCases, [column("SU"), farm]).remarks).toEqual([]);
  });

  test("a lesion twice, a blank cost, a cost of 0 or below are refused", () => {
    expect(() => evaluate(costCase, ["SU", table(["SU", 1, "", "", ""], ["SU", 2, "", "", ""])])).toThrow(
      "costs: SU stands in two rows",
    );
    for (const blank of [null, "", 0])
      expect(() => evaluate(costCase, ["SU", table(["SU", blank, "", "", ""])])).toThrow(
        /costs row 2 "Cost per case" is blank: enter .*or "none"/,
      );
    expect(() => evaluate(costCase, ["SU", table(["SU", -5, "", "", ""])])).toThrow(/must be .*got -5/);
  });

  test("every published set can be printed as a table and read back", () => {
    for (const set of publishedCosts) {
      const rows = costs.read(printedCosts(set), "costs");
      expect(Object.fromEntries(rows.map(({ lesion, cost }) => [lesion, cost]))).toEqual(set.byLesion);
      expect(rows.every(({ currency, year }) => currency === set.currency && year === set.year)).toBe(true);
    }
  });
});

describe("COST.CASE", () => {
  test("a form costs what its parent costs; a lesion without a row has no cost", () => {
    expect(evaluate(costCase, ["WLF", farm]).value).toBe(100);
    expect(() => evaluate(costCase, ["DD", farm])).toThrow("costs must have a row for DD");
    expect(() => evaluate(costCase, ["none", farm])).toThrow("there is no case");
  });
});

describe("COST.CASES", () => {
  test("a lesion without a cost is refused by its row, never left out of the sum", () => {
    expect(() => evaluate(costCases, [column("SU", null, "DD"), farm])).toThrow(
      "lesions row 3 is DD, for which costs must have a row",
    );
  });

  test('"none" as cost counts a lesion at nothing; sound cows cost nothing', () => {
    const rules = table(["SU", 200, "EUR", "", ""], ["HHE", "none", "EUR", "", ""]);
    expect(evaluate(costCases, [column("SU", "HHE", "none", ""), rules]).value).toBe(200);
    expect(evaluate(costCases, [column("none"), rules]).value).toBe(0);
  });

  test("no findings at all give no sum", () => {
    expect(() => evaluate(costCases, [column(null, ""), farm])).toThrow("lesions holds no row");
  });
});

test("COST.TABLE: dearest in all first, shares of what has a cost, the rest last", () => {
  const { value, remarks } = evaluate(costTable, [column("SU", "WL", "WL", "WL", "DD", "none"), farm]);
  expect(value).toEqual([
    ["Code", "Lesion", "Cases", "Cost per case", "Cost", "Share of cost"],
    ["WL", "White line disease", 3, 100, 300, 0.6],
    ["SU", "Sole ulcer", 1, 200, 200, 0.4],
    ["DD", "Digital dermatitis", 1, "", "", ""],
  ]);
  expect(remarks).toEqual([expect.stringContaining("DD has no cost: 1 left out")]);
});

test("COST.DELAY and COST.PAYBACK refuse what is not there or below zero", () => {
  expect(() => evaluate(costDelay, [0, 12])).toThrow("weeks is blank");
  expect(() => evaluate(costDelay, [-1, 12])).toThrow(/weeks must be/);
  expect(() => evaluate(costPayback, [1000, 0, 90])).toThrow("casesAvoidedPerYear is blank");
  expect(() => evaluate(costPayback, [1000, 5, -90])).toThrow(/costPerCase must be/);
});
