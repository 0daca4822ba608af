import { foldWords } from "../fold-words";
import { looksLikeDate } from "../text-dates";
import type { Unit } from "./mapping";
import type { Profile } from "./profile";

/** A unit that is proposed, and why. Below a half the two look alike and the user has to say. */
export interface UnitGuess {
  readonly unit: Unit;
  readonly certainty: number;
  readonly because: string;
}

/** From this certainty on a unit need not be asked for. */
export const UNIT_CERTAIN = 0.6;

/** Cell counts: a herd's median lies near 100 thousand (common practice, no source), so a median above this is in cells. */
const COUNT_IN_CELLS_FROM = 5000;
/** No herd's daily milk has a median above this in kg (common practice, no source). */
const MILK_IN_POUNDS_FROM = 55;
/** A toe is some 70 to 100 mm long: 7 to 10 cm, 2.8 to 4 inches. */
const TOE_MM_FROM = 25;
const TOE_CM_FROM = 5;

/** The unit of a column of numbers; undefined where its kind has none. */
export function guessUnit(key: string, heading: string, profile: Profile): UnitGuess | undefined {
  const words = foldWords(heading).split(" ");
  const named = (...texts: string[]): boolean => words.some((word) => texts.includes(word));
  switch (key) {
    case "count":
      return countUnit(heading, words, profile);
    case "milkKg":
      return milkUnit(named, profile);
    case "toeMm":
      return toeUnit(named, profile);
    case "score":
      return scale(profile);
    default:
      return undefined;
  }
}

function countUnit(heading: string, words: readonly string[], { median }: Profile): UnitGuess {
  const inCells = median >= COUNT_IN_CELLS_FROM;
  const saysThousand =
    words.some((word) => ["thousand", "thousands", "tsd", "tusind", "mille", "miles", "duizend", "k"].includes(word)) ||
    /1\s?[.,]?\s?000/.test(heading);
  if (saysThousand && !inCells) {
    return { unit: "thousand cells/mL", certainty: 0.95, because: "the heading says thousands" };
  }
  if (Number.isNaN(median)) return { unit: "thousand cells/mL", certainty: 0.3, because: "there are no counts yet" };
  return {
    unit: inCells ? "cells/mL" : "thousand cells/mL",
    certainty: saysThousand ? 0.5 : 0.9,
    because: `half of the counts are above ${median}`,
  };
}

function milkUnit(named: (...texts: string[]) => boolean, { median }: Profile): UnitGuess {
  if (named("lb", "lbs", "pounds", "pound")) return { unit: "lb", certainty: 0.95, because: "the heading says pounds" };
  if (named("l", "litres", "liters", "liter", "litros", "litre", "lt"))
    return { unit: "litres", certainty: 0.95, because: "the heading says litres" };
  if (named("kg", "mkg", "kgs", "kilo", "kilos"))
    return { unit: "kg", certainty: 0.95, because: "the heading says kg" };
  if (median > MILK_IN_POUNDS_FROM)
    return { unit: "lb", certainty: 0.7, because: `half of the yields are above ${median}, too much for kg` };
  return { unit: "kg", certainty: 0.4, because: "kg and litres look alike in the numbers" };
}

function toeUnit(named: (...texts: string[]) => boolean, { median }: Profile): UnitGuess {
  if (named("mm")) return { unit: "mm", certainty: 0.95, because: "the heading says mm" };
  if (named("cm")) return { unit: "cm", certainty: 0.95, because: "the heading says cm" };
  if (named("in", "inch", "inches")) return { unit: "inches", certainty: 0.95, because: "the heading says inches" };
  const unit = median >= TOE_MM_FROM ? "mm" : median >= TOE_CM_FROM ? "cm" : "inches";
  return { unit, certainty: Number.isNaN(median) ? 0.3 : 0.85, because: `half of the toes are longer than ${median}` };
}

function scale({ min, low, high, numbers }: Profile): UnitGuess {
  if (numbers === 0) return { unit: "0-3", certainty: 0.3, because: "there are no scores yet" };
  if (low >= 1 && high > 3 && high <= 5)
    return { unit: "1-5", certainty: 0.95, because: `scores run from ${low} to ${high}` };
  if (min === 0 && high <= 3) return { unit: "0-3", certainty: 0.95, because: `scores run from 0 to ${high}` };
  const unit = min === 0 ? "0-3" : "1-5";
  return { unit, certainty: 0.4, because: `scores run from ${low} to ${high}, which either scale has` };
}

/** The order of day and month of a column of dates written as text; undefined where the dates are real ones. */
export function guessDayOrder({ textDates, order, examples }: Profile): UnitGuess | undefined {
  if (textDates === 0) return undefined;
  const shown = examples.find((cell) => typeof cell === "string" && looksLikeDate(cell));
  if (order.order !== undefined) {
    return { unit: order.order, certainty: 0.95, because: `dates such as ${String(shown)} leave no other order` };
  }
  const because = "day and month could be either in every date written as text";
  return { unit: "day first", certainty: 0.3, because };
}
