import { milkFromKg } from "../../core/shared/milk-units";
import type { PlainCell } from "../../workbook/port";
import type { ColumnDefinition } from "../../workbook/table-definition";
import { isDay, type TypedValue } from "../../workbook/table-port";
import { codeOfKey, type LesionWords } from "../codes/words";
import { CELLS_PER_THOUSAND, type Convert, choiceReaders, converter, MM_PER_CM, MM_PER_INCH } from "../mapping/convert";
import { DAY_ORDERS, type MappedColumn, type MilkMeasure } from "../mapping/mapping";
import type { DayOrder } from "../text-dates";
import { dayWriter } from "./day-writer";

/**
 * A value of ours as the farm's column holds it: its unit, its words, its way of writing dates. undefined where the
 * farm's column can hold nothing that would be read as this value again.
 */
export type ConvertBack = (value: TypedValue) => TypedValue | undefined;

/** How values are brought into the terms of a farm's column. `cells` are what it holds. */
export function backConverter(
  mapped: MappedColumn,
  column: ColumnDefinition,
  words: LesionWords,
  cells: readonly PlainCell[],
): ConvertBack {
  const forward = converter(mapped, column, words);
  if (column.holds === "day") return ofDay(mapped, cells);
  if (column.holds === "lesion") {
    const written = wordsIn(cells, forward);
    return ofText(forward, codeOfKey, (code) => lesionWords(words, code, written(code)));
  }
  if (choiceReaders[mapped.key] !== undefined) {
    const written = wordsIn(cells, forward);
    const choiceOf = (text: string): string | undefined => column.choices?.find((choice) => choice === text);
    return ofText(forward, choiceOf, (choice) => [...written(choice), choice]);
  }
  const fromOurs = unitOf(mapped);
  return fromOurs === undefined ? (value) => value : ofNumber(forward, fromOurs);
}

/** Where the farm has one word for a code, that; where it has several, none of them is better than the code. */
function lesionWords(words: LesionWords, code: string, written: readonly string[]): readonly string[] {
  const own = words.wordsFor(code);
  if (own.length === 1) return [own[0]!, code];
  const known = own.length > 1 ? own : written;
  return known.length === 1 ? [known[0]!, code] : [code, ...known];
}

/** The words that the column holds for a word or code of ours, the most frequent first. */
function wordsIn(cells: readonly PlainCell[], forward: Convert): (ours: string) => readonly string[] {
  let found: Map<PlainCell, Map<string, number>> | undefined;
  return (ours) => {
    found ??= countWords(cells, forward);
    return [...(found.get(ours) ?? [])].sort(([, a], [, b]) => b - a).map(([word]) => word);
  };
}

function countWords(cells: readonly PlainCell[], forward: Convert): Map<PlainCell, Map<string, number>> {
  const found = new Map<PlainCell, Map<string, number>>();
  for (const cell of cells) {
    if (typeof cell !== "string") continue;
    const word = cell.trim();
    const ours = forward(word);
    const counts = found.get(ours) ?? new Map<string, number>();
    found.set(ours, counts);
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return found;
}

/** The first candidate that is read as the value; text that is no word of ours stays as it is. */
function ofText(
  forward: Convert,
  ours: (text: string) => string | undefined,
  candidates: (ours: string) => readonly string[],
): ConvertBack {
  return (value) => {
    const known = typeof value === "string" ? ours(value) : undefined;
    return known === undefined ? value : candidates(known).find((word) => forward(word) === known);
  };
}

function unitOf({ key, unit }: MappedColumn): ((ours: number) => number) | undefined {
  if (key === "count" && unit === "cells/mL") return (thousand) => thousand * CELLS_PER_THOUSAND;
  if (key === "milkKg" && (unit === "lb" || unit === "litres")) return (kg) => milkFromKg(kg, unit as MilkMeasure);
  if (key === "toeMm" && unit === "cm") return (mm) => mm / MM_PER_CM;
  if (key === "toeMm" && unit === "inches") return (mm) => mm / MM_PER_INCH;
  return undefined;
}

/** More decimals than a number has. */
const MOST_DECIMALS = 12;

/** The amount with the fewest decimals that is read as the value again. */
function ofNumber(forward: Convert, fromOurs: (ours: number) => number): ConvertBack {
  return (value) => {
    if (typeof value !== "number") return value;
    const amount = fromOurs(value);
    for (let decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
      const rounded = Number(amount.toFixed(decimals));
      if (forward(rounded) === value) return rounded;
    }
    return amount;
  };
}

/** A real date where the column holds such; text in the farm's order where it holds dates as text. */
function ofDay({ unit }: MappedColumn, cells: readonly PlainCell[]): ConvertBack {
  const order: DayOrder | undefined = DAY_ORDERS.find((known) => known === unit);
  if (order === undefined) return (value) => value;
  const write = dayWriter(cells, order);
  return (value) => {
    const day = isDay(value) ? value.day : value;
    return typeof day === "number" ? write(day) : value;
  };
}
