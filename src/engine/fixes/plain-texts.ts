import { ValueObjectFactory } from "@univerjs/engine-formula";

/** Texts remembered; beyond this they are forgotten and met anew. A herd's codes, names and headings are some thousand. */
const MOST_KNOWN = 20_000;

/**
 * The engine asks of every text in every argument whether it is a date, an amount of money or a share, each time anew:
 * it remembers those that are one, not the many that are none.
 */
export function fixPlainTexts(): void {
  const known = new Set<string>();
  const { create } = ValueObjectFactory;
  ValueObjectFactory.create = function (rawValue, isIgnoreNumberPattern = false) {
    const isAsked = typeof rawValue === "string" && !isIgnoreNumberPattern;
    const value = create.call(this, rawValue, isIgnoreNumberPattern || (isAsked && known.has(rawValue)));
    if (isAsked && value.isValueObject() && value.isString()) {
      if (known.size >= MOST_KNOWN) known.clear();
      known.add(rawValue);
    }
    return value;
  };
}
