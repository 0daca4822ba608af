import type { PlainCell } from "../../workbook/port";
import { type OrderEvidence, looksLikeDate, orderOf } from "../text-dates";
import { textNumber } from "../text-numbers";
import { type Block, type BlockColumn } from "./block";
import { cellAt, holds } from "../../workbook/plain-book";

/** What the cells of a column are like, from a sample spread over all rows. */
export interface Profile {
  readonly filled: number;
  /** Shares of the filled cells; a number typed as text is a number here. */
  readonly numbers: number;
  readonly whole: number;
  readonly days: number;
  readonly textDates: number;
  readonly words: number;
  readonly order: OrderEvidence;
  /** Of the numbers. `low` and `high` leave out a few at either end, which may be mistakes. */
  readonly low: number;
  readonly high: number;
  readonly min: number;
  readonly max: number;
  readonly median: number;
  /** Values that differ, folded. */
  readonly distinct: ReadonlySet<string>;
  /** Texts as written, without dates and numbers. */
  readonly texts: readonly string[];
  /** Three cells, to show. */
  readonly examples: readonly PlainCell[];
}

/** So many rows of a column tell what it is like. */
const MOST_SAMPLED = 500;
/** Serials of days of a living herd: 1980 to 2060. */
const DAYS_OF_HERDS = [29_221, 58_806] as const;
const EXAMPLES = 3;
/** So many values at either end of a column may be mistakes. */
const ODD_SHARE = 0.04;
/** In fewer values than these every one counts. */
const FEWEST_WITH_ODD = 12;

export function profileOf(block: Block, column: BlockColumn): Profile {
  const { sheet, firstRow, lastRow } = block;
  const step = Math.max(1, Math.floor((lastRow - firstRow + 1) / MOST_SAMPLED));
  const numbers: number[] = [];
  const texts: string[] = [];
  const dateTexts: string[] = [];
  const distinct = new Set<string>();
  const examples: PlainCell[] = [];
  let [filled, whole, days] = [0, 0, 0];
  for (let row = firstRow; row <= lastRow; row += step) {
    const cell = cellAt(sheet, row, column.column);
    if (cell === null) continue;
    filled++;
    const key = String(cell).trim().toLowerCase();
    if (!distinct.has(key) && examples.length < EXAMPLES) examples.push(cell);
    distinct.add(key);
    if (typeof cell === "number") {
      const shownAsDay = sheet.days.some((area) => holds(area, row, column.column));
      if (shownAsDay && cell >= DAYS_OF_HERDS[0] && cell <= DAYS_OF_HERDS[1]) days++;
      numbers.push(cell);
      if (Number.isInteger(cell)) whole++;
    } else if (typeof cell === "string") {
      const typed = textNumber(cell);
      if (looksLikeDate(cell)) dateTexts.push(cell);
      else if (typed === undefined) texts.push(cell.trim());
      else if (typed.value !== undefined) {
        numbers.push(typed.value);
        if (Number.isInteger(typed.value)) whole++;
      }
    }
  }
  numbers.sort((a, b) => a - b);
  const odd = numbers.length < FEWEST_WITH_ODD ? 0 : Math.ceil(numbers.length * ODD_SHARE);
  const share = (count: number): number => (filled === 0 ? 0 : count / filled);
  return {
    filled,
    numbers: share(numbers.length),
    whole: share(whole),
    days: share(days),
    textDates: share(dateTexts.length),
    words: share(texts.length),
    order: orderOf(dateTexts),
    low: numbers[odd] ?? NaN,
    high: numbers[numbers.length - 1 - odd] ?? NaN,
    min: numbers[0] ?? NaN,
    max: numbers.at(-1) ?? NaN,
    median: numbers[Math.floor(numbers.length / 2)] ?? NaN,
    distinct,
    texts,
    examples,
  };
}

/** Share of the numbers that could be days although they are not shown as such. */
export function couldBeDays({ numbers, whole, low, high }: Profile): boolean {
  return numbers > 0.5 && whole > 0.5 && low >= DAYS_OF_HERDS[0] && high <= DAYS_OF_HERDS[1];
}

/** Share of a column's words that a test knows. */
export function shareOf({ texts }: Profile, knows: (text: string) => boolean): number {
  if (texts.length === 0) return 0;
  const answers = new Map<string, boolean>();
  let known = 0;
  for (const text of texts) {
    let answer = answers.get(text);
    if (answer === undefined) answers.set(text, (answer = knows(text)));
    if (answer) known++;
  }
  return known / texts.length;
}
