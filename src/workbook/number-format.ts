/** How a day is shown where the column has no date format of its own. */
export const ISO_DATE = "yyyy-mm-dd";

/** Whether a number format shows a day: it names a year, month or day outside quotes, brackets and escapes. */
export function isDateFormat(format: string | undefined): boolean {
  if (format === undefined) return false;
  const bare = format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, "");
  return !/^general$/i.test(bare) && /[dmy]/i.test(bare);
}
