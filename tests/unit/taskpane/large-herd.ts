import { MemoryBook, type MemoryTable } from "../../../src/workbook/memory/book";
import type { PlainCell } from "../../../src/workbook/port";
import { largeBook } from "./due/large-book";
import { table, TODAY } from "./due/small-book";

const COWS = 5_000;
const MONTHS = 12;
const DAYS_A_MONTH = 30;

/** The large herd of the Due screen with a scoring and a milk test a month: 60,000 rows of each; and targets. */
export function largeHerd(): MemoryBook {
  const tables = largeBook().state.tables.filter(({ name }) => name !== "Scores");
  return new MemoryBook([...tables, scores(), tests(), targets()]);
}

export { TODAY as LARGE_TODAY } from "./due/small-book";

function monthly(row: (day: number, cow: number, month: number) => readonly PlainCell[]): PlainCell[][] {
  return Array.from({ length: MONTHS * COWS }, (_, index) => {
    const month = Math.floor(index / COWS);
    return [...row(TODAY - 2 - DAYS_A_MONTH * (MONTHS - 1 - month), 1 + (index % COWS), month)];
  });
}

function scores(): MemoryTable {
  return table(
    "Scores",
    ["Date", "Cow", "Score"],
    monthly((day, cow, month) => [day, cow, [0, 1, 0, 2, 1, 0, 0, 3, 1, 0][(cow * 7 + month * 3) % 10]!]),
  );
}

function tests(): MemoryTable {
  return table(
    "Tests",
    ["Date", "Cow", "Lactation", "Days in milk", "Milk kg", "Count"],
    monthly((day, cow, month) => [
      day,
      cow,
      1 + (cow % 5),
      5 + ((cow * 13 + month * DAYS_A_MONTH) % 300),
      20 + (cow % 25),
      15 + ((cow * 37 + month * 11) % 600),
    ]),
  );
}

function targets(): MemoryTable {
  return table(
    "Targets",
    ["Lesion", "Target per 100 cow-years"],
    [
      ["SU", 13.8],
      ["WL", 12.7],
      ["DD", 12],
      ["IP", 7.1],
    ],
  );
}
