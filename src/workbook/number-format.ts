import { isDay, type TypedValue } from "./table-port";

/** How a day is shown where the column has no date format of its own. */
export const ISO_DATE = "yyyy-mm-dd";

/** Whether a number format shows a day: it names a year, month or day outside quotes, brackets and escapes. */
export function isDateFormat(format: string | undefined): boolean {
  if (format === undefined) return false;
  const bare = format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, "");
  return !/^general$/i.test(bare) && /[dmy]/i.test(bare);
}

/** The format of cells whose content is text, whatever is typed. */
export const TEXT_FORMAT = "@";
export const GENERAL_FORMAT = "General";

/**
 * The format that a cell needs for a value: a day needs a date format, and a number is no number in a cell for text.
 * undefined where the cell's own will do.
 */
export function formatFor(value: TypedValue, own: string | undefined): string | undefined {
  if (isDay(value)) return isDateFormat(own) ? undefined : ISO_DATE;
  const isText = own === TEXT_FORMAT && value !== null && typeof value !== "string";
  return isText ? GENERAL_FORMAT : undefined;
}
