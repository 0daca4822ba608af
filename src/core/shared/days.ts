import { DomainError } from "./domain-error";

/**
 * A day as the worksheet counts days: 1 is 1 January 1900 and, after the 29 February 1900 that never was
 * (serial 60, kept by spreadsheets for old files), 61 is 1 March 1900.
 */
export type DaySerial = number;

/** The first serial after the day that never was; earlier ones are no dates of a living herd. */
export const FIRST_DAY: DaySerial = 61;
/** 31 December 9999, the last day a spreadsheet knows. */
export const LAST_DAY: DaySerial = 2_958_465;

/** Serial of 1970-01-01. */
const UNIX_EPOCH: DaySerial = 25_569;

export interface CalendarDate {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

/**
 * Serial of a date of the Gregorian calendar.
 * Source: Howard Hinnant, "chrono-compatible low-level date algorithms", days_from_civil.
 */
export function serialOf({ year, month, day }: CalendarDate): DaySerial {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468 + UNIX_EPOCH;
}

/** Calendar date of a serial. Source: Howard Hinnant, as above, civil_from_days. */
export function dateOf(serial: DaySerial): CalendarDate {
  const z = serial - UNIX_EPOCH + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1;
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

/** A day as text, 2024-02-29. */
export function isoDate(serial: DaySerial): string {
  const { year, month, day } = dateOf(serial);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** Serial of a date written as 2024-02-29. Refuses a date that is not in the calendar. */
export function day(iso: string): DaySerial {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  if (parts) {
    const serial = serialOf({ year: Number(parts[1]), month: Number(parts[2]), day: Number(parts[3]) });
    if (isoDate(serial) === iso) return serial;
  }
  throw new DomainError("invalid", `a date must be written as 2024-02-29; got "${iso}"`);
}

/** The same day of the month so many months on; the last day of the month where that day is missing. */
export function addMonths(serial: DaySerial, months: number): DaySerial {
  const { year, month, day: dayOfMonth } = dateOf(serial);
  const count = year * 12 + (month - 1) + months;
  const target = { year: Math.floor(count / 12), month: (((count % 12) + 12) % 12) + 1 };
  return serialOf({ ...target, day: Math.min(dayOfMonth, daysInMonth(target.year, target.month)) });
}

function daysInMonth(year: number, month: number): number {
  // Counted from March, as the algorithm does, a month 13 is the January that follows.
  return serialOf({ year, month: month + 1, day: 1 }) - serialOf({ year, month, day: 1 });
}

/** The day so many days on, or before where `days` is below 0. Refuses a day that a spreadsheet does not know. */
export function addDays(serial: DaySerial, days: number): DaySerial {
  const moved = serial + days;
  if (moved >= FIRST_DAY && moved <= LAST_DAY) return moved;
  throw new DomainError(
    "invalid",
    moved > LAST_DAY
      ? `a date must be at most ${isoDate(LAST_DAY)}; got ${days} days on from ${isoDate(serial)}`
      : `a date must be at least ${isoDate(FIRST_DAY)}; got ${-days} days before ${isoDate(serial)}`,
  );
}
