import { dateOf, type DaySerial } from "../../../core/shared/days";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** "March 2026" */
export function monthName(serial: DaySerial): string {
  const { year, month } = dateOf(serial);
  return `${MONTHS[month - 1]!} ${year}`;
}

const SHORT = 3;

/** "Mar" */
export function shortMonthName(serial: DaySerial): string {
  return MONTHS[dateOf(serial).month - 1]!.slice(0, SHORT);
}
