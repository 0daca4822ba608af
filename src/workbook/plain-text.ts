/** Longest text that a cell holds. Source: Microsoft, "Excel specifications and limits". */
export const LONGEST_CELL_TEXT = 32_767;

/** Control characters other than tab and line feed: no workbook file can hold them as they are (XML 1.0, 2.2 Char). */
// oxlint-disable-next-line no-control-regex -- these characters are what is looked for
const NOT_FOR_CELLS = /[\u0000-\u0008\u000b-\u001f\u007f\ufffe\uffff]/g;

/**
 * Text as a cell can hold it: line ends become line feeds, characters that no file can hold are dropped, half
 * characters are replaced. Text of nothing but spaces is a blank, null.
 */
export function cellText(text: string): string | null {
  const clean = text.replace(/\r\n?/g, "\n").replace(NOT_FOR_CELLS, "").replace(HALF_CHARACTER, "\ufffd");
  return clean.trim() === "" ? null : clean;
}

/** One half of a surrogate pair without the other, as a cut through an emoji leaves it. */
const HALF_CHARACTER = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/**
 * Whether text must be marked as text for a host that reads what it is handed as if it had been typed: a formula
 * (= + - @, a control character before them), a number, a date, TRUE. Words without a digit need no mark.
 */
export function needsTextMark(text: string): boolean {
  return !PLAIN_WORDS.test(text) || /^(true|false)$/i.test(text);
}

const PLAIN_WORDS = /^\p{L}[^\p{N}\p{Cc}]*$/u;

/** The mark: a host takes it away and keeps the rest as text. */
export const TEXT_MARK = "'";

/** Text as such a host must be handed it. */
export function markedText(text: string): string {
  return needsTextMark(text) ? TEXT_MARK + text : text;
}
