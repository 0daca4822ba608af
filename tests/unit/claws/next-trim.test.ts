import { defaultTrimRules } from "../../../src/core/claws/next-trim";
import { day } from "../../../src/core/shared/days";
import { printedTrimRules, trimRules } from "../../../src/functions/claws/kinds-of-trimming";
import { trimNext } from "../../../src/functions/claws/trim-next";
import { evaluate } from "../../../src/functions/evaluate";

const next = (...args: unknown[]) => evaluate(trimNext, args).value;
const calved = day("2024-01-10");
const midLactation = calved + 117;
const dryOff = day("2024-11-20");

describe("TRIM.NEXT", () => {
  test("a day before the days of a worksheet is refused, never counted back into them", () => {
    expect(() => next(null, null, day("1900-03-10"))).toThrow("21 days before 1900-03-10");
  });

  test("a trim fewer days before than the least number between trims covers the day", () => {
    expect(next(midLactation - 60, calved, dryOff)).toBe(midLactation);
    expect(next(midLactation - 59, calved, dryOff)).toBe(dryOff - 21);
    expect(next(midLactation, calved, dryOff)).toBe(dryOff - 21);
    expect(next(midLactation + 1, calved, dryOff)).toBe(dryOff - 21);
  });

  test("a cow not trimmed before has everything to come, also what is overdue", () => {
    expect(next(null, calved, dryOff)).toBe(midLactation);
    expect(next(null, null, dryOff)).toBe(dryOff - 21);
    expect(next(null, calved)).toBe(midLactation);
  });

  test("when the last trim covers all, nothing is left", () => {
    expect(() => next(dryOff, calved, dryOff)).toThrow(/no routine trim is left before the next calving.*2024-11-20/);
    expect(() => next(dryOff - 50, calved, dryOff)).toThrow(/no routine trim is left/);
  });

  test("without any date it asks for one", () => {
    expect(() => next()).toThrow("no rule has its date: enter calvedOn, dryOffOn or lastTrim");
    expect(() => next(calved)).toThrow(/no rule has its date/);
  });

  test("a dry-off that is not after the calving is refused", () => {
    expect(() => next(null, calved, calved)).toThrow(
      /dryOffOn must be after calvedOn \(2024-01-10\).*got "?2024-01-10/,
    );
    expect(() => next(null, calved, calved - 60)).toThrow(/dryOffOn must be after calvedOn/);
  });

  test("the farm's rules stand alone", () => {
    const rules = [
      ["When", "Days"],
      ["days in milk", 60],
      ["days in milk", 200],
    ];
    expect(next(null, calved, dryOff, rules)).toBe(calved + 60);
    expect(next(calved + 59, calved, dryOff, rules)).toBe(calved + 60);
    expect(next(calved + 60, calved, dryOff, rules)).toBe(calved + 200);
  });

  test("an interval counts from the last trim even where other rules are covered", () => {
    const rules = [
      ["When", "Days"],
      ["Days in milk", 60],
      ["after last trim", 150],
    ];
    expect(next(calved + 70, calved, null, rules)).toBe(calved + 220);
  });

  // 10 days before a dry-off 140 days after calving is 130 days in milk: the rule of 60 days comes first, whichever row it has.
  test("the earliest day of the rules comes first, in whichever order they stand", () => {
    const rules = [
      ["before dry-off", 10],
      ["days in milk", 60],
    ];
    for (const ordered of [rules, [...rules].reverse()])
      expect(next(null, calved, calved + 140, [["When", "Days"], ...ordered])).toBe(calved + 60);
  });

  test("a calving alone and a dry-off alone contradict nothing", () => {
    expect([next(null, calved), next(null, null, dryOff)]).toEqual([midLactation, dryOff - 21]);
  });

  test("a least number of days between trims has no day of its own, and an interval none without a last trim", () => {
    const only = (when: string, ...dates: unknown[]) =>
      next(...dates, [
        ["When", "Days"],
        [when, 60],
      ]);
    expect(() => only("between trims", calved, calved, dryOff)).toThrow(/no rule has its date/);
    expect(() => only("after last trim", null, calved, dryOff)).toThrow(/no rule has its date/);
  });

  test("the built-in rules printed as a table are read back as they are", () => {
    expect(trimRules.read(printedTrimRules(), "rules")).toEqual(
      defaultTrimRules.map(({ when, days }) => ({ when, days })),
    );
  });

  test.each([
    [["weekly", 7], /rules row 2 "When" must be "days in milk".*got "weekly"/],
    [["days in milk", "60 d"], /rules row 2 "Days" must be .*got "60 d"/],
    [["days in milk", -5], /rules row 2 "Days" must be .*got -5/],
    [["days in milk", null], /rules row 2 "Days" is blank/],
  ])("refuses the rule %j", (row, message) => {
    expect(() => next(null, calved, null, [["When", "Days"], row])).toThrow(message);
  });
});
