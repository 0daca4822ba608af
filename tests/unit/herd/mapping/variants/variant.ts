import { day, isoDate } from "../../../../../src/core/shared/days";
import type { PlainCell } from "../../../../../src/workbook/port";

/** A column as an invented farm wrote it: its heading, what it means ("-" for nothing of ours), and its cells. */
export type VariantColumn = readonly [heading: string, means: string, cells: readonly PlainCell[]];

export interface VariantSheet {
  readonly sheet: string;
  /** Which of our tables the sheet holds. */
  readonly holds: "Cows" | "Findings" | "Scores" | "Tests";
  /** Rows of text above the headings. */
  readonly above?: readonly string[];
  readonly columns: readonly VariantColumn[];
  /** Headings of the columns whose numbers are shown as dates. */
  readonly shownAsDays?: readonly string[];
}

export interface Variant {
  readonly farm: string;
  readonly sheets: readonly VariantSheet[];
}

export const ROWS = 24;

/** The items one after the other, from the start again when they end. */
export function cycle(...items: readonly PlainCell[]): readonly PlainCell[] {
  return Array.from({ length: ROWS }, (_, row) => items[row % items.length]!);
}

/** Numbers from a first one on, not evenly spaced and none twice; the step is at least 2. */
export function numbers(first: number, step: number): readonly number[] {
  return Array.from({ length: ROWS }, (_, row) => first + row * step + (row % 2));
}

/** Numbers that go up and down between two ends; `decimals` as typed. */
export function between(low: number, high: number, decimals: number): readonly number[] {
  const factor = 10 ** decimals;
  return Array.from({ length: ROWS }, (_, row) => {
    return Math.round((low + ((high - low) * ((row * 11) % 17)) / 16) * factor) / factor;
  });
}

/** Days as serials. */
export function days(from: string, step: number): readonly number[] {
  return Array.from({ length: ROWS }, (_, row) => day(from) + row * step);
}

/** Days written as text by a pattern of yyyy, yy, mm, dd. */
export function written(pattern: string, from: string, step: number): readonly string[] {
  return days(from, step).map((serial) => {
    const [year, month, dayOfMonth] = isoDate(serial).split("-") as [string, string, string];
    return pattern.replace("yyyy", year).replace("yy", year.slice(2)).replace("mm", month).replace("dd", dayOfMonth);
  });
}
