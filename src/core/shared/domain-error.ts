/**
 * What kept a figure from being computed.
 * - `invalid`: something given is wrong and must be mended (Excel shows #VALUE!).
 * - `unavailable`: something needed is not there, or not known (Excel shows #N/A).
 */
export type DomainErrorKind = "invalid" | "unavailable";

/** The only error that core and the worksheet functions throw on purpose. Its message is shown to the user. */
export class DomainError extends Error {
  override readonly name = "DomainError";

  constructor(
    readonly kind: DomainErrorKind,
    message: string,
  ) {
    super(message);
  }
}

/** A value breaks its limit: "<argument> must be <limit>; got <value>". */
export function invalid(argument: string, limit: string, got: unknown): DomainError {
  return new DomainError("invalid", `${argument} must be ${limit}; got ${shown(got)}`);
}

/** Something needed is missing or unknown. The message says what to enter. */
export function unavailable(message: string): DomainError {
  return new DomainError("unavailable", message);
}

/** A value as a message shows it: text in quotes, TRUE and FALSE as the sheet writes them. */
export function shown(value: unknown): string {
  if (typeof value === "string") return `"${value.length > MAX_SHOWN ? value.slice(0, MAX_SHOWN) + "…" : value}"`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === null || value === undefined) return "a blank";
  return String(value);
}

/** Longer text is cut so that a message still fits the small box in which Excel shows it. */
const MAX_SHOWN = 40;
