import { formatNumber } from "../../../format";
import { milkText, moneyText } from "./money";

/** The loss as it is and as it would be. */
export interface WhatIf {
  readonly now: number;
  readonly then: number;
  readonly unit: string;
  /** Price of one unit of milk; undefined where there is none. */
  readonly price: number | undefined;
  readonly currency: string;
}

/** What would be left of the loss, and by how much it would be less. */
export function whatIfWords(condition: string, { now, then, unit, price, currency }: WhatIf): string {
  const amount = (milk: number): string =>
    price === undefined ? milkText(milk, unit) : `${moneyText(milk * price, currency)} (${milkText(milk, unit)})`;
  return `${condition}: ${amount(then)} would be left, ${amount(now - then)} less.`;
}

/** `from`: the count of the last of those cows; cows that tie with her are cured too. */
export function curedCondition(cows: number, from: number | undefined): string {
  const who = cows === 1 ? "the highest cow" : `the ${cows} highest cows`;
  return `If ${who}${from === undefined ? "" : ` (from ${formatNumber(from, "#,##0")} thousand)`} were cured`;
}

export function cappedCondition(thousand: number): string {
  return `If no cow were above ${formatNumber(thousand, "#,##0")} thousand`;
}

export const WHAT_IF_CAUTION =
  "Reckoned, not promised: whether and how a cow is treated, dried off or culled is decided with a licensed veterinarian.";
