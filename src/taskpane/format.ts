import { isoDate, FIRST_DAY, LAST_DAY } from "../core/shared/days";
import type { CellValue } from "../functions/cell";

/** Digits of a number that carries no format of its own: enough for any figure here, and free of 0.30000000000000004. */
const SIGNIFICANT_DIGITS = 12;

/** A number as the number format of a result writes it: "0", "0.0", "#,##0.00", "0.0%", "yyyy-mm-dd". */
export function formatNumber(value: number, format?: string): string {
  if (format === undefined) return plainNumber(value);
  if (/y/i.test(format)) return dateText(value);
  const percent = format.includes("%");
  const decimals = /0\.(0+)/.exec(format)?.[1]?.length ?? 0;
  const digits = (percent ? value * 100 : value).toFixed(decimals);
  const [whole = "", fraction] = digits.split(".");
  const grouped = format.includes(",") ? groupThousands(whole) : whole;
  return `${grouped}${fraction === undefined ? "" : `.${fraction}`}${percent ? " %" : ""}`;
}

/** A number without a format: 12,500.25 stays readable, rounding noise of the computer is cut. */
export function plainNumber(value: number): string {
  const [whole = "", fraction] = String(Number(value.toPrecision(SIGNIFICANT_DIGITS))).split(".");
  return fraction === undefined ? groupThousands(whole) : `${groupThousands(whole)}.${fraction}`;
}

/** A day as 2024-02-29; a number that is no day stays a number. */
export function dateText(serial: number): string {
  const whole = Math.floor(serial);
  return whole >= FIRST_DAY && whole <= LAST_DAY ? isoDate(whole) : plainNumber(serial);
}

/** A value of a cell as a sentence shows it. */
export function valueText(value: CellValue, type: "number" | "text" | "date", format?: string): string {
  if (value === "") return "empty";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  return type === "date" ? dateText(value) : formatNumber(value, format);
}

/** "1 row", "1,240 rows". */
export function counted(count: number, word: string): string {
  return `${plainNumber(count)} ${word}${count === 1 ? "" : "s"}`;
}

/** The first letter of a line as a capital. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function groupThousands(whole: string): string {
  return whole.replace(/^(-?)(\d+)$/, (_, sign: string, digits: string) => {
    return sign + digits.replace(/\B(?=(\d{3})+$)/g, ",");
  });
}
