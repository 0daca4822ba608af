import { markedText, TEXT_MARK } from "../../plain-text";
import type { PlainCell } from "../../port";
import { plainCell } from "../../saving/row-match";
import { isDay, type TypedValue } from "../../table-port";

/** What `Range.values` is given for a value: null leaves a cell as it is, empty text makes it blank. */
export function enteredValue(value: TypedValue | undefined): string | number | boolean | null {
  if (value === undefined) return null;
  if (value === null) return "";
  if (isDay(value)) return value.day;
  return typeof value === "string" ? markedText(value) : value;
}

/** Text that looks like a formula is told from one by its value, which is the same text. */
export function isFormula(formula: unknown, value: unknown): boolean {
  return typeof formula === "string" && formula.startsWith("=") && formula !== value;
}

export function plainRow(values: readonly unknown[] | undefined): PlainCell[] {
  return (values ?? []).map(plainCell);
}

/**
 * What must be put in again because Excel took text for something else, such as a word that the user's language has
 * for TRUE. Undefined where all text stands as it was meant.
 */
export function marksMissing(
  values: readonly (readonly unknown[])[],
  meant: readonly (readonly unknown[])[],
): (string | null)[][] | undefined {
  const marked = values.map((row, at) =>
    row.map((value, column) => {
      const text = meant[at]?.[column];
      return typeof text === "string" && value !== text ? TEXT_MARK + text : null;
    }),
  );
  return marked.some((row) => row.some((cell) => cell !== null)) ? marked : undefined;
}
