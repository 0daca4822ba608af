import { day } from "../../../../src/core/shared/days";
import { blockOf } from "../../../../src/blocks/gallery";
import type { MilkPrice } from "../../../../src/taskpane/screens/cells/milk-price";
import { givenTo } from "../../../../src/taskpane/screens/costs/given";
import { costFacts, currencyOf } from "../../../../src/taskpane/screens/costs/money-facts";
import { readPeriod, shownPeriod } from "../../../../src/taskpane/screens/costs/period";
import { basisWords, caseWords, lesionCosts, shortCaseWords } from "../../../../src/taskpane/screens/costs/words";
import type { PlainCell } from "../../../../src/workbook/port";

const TODAY = day("2024-03-20");

function costs(...rows: readonly (readonly PlainCell[])[]) {
  const headings = ["Lesion", "Cost per case", "Currency", "Year", "Source"];
  return {
    name: "Costs",
    sheet: "Costs",
    columns: headings.map((heading) => ({ heading, calculated: false })),
    rowCount: rows.length,
    rows,
  };
}

const milk = (changes: Partial<MilkPrice> = {}): MilkPrice => ({
  litre: 0.5,
  currency: "EUR",
  year: 2024,
  remark: undefined,
  ...changes,
});

test("no Costs table, or one without a row, has no facts", () => {
  expect(costFacts(undefined)).toBeUndefined();
  expect(costFacts(costs([null, null, null, null, null]))).toBeUndefined();
});

test("one currency is one; two, or none written, are not taken for one", () => {
  expect(currencyOf(costFacts(costs(["SU", 178, "EUR", 2024, "own"], ["DD", 61, "EUR", 2024, "own"])))).toBe("EUR");
  expect(
    currencyOf(costFacts(costs(["SU", 178, "EUR", 2024, "own"], ["DD", 61, "USD", 2018, "paper"]))),
  ).toBeUndefined();
  expect(currencyOf(costFacts(costs(["SU", 178, null, null, null])))).toBeUndefined();
});

describe("why the bills are not laid over each other", () => {
  const own = costFacts(costs(["SU", 178, "EUR", 2024, "own"]));

  test("same money, same year: nothing more to say", () => {
    expect(basisWords(own, milk())).toEqual([]);
  });

  test("other currency and other year are said", () => {
    expect(basisWords(own, milk({ currency: "USD", year: 2018 }))).toEqual([
      "The two are in different currencies: EUR for lesions, USD for milk. Nothing is converted.",
      "They are prices of different years (2018, 2024), without inflation.",
    ]);
  });

  test("several currencies among the costs are said", () => {
    const mixed = costFacts(costs(["SU", 178, "EUR", 2024, "own"], ["DD", 61, null, 2024, "own"]));
    expect(basisWords(mixed, milk())[0]).toBe(
      "The Costs table holds several currencies (EUR, none): nothing is added up until there is one.",
    );
  });
});

test("cases without a cost are counted, the most frequent named", () => {
  const rows = lesionCosts([
    ["SU", "Sole ulcer", 2, 178, 356, 1],
    ["HHE", "Heel horn erosion", 5, "", "", ""],
    ["IP", "Interdigital phlegmon", 1, "", "", ""],
  ]);
  expect(rows[0]).toEqual({ name: "Sole ulcer", cases: 2, perCase: 178, cost: 356, share: 1 });
  expect(caseWords({ priced: 2, unpriced: 6 }, rows)).toBe(
    'For 2 new cases. 6 cases without a cost left out (Heel horn erosion 5, Interdigital phlegmon 1): give them one under Costs, or "none" to count them at nothing.',
  );
  expect(shortCaseWords({ priced: 2, unpriced: 6 })).toBe("For 2 new cases. 6 without a cost left out.");
  expect(shortCaseWords({ priced: 0, unpriced: 0 })).toBe("No new case in those days.");
});

describe("the days that are counted over", () => {
  test("the year up to the day before, until others are typed", () => {
    expect(shownPeriod({}, TODAY)).toEqual({ from: "2023-03-20", to: "2024-03-19" });
    expect(givenTo(blockOf("side-by-side"), {}, TODAY, milk())).toEqual({});
  });

  test("milk is reckoned over as many days as the lesions", () => {
    const typed = { from: "2024-01-01", to: "2024-01-31" };
    expect(givenTo(blockOf("side-by-side"), typed, TODAY, milk())).toEqual({
      from: day("2024-01-01"),
      to: day("2024-01-31"),
      days: 31,
    });
  });

  test("days in the wrong order are refused with both", () => {
    expect(readPeriod({ from: "2024-02-02", to: "2024-02-01" })).toBe(
      "The first day must not be after the last; got 2024-02-02 and 2024-02-01.",
    );
    expect(readPeriod({ from: "", to: "2024-02-01" })).toBe("Type a first and a last day.");
  });

  test("a price of something else than a litre does not become one", () => {
    expect(givenTo(blockOf("side-by-side"), {}, TODAY, milk({ litre: undefined }))).toEqual({ milkPrice: null });
  });
});
