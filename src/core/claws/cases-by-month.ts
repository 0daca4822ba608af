import { type DaySerial, dateOf, serialOf } from "../shared/days";
import { type DisorderGroup, disorders } from "./disorder-key";
import { type MarkedRows, NEW_CASE } from "./new-cases";

export const disorderGroups: readonly DisorderGroup[] = ["horn", "infectious", "shape", "other"];

/** New cases of one month. */
export interface MonthOfCases {
  readonly firstDay: DaySerial;
  readonly newCases: Readonly<Record<DisorderGroup, number>>;
}

/** New cases from `from` to `to`, both included, by calendar month and group; months without a case are there too. */
export function casesByMonth(
  rows: MarkedRows,
  dates: ArrayLike<number>,
  from: DaySerial,
  to: DaySerial,
): MonthOfCases[] {
  const start = monthNumber(from);
  const months = Array.from({ length: monthNumber(to) - start + 1 }, (_, index) => ({
    firstDay: serialOf({ year: Math.floor((start + index) / 12), month: ((start + index) % 12) + 1, day: 1 }),
    newCases: { horn: 0, infectious: 0, shape: 0, other: 0 },
  }));
  for (let row = 0; row < rows.marks.length; row++) {
    const date = dates[row]!;
    if (rows.marks[row] !== NEW_CASE || date < from || date > to) continue;
    months[monthNumber(date) - start]!.newCases[disorders[rows.disorders[row]!]!.group]++;
  }
  return months;
}

function monthNumber(serial: DaySerial): number {
  const { year, month } = dateOf(serial);
  return year * 12 + month - 1;
}
