import { dateOf, type DaySerial, serialOf } from "../core/shared/days";

/** In which order a date written as text names day, month and year. */
export type DayOrder = "day first" | "month first" | "year first";

/** The three numbers of a date written as text, in the order in which they are written. */
const WRITTEN_DATE =
  /^\s*(\d{1,4})\s*[./\s-]\s*(\d{1,2})\s*[./\s-]\s*(\d{1,4})\.?(?:[\sT]+\d{1,2}:\d{2}(?::\d{2})?)?\s*$/;

/** Two-digit years up to this belong to this century, later ones to the last: the rule of spreadsheets for 2029. */
const LAST_SHORT_YEAR = 29;
const MONTHS = 12;
/** Years in which a living herd's dates lie. */
const YEARS = [1980, 2100] as const;

interface DateNumbers {
  readonly first: number;
  readonly second: number;
  readonly third: number;
  readonly yearFirst: boolean;
}

function numbersOf(text: string): DateNumbers | undefined {
  const parts = WRITTEN_DATE.exec(text);
  if (parts === null) return undefined;
  const yearFirst = parts[1]!.length === 4;
  const year = yearFirst ? parts[1]! : parts[3]!;
  if ((yearFirst ? parts[3]! : parts[1]!).length > 2 || year.length === 1 || year.length === 3) return undefined;
  return { first: Number(parts[1]), second: Number(parts[2]), third: Number(parts[3]), yearFirst };
}

/** Whether a text looks like a date made of three numbers. */
export function looksLikeDate(text: string): boolean {
  return numbersOf(text) !== undefined;
}

/** The orders in which a text is a day of the calendar: both, where day and month could be either. */
export function possibleOrders(text: string): readonly DayOrder[] {
  const numbers = numbersOf(text);
  if (numbers === undefined) return [];
  const orders: readonly DayOrder[] = numbers.yearFirst ? ["year first"] : ["day first", "month first"];
  return orders.filter((order) => textDate(text, order) !== undefined);
}

/** Serial of a date written as text; undefined where it is none in that order. Year first is read in any order. */
export function textDate(text: string, order: DayOrder): DaySerial | undefined {
  const numbers = numbersOf(text);
  if (numbers === undefined) return undefined;
  const { first, second, third, yearFirst } = numbers;
  if (yearFirst) return serial(first, second, third);
  if (order === "year first") return undefined;
  const year = third >= 100 ? third : third + (third <= LAST_SHORT_YEAR ? 2000 : 1900);
  return order === "day first" ? serial(year, second, first) : serial(year, first, second);
}

function serial(year: number, month: number, day: number): DaySerial | undefined {
  if (year < YEARS[0] || year > YEARS[1] || month < 1 || month > MONTHS || day < 1) return undefined;
  const result = serialOf({ year, month, day });
  const back = dateOf(result);
  return back.month === month && back.day === day ? result : undefined;
}

/** What the dates of a column tell of their order. */
export interface OrderEvidence {
  /** The order in which every date that leaves no choice is written; undefined where none does or they disagree. */
  readonly order: DayOrder | undefined;
  /** Dates that can only be day first, and only month first. */
  readonly dayFirst: number;
  readonly monthFirst: number;
  readonly either: number;
}

/** Looks at the texts of one column: a day after the 12th shows the order. */
export function orderOf(texts: Iterable<string>): OrderEvidence {
  let [dayFirst, monthFirst, either, yearFirst] = [0, 0, 0, 0];
  for (const text of texts) {
    const orders = possibleOrders(text);
    if (orders.length === 2) either++;
    else if (orders[0] === "day first") dayFirst++;
    else if (orders[0] === "month first") monthFirst++;
    else if (orders[0] === "year first") yearFirst++;
  }
  return { order: decided(dayFirst, monthFirst, either, yearFirst), dayFirst, monthFirst, either };
}

/** So many times more dates of one order than of the other make the others mistakes. */
const CLEAR_MAJORITY = 4;

function decided(dayFirst: number, monthFirst: number, either: number, yearFirst: number): DayOrder | undefined {
  if (dayFirst > 0 && dayFirst >= CLEAR_MAJORITY * monthFirst) return "day first";
  if (monthFirst > 0 && monthFirst >= CLEAR_MAJORITY * dayFirst) return "month first";
  return yearFirst > 0 && either + dayFirst + monthFirst === 0 ? "year first" : undefined;
}
