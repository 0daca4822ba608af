/** What a user typed as a number, with its limits. */
export interface NumberLimits {
  /** How a message calls it: "Days". */
  readonly name: string;
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  /** The smallest value itself is not allowed. */
  readonly exclusiveMin?: boolean;
}

export type TypedNumber =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "blank" }
  | { readonly kind: "wrong"; readonly message: string };

/** One person's thousand is another's one: "1,000". */
const TWO_WAYS = /^[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * Reads a number with a point or a comma for its decimals. What does not fit is refused with the limit and the text, and
 * so is what could be read in two ways.
 */
export function typedNumber(text: string, limits: NumberLimits): TypedNumber {
  const trimmed = text.trim();
  if (trimmed === "") return { kind: "blank" };
  if (TWO_WAYS.test(trimmed)) return { kind: "wrong", message: twoWays(limits.name, trimmed) };
  const value = /^\d+([.,]\d+)?$/.test(trimmed) ? Number(trimmed.replace(",", ".")) : NaN;
  const { min, max, whole = false, exclusiveMin = false } = limits;
  const fits = value >= min && value <= max && !(exclusiveMin && value === min) && (!whole || Number.isInteger(value));
  return fits ? { kind: "number", value } : { kind: "wrong", message: refusal(limits, trimmed) };
}

function twoWays(name: string, got: string): string {
  const whole = got.replace(/[.,]/, "");
  const short = String(Number(got.replace(",", ".")));
  const decimals = TWO_WAYS.test(short) ? `${short}0` : short;
  return `${name}: "${got}" can mean two numbers. Type ${whole}, or ${decimals}.`;
}

function refusal({ name, min, max, whole = false, exclusiveMin = false }: NumberLimits, got: string): string {
  const range = exclusiveMin ? `above ${min} and at most ${max}` : `from ${min} to ${max}`;
  return `${name} must be a ${whole ? "whole " : ""}number ${range}; got "${got}".`;
}
