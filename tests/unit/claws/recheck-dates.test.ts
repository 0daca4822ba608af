import { day } from "../../../src/core/shared/days";
import { recheckBandageOff } from "../../../src/functions/claws/recheck-bandage-off";
import { recheckBlockOff } from "../../../src/functions/claws/recheck-block-off";
import { recheckDate } from "../../../src/functions/claws/recheck-date";
import { recheckPainRelief } from "../../../src/functions/claws/recheck-pain-relief";
import { recheckPlan } from "../../../src/functions/claws/recheck-plan";
import { recheckStatus } from "../../../src/functions/claws/recheck-status";
import { withdrawalClear } from "../../../src/functions/claws/withdrawal-clear";
import { evaluate } from "../../../src/functions/evaluate";

const treated = day("2024-02-20");
const farmRules = [
  ["Lesion", "First recheck (days)", "Second recheck (days)"],
  ["SU", 10, ""],
  ["HHE", "", ""],
];

describe("RECHECK.DATE", () => {
  const date = (...args: unknown[]) => evaluate(recheckDate, args).value;

  test("takes codes, names and words of the trade", () => {
    for (const lesion of ["su", "Sole ulcer", "SOLE ULCER", "white line", "DD M2", "hairy heel wart"])
      expect(date(lesion, treated)).toBe(treated + 7);
    expect(date("foul in the foot", treated)).toBe(treated + 3);
  });

  test("the farm's rules stand alone: no built-in day fills a gap in them", () => {
    expect(date("SU", treated, farmRules)).toBe(treated + 10);
    expect(() => date("DD", treated, farmRules)).toThrow("rules must have a row for DD; it has SU, HHE");
    expect(() => date("SU", treated, farmRules, 2)).toThrow(/visit must be at most 1 for SU.*got 2/);
    expect(() => date("HHE", treated, farmRules)).toThrow("the rule of HHE has no first recheck: nothing to recheck");
  });

  test("a lesion without a source has no day", () => {
    for (const code of ["U", "BU", "TU", "DS", "TS", "ID", "HHE", "IH", "AC", "CD", "CC", "SC", "HF", "SW"])
      expect(() => date(code, treated)).toThrow(`no source gives a recheck for ${code}: pass a rules table`);
  });

  test("toe necrosis goes to the veterinarian", () => {
    expect(() => date("TN", treated)).toThrow(/veterinarian now/);
  });

  test("a sound foot has nothing to recheck", () => {
    for (const word of ["none", "sound", "nothing found", "DD M0"])
      expect(() => date(word, treated)).toThrow("there is nothing to recheck");
  });

  test("an unknown code names those that are near", () => {
    expect(() => date("SX", treated)).toThrow(/lesion must be .*got "SX": nearest known codes? .*S/);
  });

  test.each([0.5, 4, -1])("visit %d is refused", (visit) => {
    expect(() => date("SU", treated, null, visit)).toThrow(/visit must be a whole number from 1 to 3/);
  });

  test("a date past the last one of a sheet is refused", () => {
    expect(() => date("SU", 2_958_465)).toThrow(/at most 9999-12-31/);
    expect(date("SU", 2_958_458)).toBe(2_958_465);
  });
});

describe("RECHECK.BLOCKOFF, PAINRELIEF, BANDAGEOFF", () => {
  test("a block is never left without a day to take it off", () => {
    expect(evaluate(recheckBlockOff, [treated]).remarks.join()).toContain("take it off by 2024-03-19");
    expect(evaluate(recheckBlockOff, [treated, 28]).remarks).toEqual([]);
    expect(evaluate(recheckBlockOff, [treated, 29]).remarks.join()).toContain("longer than the 28 days");
    expect(evaluate(recheckBlockOff, [treated, 42]).value).toBe(treated + 42);
    expect(() => evaluate(recheckBlockOff, [treated, 43])).toThrow(/days must be .*42 days.*got 43/);
  });

  test("a course of one day ends on its first day; a long one is flagged", () => {
    expect(evaluate(recheckPainRelief, [treated, 1]).value).toBe(treated);
    expect(evaluate(recheckPainRelief, [treated, 3]).remarks).toEqual([]);
    expect(evaluate(recheckPainRelief, [treated, 4]).remarks.join()).toContain("only as prescribed");
  });

  test("part of a day of bandage is rounded down, and more than 24 hours is accepted and flagged", () => {
    expect(evaluate(recheckBandageOff, [treated, 23]).value).toBe(treated);
    expect(evaluate(recheckBandageOff, [treated, 24]).remarks).toEqual([]);
    expect(evaluate(recheckBandageOff, [treated, 36])).toEqual({
      value: treated + 1,
      remarks: [expect.stringContaining("36 hours is longer than the usual 24")],
    });
    expect(() => evaluate(recheckBandageOff, [treated, 241])).toThrow(/hours must be .*240 hours.*got 241/);
  });
});

describe("RECHECK.STATUS", () => {
  const status = (...args: unknown[]) => evaluate(recheckStatus, args).value;

  test("turns on the day itself", () => {
    expect(status(treated, null, treated - 1)).toBe("in 1 d");
    expect(status(treated, null, treated)).toBe("today");
    expect(status(treated, null, treated + 1)).toBe("overdue 1 d");
  });

  test("a recheck that was done is done, whenever it was due", () => {
    expect(status(treated, treated - 3, treated)).toBe("done");
    expect(status(treated, treated + 9, treated + 9)).toBe("done");
    expect(status(treated, treated)).toBe("done");
  });

  test("done after today is refused; done long before it was due is flagged", () => {
    expect(() => status(treated, treated + 1, treated)).toThrow(
      "doneOn must be no later than today (2024-02-20); got 2024-02-21",
    );
    expect(evaluate(recheckStatus, [treated, treated - 8, treated]).remarks.join()).toContain("done 8 days before");
    expect(evaluate(recheckStatus, [treated, treated - 7, treated]).remarks).toEqual([]);
  });

  test("an open recheck needs today", () => {
    expect(() => status(treated, null)).toThrow("today is blank: enter today's date");
  });
});

describe("RECHECK.PLAN", () => {
  const plan = (...args: unknown[]) => (evaluate(recheckPlan, args).value as unknown[][]).slice(1);

  test("a block gets its days even where the lesion has no rule, and the missing rule is said", () => {
    expect(plan("TU", treated, "block")).toEqual([
      [treated + 14, "look at the block"],
      [treated + 28, "take the block off"],
      ["", "no recheck rule for TU: add a row to rules"],
    ]);
  });

  test("without a rule and without aftercare there is no plan", () => {
    expect(() => plan("TU", treated)).toThrow("no source gives a recheck for TU");
    expect(() => plan("none", treated)).toThrow("nothing to recheck");
  });

  test("a block put on a sound claw still comes off", () => {
    expect(plan("none", treated, "block")).toHaveLength(2);
  });

  test("the days of the farm's rules come first", () => {
    const rules = [
      [
        "Lesion",
        "First recheck",
        "Block check",
        "Block off",
        "Pain relief",
        "Bandage off",
        "Topical repeat",
        "Topical treatments",
      ],
      ["DD", 5, 10, 20, 2, 48, 3, 2],
    ];
    expect(plan("DD", treated, "block, painkiller, wrap, paste", rules)).toEqual([
      [treated + 1, "last day of pain relief"],
      [treated + 2, "take the bandage off"],
      [treated + 3, "topical treatment 2 of 2"],
      [treated + 5, "first recheck"],
      [treated + 10, "look at the block"],
      [treated + 20, "take the block off"],
    ]);
  });
});

describe("WITHDRAWAL.CLEAR", () => {
  const clear = (...args: unknown[]) => evaluate(withdrawalClear, args).value;

  test("a blank period has no default", () => {
    for (const blank of [null, "", 0])
      expect(() => clear(treated, blank)).toThrow(/^hours is blank: enter the period on the label/);
  });

  test("a dose without a time of day counts as given at the end of its day", () => {
    expect(clear(treated, 24)).toBe(treated + 2);
    expect(clear(treated, 12)).toBe(treated + 2);
    expect(clear(treated, 36)).toBe(treated + 3);
  });

  test("with a time of day the first whole day after the period is given", () => {
    expect(clear(treated + 0.25, 24)).toBe(treated + 2);
    expect(clear(treated + 8 / 24, 12)).toBe(treated + 1);
    expect(clear(treated + 0.5, 12)).toBe(treated + 1);
    expect(clear(treated + 0.5 + 1 / 1440, 12)).toBe(treated + 2);
    expect(clear(treated + 20 / 24, 36)).toBe(treated + 3);
  });

  test("never earlier than the period itself, whatever the time of day", () => {
    for (let minute = 1; minute < 1440; minute += 7)
      for (const hours of [12, 24, 36, 72, 96, 108]) {
        const end = treated + minute / 1440 + hours / 24;
        expect(Number(clear(treated + minute / 1440, hours))).toBeGreaterThanOrEqual(end - 1e-6);
        expect(Number(clear(treated + minute / 1440, hours))).toBeLessThan(end + 1);
      }
  });

  // From the end of 9999-12-29 12 hours end within 9999-12-30, so that the next day is the last one; a day later it is past it.
  test("a period that ends after the last day of a sheet is refused", () => {
    expect(clear(2_958_463, 12)).toBe(2_958_465);
    expect(() => clear(2_958_464, 12)).toThrow(/lastDose is so late that .* past the last day/);
    expect(() => clear(2_958_464, 12)).toThrow(expect.objectContaining({ kind: "invalid" }));
  });

  test("days of the label typed for hours are noticed", () => {
    expect(() => clear(treated, 7)).toThrow(/hours must be a number from 12 to 8760 hours.*multiply the days/);
    expect(() => clear(treated, 28)).toThrow(/hours must be a multiple of 12 hours.*got 28/);
    expect(clear(treated, 28 * 24)).toBe(treated + 29);
  });
});
