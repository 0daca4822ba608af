/** What a cell holds. Blank text is a blank. */
export interface FakeCell {
  value: string | number | boolean;
  /** With "="; absent where the cell holds a constant. */
  formula?: string;
  numberFormat: string;
}

const LONGEST_TEXT = 32_767;

/** Refusal of the host, with the code that Excel gives. */
export class HostError extends Error {
  override readonly name = "RichApi.Error";
  constructor(
    readonly code: string,
    message = code,
  ) {
    super(message);
  }
}

/**
 * What becomes of something that is put into a cell: Excel reads it as if it had been typed. `trueWords` are words
 * that the user's language takes for TRUE.
 */
export function entered(
  input: unknown,
  { numberFormat }: FakeCell,
  trueWords: ReadonlySet<string>,
): Omit<FakeCell, "numberFormat"> & { readonly numberFormat?: string } {
  if (typeof input === "number" || typeof input === "boolean") {
    if (typeof input === "number" && !Number.isFinite(input)) throw new HostError("InvalidArgument");
    return numberFormat === "@" ? { value: String(input) } : { value: input };
  }
  if (typeof input !== "string") throw new HostError("InvalidArgument", `a cell cannot hold ${typeof input}`);
  if (input.startsWith("'")) return textOf(input.slice(1));
  if (numberFormat === "@") return textOf(input);
  // Neither control characters and blanks before a formula nor the wide signs of an East Asian keyboard hide it.
  // oxlint-disable-next-line no-control-regex -- control characters are what is looked for
  const typed = input.replace(/^[\u0000-\u0020\u00a0\u3000]+/, "").replace(/^[\uff1d\uff0b\uff0d\uff20]/, narrow);
  if (/^[=@+-]./s.test(typed) && !NUMBER.test(typed)) return formulaOf(typed);
  if (NUMBER.test(typed)) return { value: numberOf(typed) };
  if (DATE.test(typed)) return { value: 45_000, numberFormat: "m/d/yyyy" };
  if (/^(true|false)$/i.test(typed)) return { value: typed.toLowerCase() === "true" };
  if (trueWords.has(typed.toLowerCase())) return { value: true };
  return textOf(input);
}

const narrow = (wide: string): string => String.fromCharCode(wide.charCodeAt(0) - 0xfee0);

const NUMBER = /^[-+]?(\d[\d.,]*|\.\d+)(e[-+]?\d+)?\s*%?$/i;
const DATE = /^\d{1,4}[-/.]\d{1,2}([-/.]\d{1,4})?$|^\d{1,2} (jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/i;

function textOf(text: string): FakeCell | { readonly value: string } {
  if (text.length > LONGEST_TEXT) throw new HostError("InvalidArgument", "the text is longer than a cell");
  return { value: text };
}

function numberOf(text: string): number {
  const value = Number(text.replace(/[,%\s]/g, ""));
  return text.endsWith("%") ? value / 100 : value;
}

/** Nothing is computed here: every formula gives 1, so that its value never equals its text. */
function formulaOf(typed: string): { readonly value: number; readonly formula: string } {
  if (/^[=+-]\s/.test(typed)) throw new HostError("InvalidArgument", "there is a problem with this formula");
  return { value: 1, formula: typed.startsWith("=") ? typed : `=${typed}` };
}
