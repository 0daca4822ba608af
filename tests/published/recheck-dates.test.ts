import { Temporal } from "temporal-polyfill";
import { day } from "../../src/core/shared/days";
import { recheckBandageOff } from "../../src/functions/claws/recheck-bandage-off";
import { recheckBlockOff } from "../../src/functions/claws/recheck-block-off";
import { recheckDate } from "../../src/functions/claws/recheck-date";
import { recheckPainRelief } from "../../src/functions/claws/recheck-pain-relief";
import { recheckPlan } from "../../src/functions/claws/recheck-plan";
import { recheckStatus } from "../../src/functions/claws/recheck-status";
import { withdrawalClear } from "../../src/functions/claws/withdrawal-clear";
import { evaluate } from "../../src/functions/evaluate";

/** The day from which a spreadsheet's serials count. */
const DAY_ZERO = Temporal.PlainDate.from("1899-12-30");
/** Serials through the calendar of ECMAScript's Temporal alone. */
const serial = (date: Temporal.PlainDate): number => date.since(DAY_ZERO, { largestUnit: "day" }).days;
const addDays = (date: Temporal.PlainDate, days: number): Temporal.PlainDate => date.add({ days });

/** Every day from 2023-11-01 to 2029-03-01, both leap years among them, and the first and last days of more months. */
const someDays: Temporal.PlainDate[] = [];
for (
  let date = Temporal.PlainDate.from("2023-11-01");
  Temporal.PlainDate.compare(date, "2029-03-01") <= 0;
  date = addDays(date, 1)
)
  someDays.push(date);
for (const year of [1904, 1999, 2000, 2096, 2100, 2200, 2396, 2400])
  for (let month = 1; month <= 12; month++) {
    const first = Temporal.PlainDate.from({ year, month, day: 1 });
    someDays.push(first.with({ day: first.daysInMonth }), first);
  }

describe("Thomas et al. 2015: seen again, block off and outcome at 7, 28 and 35 days", () => {
  test.each([
    ["2024-02-20", "2024-02-27", "2024-03-19", "2024-03-26"],
    ["2023-02-20", "2023-02-27", "2023-03-20", "2023-03-27"],
  ])("claw horn lesion treated %s", (treated, first, second, third) => {
    for (const lesion of ["SU", "SH", "SHD", "WL", "WLA", "WLF"]) {
      const visits = [1, 2, 3].map((visit) => evaluate(recheckDate, [lesion, day(treated), null, visit]).value);
      expect(visits).toEqual([day(first), day(second), day(third)]);
    }
    expect(evaluate(recheckBlockOff, [day(treated), 28]).value).toBe(day(second));
  });

  test("every default lies inside the window of the trial", () => {
    const [first, second] = [1, 2].map(
      (visit) => Number(evaluate(recheckDate, ["SU", 45_000, null, visit]).value) - 45_000,
    );
    expect(first).toBeGreaterThanOrEqual(5);
    expect(first).toBeLessThanOrEqual(11);
    expect(second).toBeGreaterThanOrEqual(25);
    expect(second).toBeLessThanOrEqual(31);
  });
});

test("Klawitter et al. 2019: digital dermatitis checked every week, at most five treatments in four weeks", () => {
  const plan = evaluate(recheckPlan, ["DD", 45_000, "topical"]).value as unknown[][];
  const days = plan.slice(1).map(([due]) => Number(due) - 45_000);
  for (const after of days) expect(after % 7).toBe(0);
  expect(Math.max(...days)).toBeLessThanOrEqual(28);
});

describe("common practice, no source", () => {
  test("a block is looked at after two weeks", () => {
    expect(evaluate(recheckBlockOff, [45_000]).value).toBe(45_014);
  });
  test("pain relief is given for two to three days", () => {
    const days = Number(evaluate(recheckPainRelief, [45_000]).value) - 45_000 + 1;
    expect([2, 3]).toContain(days);
  });
  test("a bandage comes off within 24 hours", () => {
    expect(evaluate(recheckBandageOff, [45_000]).value).toBe(45_001);
  });
  test("topical treatment of digital dermatitis is given two or three times", () => {
    const plan = evaluate(recheckPlan, ["DD", 45_000, "spray"]).value as string[][];
    const repeats = plan.filter(([, what]) => what!.startsWith("topical treatment")).length;
    expect([2, 3]).toContain(repeats + 1);
  });
});

describe(`dates against Temporal, ${someDays.length} days with leap years and month ends`, () => {
  test("rechecks of claw horn lesions and digital dermatitis", () => {
    for (const date of someDays) {
      const from = serial(date);
      expect(evaluate(recheckDate, ["SU", from]).value).toBe(serial(addDays(date, 7)));
      expect(evaluate(recheckDate, ["WLA", from, null, 2]).value).toBe(serial(addDays(date, 28)));
      expect(evaluate(recheckDate, ["SH", from, null, 3]).value).toBe(serial(addDays(date, 35)));
      expect(evaluate(recheckDate, ["DD", from, null, 2]).value).toBe(serial(addDays(date, 14)));
    }
  });

  test("block, pain relief, bandage and withdrawal", () => {
    for (const date of someDays) {
      const from = serial(date);
      expect(evaluate(recheckBlockOff, [from]).value).toBe(serial(addDays(date, 14)));
      expect(evaluate(recheckPainRelief, [from, 3]).value).toBe(serial(addDays(date, 2)));
      expect(evaluate(recheckBandageOff, [from, 48]).value).toBe(serial(addDays(date, 2)));
      expect(evaluate(withdrawalClear, [from, 96]).value).toBe(serial(addDays(date, 5)));
      expect(evaluate(withdrawalClear, [from + 0.75, 96]).value).toBe(serial(addDays(date, 5)));
    }
  });

  test("days over and days ahead", () => {
    for (const date of someDays) {
      const today = serial(date);
      expect(evaluate(recheckStatus, [serial(addDays(date, -30)), null, today]).value).toBe("overdue 30 d");
      expect(evaluate(recheckStatus, [serial(date.add({ months: 1 })), null, today]).value).toBe(
        `in ${serial(date.add({ months: 1 })) - today} d`,
      );
    }
  });

  test("the serials stand for the days that Temporal names", () => {
    for (const date of someDays) expect(day(date.toString())).toBe(serial(date));
  });
});
