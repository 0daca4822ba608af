import { milkInKg } from "../../core/shared/milk-units";
import type { PlainCell } from "../../workbook/port";
import type { ColumnDefinition } from "../../workbook/table-definition";
import type { LesionWords } from "../codes/words";
import { type DayOrder, textDate } from "../text-dates";
import { DAY_ORDERS, type MappedColumn, type MilkMeasure } from "./mapping";
import { type ReadChoice, readClaw, readFoot, readGroup, readLandmark, readOutcome } from "./trade-values";

/** A farm's cell in our terms. What is not understood stays as it is, to be listed as doubtful. */
export type Convert = (cell: PlainCell) => PlainCell;

export const CELLS_PER_THOUSAND = 1000;
export const MM_PER_CM = 10;
/** Exact by definition: the international inch of 1959. */
export const MM_PER_INCH = 25.4;

/** Columns whose words are read as one of our choices, by key. */
export const choiceReaders: Readonly<Record<string, ReadChoice>> = {
  foot: readFoot,
  claw: readClaw,
  measuredFrom: readLandmark,
  outcome: readOutcome,
  group: readGroup,
};

const same: Convert = (cell) => cell;

/** How the cells of a mapped column are brought into our terms. */
export function converter({ key, unit }: MappedColumn, { holds }: ColumnDefinition, words: LesionWords): Convert {
  const reader = choiceReaders[key];
  if (reader !== undefined) return ofText(reader);
  if (holds === "lesion") return ofText((text) => words.codeOf(text));
  if (holds === "day") {
    const order = DAY_ORDERS.find((known) => known === unit);
    return order === undefined ? same : ofText((text) => textDate(text, order as DayOrder));
  }
  if (key === "count" && unit === "cells/mL") return ofNumber((cells) => cells / CELLS_PER_THOUSAND);
  if (key === "milkKg" && (unit === "lb" || unit === "litres")) {
    return ofNumber((amount) => exact(milkInKg(amount, unit as MilkMeasure)));
  }
  if (key === "toeMm" && unit === "cm") return ofNumber((cm) => exact(cm * MM_PER_CM));
  if (key === "toeMm" && unit === "inches") return ofNumber((inches) => exact(inches * MM_PER_INCH));
  return same;
}

/** Lengths and yields are written to a few decimals; what follows from them needs no more than these. */
const KEPT_DECIMALS = 1e6;

/** 8.2 cm is 82 mm, not 81.99999999999999. */
function exact(amount: number): number {
  return Math.round(amount * KEPT_DECIMALS) / KEPT_DECIMALS;
}

function ofNumber(convert: (value: number) => number): Convert {
  return (cell) => (typeof cell === "number" ? convert(cell) : cell);
}

/** A column repeats its words: each is read once. */
function ofText(read: (text: string) => string | number | undefined): Convert {
  const known = new Map<string, PlainCell>();
  return (cell) => {
    if (typeof cell !== "string") return cell;
    let converted = known.get(cell);
    if (converted === undefined) known.set(cell, (converted = read(cell) ?? cell));
    return converted;
  };
}
