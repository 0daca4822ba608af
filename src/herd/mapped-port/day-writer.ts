import { dateOf, type DaySerial, isoDate } from "../../core/shared/days";
import type { PlainCell } from "../../workbook/port";
import type { TypedValue } from "../../workbook/table-port";
import { type DayOrder, looksLikeDate, textDate } from "../text-dates";

/** How the texts of a column write a date. */
interface Pattern {
  /** What stands behind the first, the second and the third number. */
  readonly marks: readonly [string, string, string];
  readonly yearDigits: number;
  /** 05 in place of 5. */
  readonly padded: boolean;
}

const PARTS = /^\s*(\d{1,4})(\D+)(\d{1,2})(\D+)(\d{1,4})(\.?)/;
const YEAR_DIGITS = 4;
const DAY_DIGITS = 2;
const CENTURY = 100;

/**
 * Writes a day as a column holds its days: as a real date where most are real, else as text in the order and with the
 * marks of the texts. undefined where no text of that kind can stand for the day.
 */
export function dayWriter(cells: readonly PlainCell[], order: DayOrder): (day: DaySerial) => TypedValue | undefined {
  const texts = cells.filter((cell) => typeof cell === "string" && looksLikeDate(cell)) as readonly string[];
  const real = cells.filter((cell) => typeof cell === "number").length;
  if (real > 0 && real >= texts.length) return (day) => ({ day });
  const pattern = patternOf(texts, order);
  return (day) => {
    const written = pattern === undefined ? [] : [inPattern(pattern, day, order)];
    // Two digits for the year cannot hold every year; the year first is read in every column.
    return [...written, isoDate(day)].find((text) => textDate(text, order) === day);
  };
}

/** The pattern of the last text that has its year where the order has it. */
function patternOf(texts: readonly string[], order: DayOrder): Pattern | undefined {
  const parts = texts.map((text) => PARTS.exec(text)).filter((match) => match !== null);
  const like = parts.filter(([, first]) => (first!.length === YEAR_DIGITS) === (order === "year first"));
  const last = like.at(-1);
  if (last === undefined) return undefined;
  const [, first, mark, , otherMark, third, end] = last;
  const dayParts = like.flatMap(([, a, , b, , c]) => (order === "year first" ? [b!, c!] : [a!, b!]));
  return {
    marks: [mark!, otherMark!, end!],
    yearDigits: (order === "year first" ? first! : third!).length,
    padded: dayParts.every((part) => part.length === DAY_DIGITS),
  };
}

function inPattern({ marks, yearDigits, padded }: Pattern, serial: DaySerial, order: DayOrder): string {
  const date = dateOf(serial);
  const [day, month] = [date.day, date.month].map((part) => String(part).padStart(padded ? DAY_DIGITS : 1, "0")) as [string, string]; // oxfmt-ignore
  const year = String(yearDigits === YEAR_DIGITS ? date.year : date.year % CENTURY).padStart(yearDigits, "0");
  const orders = {
    "day first": [day, month, year],
    "month first": [month, day, year],
    "year first": [year, month, day],
  };
  return orders[order].map((part, index) => part + marks[index]).join("");
}
