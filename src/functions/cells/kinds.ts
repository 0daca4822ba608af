import { isCapped } from "../../core/cells/herd-doublings";
import type { TankTotals } from "../../core/cells/tank";
import { DomainError, unavailable } from "../../core/shared/domain-error";
import { type Column, columnOf, numbersOf, rowName } from "../columns";
import { required, type Remarks, withDefault } from "../define";
import { counted, figure } from "../figure";
import { choice, number } from "../scalars";

export type CountUnit = "thousand" | "cells/mL";

/** The two ways in which a herd sheet writes a cell count. */
export const countUnit = choice(["thousand", "cells/mL"], {
  thousands: "thousand",
  "thousand/mL": "thousand",
  "1000/mL": "thousand",
  "cells per mL": "cells/mL",
  "per mL": "cells/mL",
});

/** Counts as thousands from here on are taken for cells/mL: laboratories cap at 9,999 thousand. */
const LOOKS_LIKE_CELLS = 10_000;
/** Counts as cells/mL below this are taken for thousands: milk with under 1,000 cells/mL is not seen. */
const LOOKS_LIKE_THOUSANDS = 1_000;
/** One cell per mL, written in thousands: what is less is no count. */
const LOWEST_COUNT = 0.001;
/** No laboratory gives a count as high, in either unit. */
const HIGHEST_COUNT = 100_000_000;

/** A cell count as written; its unit stands in another argument. A 0 is no count. */
export const cellCount = number({
  min: LOWEST_COUNT,
  max: HIGHEST_COUNT,
  reason: "a count of cells; no milk holds more, and less than one per mL is none",
  zeroIsBlank: true,
});
export const cellCounts = columnOf(cellCount, { notes: "leave out" });

/** A somatic cell score. A 0 is real: 12.5 thousand cells/mL. */
export const cellScoreKind = number({ min: -4, max: 10, reason: "scores run from about 0 to 9; more is a count" });

/** Calvings so far. A 0 is a blank, or a heifer that has not calved: neither has milk to reckon with. */
export const lactation = number({
  min: 1,
  max: 20,
  whole: true,
  reason: "her calvings so far; more is another column, such as days or an ear tag",
  zeroIsBlank: true,
});
export const lactations = columnOf(lactation, { notes: "leave out" });

/** Milk of a day as written; its unit stands in another argument. A 0 is no milk. */
const dayMilk = number({
  min: 0,
  max: 250,
  reason: "a day's milk of one cow, in litres, kg or lb; more is a total of several days or cows",
  zeroIsBlank: true,
});
const dayMilks = columnOf(dayMilk, { notes: "leave out" });

export const milkUnit = choice(["litres", "kg", "lb"], {
  litre: "litres",
  liters: "litres",
  liter: "litres",
  L: "litres",
  kilograms: "kg",
  pounds: "lb",
  lbs: "lb",
});

export const days = number({
  unit: "days",
  min: 1,
  max: 366,
  whole: true,
  reason: "one test day says nothing about more than a year",
  zeroIsBlank: true,
});

export const milkPrice = number({
  min: 0,
  exclusiveMin: true,
  reason: "the price of one litre, kg or lb",
  zeroIsBlank: true,
});

export const unitParameter = withDefault(
  countUnit,
  "How the counts are written",
  "thousand",
  '"thousand" (thousand cells/mL)',
);
export const milkUnitParameter = withDefault(milkUnit, "Unit of milk", "litres", '"litres" (1.03 kg each)');
export const countsParameter = required(cellCounts, "Cell counts of one test day, one cow a row");
export const lactationsParameter = required(lactations, "Lactation numbers, one cow a row");
export const dayMilksParameter = required(dayMilks, "Milk of the test day, one cow a row");
export const daysParameter = required(
  days,
  "Days that the loss is reckoned over: about 305 a year for cows that also stand dry",
);
export const milkPriceParameter = required(milkPrice, "Price of one unit of milk (of a litre, not of 100 kg or cwt)");

/** The count in thousand cells/mL, or a refusal that names the likely mix-up of units. */
export function inThousands(count: number, unit: CountUnit, argument: string): number {
  const mixUp = mixedUp(count, unit);
  if (mixUp !== undefined)
    throw new DomainError("invalid", `${argument} ${mixUp.text}: give "${mixUp.other}" as the unit`);
  return unit === "thousand" ? count : count / 1000;
}

/** A count in thousand cells/mL in the unit of the sheet. */
export function inUnit(thousand: number, unit: CountUnit): number {
  return unit === "thousand" ? thousand : thousand * 1000;
}

/** A count in the unit of the sheet as a working shows it: "200 thousand cells/mL". */
export function countText(count: number, unit: CountUnit): string {
  return `${figure(count)} ${unit === "thousand" ? "thousand cells/mL" : unit}`;
}

/** The working from a score to its count. */
export function countOfScoreText(score: number, unit: CountUnit): string {
  return `${unit === "thousand" ? "100" : "100,000"} × 2^(${figure(score, 4)} - 3)`;
}

function mixedUp(count: number, unit: CountUnit): { readonly text: string; readonly other: CountUnit } | undefined {
  if (unit === "thousand" && count >= LOOKS_LIKE_CELLS) {
    const text = `must be below ${LOOKS_LIKE_CELLS} thousand cells/mL; got ${count}, which looks like cells/mL`;
    return { text, other: "cells/mL" };
  }
  if (unit === "cells/mL" && count < LOOKS_LIKE_THOUSANDS) {
    const text = `must be ${LOOKS_LIKE_THOUSANDS} cells/mL or more; got ${count}, which looks like thousands`;
    return { text, other: "thousand" };
  }
  return undefined;
}

/** A column in thousand cells/mL, NaN where there is no count. A count that looks like the other unit is refused with its row. */
export function columnInThousands(column: Column<number>, unit: CountUnit): Float64Array {
  const counts = numbersOf(column);
  if (unit === "thousand") {
    for (let row = 0; row < counts.length; row++) {
      if (counts[row]! >= LOOKS_LIKE_CELLS) throw mixedColumn(column, row, unit);
    }
    return counts;
  }
  const thousands = new Float64Array(counts.length);
  for (let row = 0; row < counts.length; row++) {
    if (counts[row]! < LOOKS_LIKE_THOUSANDS) throw mixedColumn(column, row, unit);
    thousands[row] = counts[row]! / 1000;
  }
  return thousands;
}

function mixedColumn(column: Column<number>, row: number, unit: CountUnit): DomainError {
  const { text, other } = mixedUp(numbersOf(column)[row]!, unit)!;
  const all = column.values.every((count) => count === null || mixedUp(count, unit) !== undefined);
  const advice = all ? `give "${other}" as the unit` : "a column must hold one unit throughout";
  return new DomainError("invalid", `${rowName(column.argument, row)} ${text}: ${advice}`);
}

/** Refuses a column without a single count. */
export function noCount(argument: string): DomainError {
  return unavailable(`${argument} holds no count: enter at least one`);
}

export function remarkOnCapped(capped: number, remarks: Remarks): void {
  if (capped === 0) return;
  const counts = capped === 1 ? "1 count stands" : `${capped} counts stand`;
  remarks.add(`${counts} at the laboratory's cap (9,999 thousand): the true figure is that or more`);
}

export function cappedIn(thousands: ArrayLike<number>): number {
  let capped = 0;
  for (let row = 0; row < thousands.length; row++) if (isCapped(thousands[row]!)) capped++;
  return capped;
}

/** Says which cows the tank was reckoned without. */
export function remarkOnTank({ withoutCount, withoutMilk }: TankTotals, remarks: Remarks): void {
  if (withoutCount > 0) remarks.add(`${counted(withoutCount, "row")} with milk left out: no count`);
  if (withoutMilk > 0) remarks.add(`${counted(withoutMilk, "row")} with a count left out: no milk`);
}

export const NO_DIAGNOSIS =
  "A high count is no diagnosis: treatment, drying off and culling are decided with a licensed veterinarian.";
export const WITHHELD_MILK =
  "Milk kept out of the tank after treatment: the withdrawal period on the label counts, whatever this figure.";
