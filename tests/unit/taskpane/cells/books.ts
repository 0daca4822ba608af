import { day } from "../../../../src/core/shared/days";
import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import type { PlainCell } from "../../../../src/workbook/port";
import { table } from "../due/small-book";
import { largeHerd } from "../large-herd";

export const LATEST = day("2024-03-10");
export const BEFORE = day("2024-02-10");
export const BOOK_TODAY = day("2024-03-20");

type Row = readonly PlainCell[];

/** Two cows whose loss is worked by hand: each two doublings above 50 thousand, one in her first lactation. */
export const TWO_COWS: readonly Row[] = [
  [LATEST, "A1", 1, 60, 20, 200],
  [LATEST, "A2", 2, 90, 30, 200],
];

function tests(rows: readonly Row[]): MemoryTable {
  return table("Tests", ["Date", "Cow", "Lactation", "Days in milk", "Milk kg", "Count"], rows);
}

const price = (...row: Row): MemoryTable =>
  table("Prices", ["Item", "Price", "Per", "Currency", "Year"], row.length === 0 ? [] : [row]);
const MILK = ["Milk", 0.5, "litre", "EUR", 2024] as const;
const costs = (rows: readonly Row[]): MemoryTable =>
  table("Costs", ["Lesion", "Cost per case", "Currency", "Year", "Source"], rows);
const COSTS: readonly Row[] = [
  ["SU", 178, "EUR", 2024, "own books"],
  ["DD", 61, "EUR", 2024, "own books"],
];
const findings = (rows: readonly Row[]): MemoryTable =>
  table("Findings", ["Date", "Cow", "Foot", "Lesion", "Treatment"], rows);
const FINDINGS: readonly Row[] = [
  [LATEST, "A1", "LH", "SU", "block"],
  [LATEST, "A2", "RH", "DD", null],
  [LATEST, "A2", "LH", "DD", null],
  [LATEST, "A2", "LF", "HHE", null],
];

/** Books that lack something, by what they lack. */
export const BOOKS: Readonly<Record<string, () => MemoryBook>> = {
  sound: () => book(TWO_COWS),
  empty: () => new MemoryBook([tests([]), price(), costs([]), findings([])]),
  "no tables": () => new MemoryBook([]),
  "one cow": () => book([TWO_COWS[0]!]),
  "no lactations": () =>
    book(TWO_COWS.map(([on, cow, , days, milk, count]) => [on!, cow!, null, days!, milk!, count!])),
  "mixed units": () => book([TWO_COWS[0]!, [LATEST, "A2", 2, 90, 30, 200_000]]),
  capped: () => book([TWO_COWS[0]!, [LATEST, "A2", 2, 90, 30, 9999]]),
  "no milk": () =>
    book(TWO_COWS.map(([on, cow, lactation, days, , count]) => [on!, cow!, lactation!, days!, null, count!])),
  "no price": () => new MemoryBook([tests(TWO_COWS), costs(COSTS), findings(FINDINGS)]),
  "no costs": () => new MemoryBook([tests(TWO_COWS), price(...MILK), findings(FINDINGS)]),
  "two currencies": () =>
    new MemoryBook([tests(TWO_COWS), price("Milk", 0.4, "litre", "USD", 2020), costs(COSTS), findings(FINDINGS)]),
  large: () => new MemoryBook([...largeHerd().state.tables, price(...MILK), costs(COSTS)]),
};

function book(rows: readonly Row[]): MemoryBook {
  return new MemoryBook([tests(rows), price(...MILK), costs(COSTS), findings(FINDINGS)]);
}
