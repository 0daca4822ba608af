import { formatNumber } from "../../../format";

const CENTS_UP_TO = 100;

/** An amount of money in words: whole from 100 on, with cents below. Without a currency it is only called money. */
export function moneyText(amount: number, currency: string): string {
  const figures = formatNumber(amount, Math.abs(amount) < CENTS_UP_TO ? "#,##0.00" : "#,##0");
  return `${figures} ${currency === "" ? "(no currency given)" : currency}`;
}

/** "74,520 litres" */
export function milkText(amount: number, unit: string): string {
  return `${formatNumber(amount, "#,##0")} ${unit}`;
}

/** "240 thousand/mL", or as the sheet writes counts. */
export function countText(count: number, unit: string): string {
  return `${formatNumber(count, "#,##0")} ${unit === "thousand" ? "thousand/mL" : unit}`;
}

/** "12.5 %" */
export function shareText(share: number): string {
  return formatNumber(share, Math.abs(share) < 0.1 && share !== 0 ? "0.0%" : "0%");
}
