import { Temporal } from "temporal-polyfill";
import { addDays, addMonths, dateOf, day, FIRST_DAY, isoDate, LAST_DAY, serialOf } from "../../../src/core/shared/days";
import { DomainError } from "../../../src/core/shared/domain-error";

/** Serial 61 is 1900-03-01. */
const MARCH_1 = Temporal.PlainDate.from("1900-03-01");
const temporal = (serial: number): Temporal.PlainDate => MARCH_1.add({ days: serial - FIRST_DAY });

describe("day serials against ECMAScript's Temporal", () => {
  test("every day from 1900-03-01 to 2100-12-31 has the same date, and back", () => {
    const last = day("2100-12-31");
    for (let serial = FIRST_DAY; serial <= last; serial++) {
      const iso = temporal(serial).toString();
      if (isoDate(serial) !== iso) expect([serial, isoDate(serial)]).toEqual([serial, iso]);
      if (serialOf(dateOf(serial)) !== serial) expect(serialOf(dateOf(serial))).toBe(serial);
    }
    expect(last - FIRST_DAY).toBe(MARCH_1.until("2100-12-31", { largestUnit: "day" }).days);
  });

  test("adding months ends on the last day where the day is missing", () => {
    for (let serial = day("2019-12-25"); serial <= day("2024-03-05"); serial++) {
      for (const months of [-25, -12, -1, 0, 1, 2, 3, 12, 13, 48]) {
        const expected = temporal(serial).add({ months }).toString();
        if (isoDate(addMonths(serial, months)) !== expected) {
          expect([isoDate(serial), months, isoDate(addMonths(serial, months))]).toEqual([
            isoDate(serial),
            months,
            expected,
          ]);
        }
      }
    }
    expect(isoDate(addMonths(day("2024-01-31"), 1))).toBe("2024-02-29");
  });
});

describe("day serials as a worksheet counts them", () => {
  test.each([
    ["1900-03-01", 61],
    ["2000-01-01", 36_526],
    ["2024-02-29", 45_351],
    ["9999-12-31", 2_958_465],
  ])("%s is %d (spreadsheet documentation: DATE, DATEVALUE)", (iso, serial) => {
    expect(day(iso)).toBe(serial);
    expect(isoDate(serial)).toBe(iso);
  });

  test("the last day is 9999-12-31", () => expect(isoDate(LAST_DAY)).toBe("9999-12-31"));
  test("days are added and taken away inside the days that a spreadsheet knows", () => {
    expect([addDays(LAST_DAY - 1, 1), addDays(FIRST_DAY + 1, -1)]).toEqual([LAST_DAY, FIRST_DAY]);
  });

  test("a day beyond them is refused with the limit, the days and the day they were counted from", () => {
    expect(() => addDays(LAST_DAY, 1)).toThrow(
      new DomainError("invalid", "a date must be at most 9999-12-31; got 1 days on from 9999-12-31"),
    );
    expect(() => addDays(FIRST_DAY, -21)).toThrow(
      new DomainError("invalid", "a date must be at least 1900-03-01; got 21 days before 1900-03-01"),
    );
    for (const days of [1, -LAST_DAY]) {
      expect(() => addDays(LAST_DAY, days)).toThrow(expect.objectContaining({ kind: "invalid" }));
    }
  });

  test.each(["2023-02-29", "2024-13-01", "2024-00-10", "2024-1-1", "29/02/2024", ""])("%s is no date", (iso) => {
    expect(() => day(iso)).toThrow(`got "${iso}"`);
    expect(() => day(iso)).toThrow(expect.objectContaining({ kind: "invalid" }));
  });
});
