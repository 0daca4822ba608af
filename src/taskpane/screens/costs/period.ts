import { addMonths, type DaySerial, isoDate } from "../../../core/shared/days";
import { typedDay } from "../../typed-day";

/** The days that the costs are counted over, as date fields hold them. */
export interface TypedPeriod {
  readonly from: string;
  readonly to: string;
}

/** As typed, else the year up to the day before. */
export function shownPeriod(typed: Readonly<Record<string, string>>, asOf: DaySerial): TypedPeriod {
  return {
    from: typed["from"] ?? isoDate(addMonths(asOf, -12)),
    to: typed["to"] ?? isoDate(asOf - 1),
  };
}

/** First and last day; a sentence where they cannot be counted over. */
export function readPeriod({ from, to }: TypedPeriod): { readonly from: DaySerial; readonly to: DaySerial } | string {
  const [first, last] = [typedDay(from), typedDay(to)];
  if (first === undefined || last === undefined) return "Type a first and a last day.";
  if (first > last) return `The first day must not be after the last; got ${isoDate(first)} and ${isoDate(last)}.`;
  return { from: first, to: last };
}
