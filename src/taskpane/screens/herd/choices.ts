import { addMonths, dateOf, day, type DaySerial, isoDate, serialOf } from "../../../core/shared/days";

/** The time that the screen looks at. */
export const PERIODS = ["last 12 months", "this year", "own dates"] as const;
export type Period = (typeof PERIODS)[number];

/** The cows that the screen looks at, as their blocks are named. */
const COW_GROUPS = ["all", "heifers", "first", "later"] as const;
export type CowGroup = (typeof COW_GROUPS)[number];

/** What the user chose at the top of the screen. */
export interface Choices {
  readonly period: Period;
  /** Own dates as typed, 2026-03-01. */
  readonly from: string;
  readonly to: string;
  readonly group: CowGroup;
}

/** First and last day. */
export interface Days {
  readonly from: DaySerial;
  readonly to: DaySerial;
}

const MONTHS_A_YEAR = 12;

/** The choices out of the fields that were touched; the others hold what is usual. */
export function choicesOf(typed: Readonly<Record<string, string>>, asOf: DaySerial): Choices {
  const usual = lastYear(asOf);
  return {
    period: PERIODS.find((period) => period === typed["period"]) ?? PERIODS[0],
    from: typed["from"] ?? isoDate(usual.from),
    to: typed["to"] ?? isoDate(usual.to),
    group: groupOf(typed),
  };
}

/** The cows chosen. */
export function groupOf(typed: Readonly<Record<string, string>>): CowGroup {
  return COW_GROUPS.find((group) => group === typed["group"]) ?? "all";
}

/** What is wrong with the days chosen, and the field where it is put right. */
export interface DaysProblem {
  readonly field: "from" | "to";
  readonly problem: string;
}

/** The days chosen, or what is wrong with them. The day that the workbook counts from is not over yet. */
export function daysOf({ period, from, to }: Choices, asOf: DaySerial): Days | DaysProblem {
  if (period === "last 12 months") return lastYear(asOf);
  if (period === "this year") return thisYear(asOf);
  if (!isDay(from)) return { field: "from", problem: "Fill in the first day." };
  if (!isDay(to)) return { field: "to", problem: "Fill in the last day." };
  const days = { from: day(from), to: day(to) };
  if (days.from <= days.to) return days;
  return { field: "to", problem: `The first day, ${from}, lies after the last, ${to}.` };
}

function lastYear(asOf: DaySerial): Days {
  return { from: addMonths(asOf, -MONTHS_A_YEAR), to: asOf - 1 };
}

/** From the first of January to yesterday; on that day itself the year before. */
function thisYear(asOf: DaySerial): Days {
  const to = asOf - 1;
  return { from: serialOf({ year: dateOf(to).year, month: 1, day: 1 }), to };
}

function isDay(text: string): boolean {
  return /^[1-9]\d{3}-\d\d-\d\d$/.test(text);
}

/** "2025-09-01 to 2026-08-31". */
export function daysText({ from, to }: Days): string {
  return `${isoDate(from)} to ${isoDate(to)}`;
}
