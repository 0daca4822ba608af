import { day } from "../../../../src/core/shared/days";
import { choicesOf, daysOf, daysText } from "../../../../src/taskpane/screens/herd/choices";

const AS_OF = day("2026-09-01");

function days(typed: Readonly<Record<string, string>>, asOf = AS_OF): string {
  const chosen = daysOf(choicesOf(typed, asOf), asOf);
  return "problem" in chosen ? `${chosen.field}: ${chosen.problem}` : daysText(chosen);
}

test("untouched, the screen looks at the twelve months before the day of the workbook", () => {
  expect(days({})).toBe("2025-09-01 to 2026-08-31");
});

test.each([
  ["2026-09-01", "2026-01-01 to 2026-08-31"],
  // On the first of January the year that is over.
  ["2026-01-01", "2025-01-01 to 2025-12-31"],
  ["2026-01-02", "2026-01-01 to 2026-01-01"],
])("this year on %s is %s", (asOf, text) => {
  expect(days({ period: "this year" }, day(asOf))).toBe(text);
});

test("own dates start as the last twelve months and are taken as typed", () => {
  expect(days({ period: "own dates" })).toBe("2025-09-01 to 2026-08-31");
  expect(days({ period: "own dates", from: "2026-03-01", to: "2026-03-31" })).toBe("2026-03-01 to 2026-03-31");
  expect(days({ period: "own dates", from: "2026-03-01", to: "2026-03-01" })).toBe("2026-03-01 to 2026-03-01");
});

test.each([
  [{ from: "" }, "from: Fill in the first day."],
  [{ to: "" }, "to: Fill in the last day."],
  [{ from: "0202-03-01" }, "from: Fill in the first day."],
  [{ from: "2026-09-02" }, "to: The first day, 2026-09-02, lies after the last, 2026-08-31."],
])("own dates %j: %s", (typed, text) => {
  expect(days({ period: "own dates", ...typed })).toBe(text);
});

test("a choice that is not known is the usual one", () => {
  expect(days({ period: "next year" })).toBe("2025-09-01 to 2026-08-31");
});
