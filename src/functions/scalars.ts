import { type DaySerial, FIRST_DAY, isoDate, LAST_DAY } from "../core/shared/days";
import { DomainError, invalid, shown, unavailable } from "../core/shared/domain-error";
import { type Cell, isBlankCell, looksLikeDate, looksLikeNumber, readCell } from "./cell";
import { counted } from "./figure";
import type { Limits, NumberRange, ScalarKind } from "./kind";

interface ScalarOptions<T> {
  readonly name: string;
  readonly unit?: string;
  readonly limits?: Limits;
  readonly must: string;
  readonly zeroIsBlank?: boolean;
  readonly asWritten?: NumberRange;
  readonly takesAnyText?: true;
  readCell(cell: Exclude<Cell, null>, where: string): T;
}

/** A kind of one cell: unwraps a one-cell range, refuses a larger one, and refuses a blank with "enter ...". */
export function scalarKind<T>(options: ScalarOptions<T>): ScalarKind<T> {
  const zeroIsBlank = options.zeroIsBlank ?? false;
  return {
    shape: "scalar",
    limits: {},
    ...options,
    zeroIsBlank,
    read(raw, argument) {
      const cell = readCell(oneCell(raw, argument), () => argument);
      if (cell === null || (cell === 0 && zeroIsBlank)) throw blank(argument, options.must);
      return options.readCell(cell, argument);
    },
  };
}

/** Whether an optional argument was left out or points to a blank cell. */
export function isBlankArgument(raw: unknown, kind: { readonly zeroIsBlank?: boolean }): boolean {
  if (Array.isArray(raw))
    return raw.length === 1 && Array.isArray(raw[0]) && raw[0].length === 1 && isBlankArgument(raw[0][0], kind);
  return isBlankCell(raw, kind.zeroIsBlank === true);
}

function blank(argument: string, must: string): DomainError {
  return unavailable(`${argument} is blank: enter ${must}`);
}

function oneCell(raw: unknown, argument: string): unknown {
  if (!Array.isArray(raw)) return raw;
  if (raw.length === 1 && Array.isArray(raw[0]) && raw[0].length === 1) return raw[0][0];
  const columns = Array.isArray(raw[0]) ? raw[0].length : 1;
  throw new DomainError(
    "invalid",
    `${argument} must be one cell; got a range of ${counted(raw.length, "row")} by ${counted(columns, "column")}`,
  );
}

export interface NumberOptions {
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  /** The limits themselves are not allowed. */
  readonly exclusiveMin?: boolean;
  readonly whole?: boolean;
  /** Why the limits are where they are. Required wherever a limit is set. */
  readonly reason?: string;
  readonly zeroIsBlank?: boolean;
}

/** A number, in its unit and inside its limits. Number-like text and TRUE/FALSE are refused by name. */
export function number(options: NumberOptions = {}): ScalarKind<number> {
  const must = describeNumber(options);
  const { min = -Infinity, max = Infinity, whole = false, exclusiveMin = false } = options;
  return scalarKind({
    name: whole ? "whole number" : "number",
    ...(options.unit === undefined ? {} : { unit: options.unit }),
    limits: options,
    must,
    zeroIsBlank: options.zeroIsBlank ?? false,
    ...numbersAsWritten(options),
    readCell(cell, where) {
      if (typeof cell === "number") {
        if (cell >= min && cell <= max && !(exclusiveMin && cell === min) && (!whole || Number.isInteger(cell)))
          return cell;
        throw invalid(where, options.reason === undefined ? must : `${must} (${options.reason})`, cell);
      }
      throw wrongType(cell, where, must);
    },
  });
}

/** The finite numbers inside the limits; none where a 0 or a limit would have to be cut out of their middle. */
function numbersAsWritten(options: NumberOptions): { readonly asWritten?: NumberRange } {
  const { min = -Number.MAX_VALUE, max = Number.MAX_VALUE, whole = false } = options;
  if (options.exclusiveMin !== true && options.zeroIsBlank !== true) return { asWritten: { min, max, whole } };
  if (min > 0 && options.exclusiveMin !== true) return { asWritten: { min, max, whole } };
  return min === 0 ? { asWritten: { min: Number.MIN_VALUE, max, whole } } : {};
}

function wrongType(cell: string | boolean, where: string, must: string): DomainError {
  if (typeof cell === "string" && looksLikeNumber(cell)) {
    return new DomainError(
      "invalid",
      `${where} must be ${must}; got the text ${shown(cell)}: turn the cell into a number`,
    );
  }
  return invalid(where, must, cell);
}

function describeNumber({ unit, min, max, whole, exclusiveMin }: NumberOptions): string {
  const what = whole ? "a whole number" : "a number";
  const above = exclusiveMin ? `above ${min}` : `of ${min} or more`;
  const range =
    min !== undefined && max !== undefined
      ? exclusiveMin
        ? ` above ${min} and up to ${max}`
        : ` from ${min} to ${max}`
      : min !== undefined
        ? ` ${above}`
        : max !== undefined
          ? ` of at most ${max}`
          : "";
  if (unit === undefined) return what + range;
  return range === "" ? `${what} of ${unit}` : `${what}${range} ${unit}`;
}

/**
 * A day. A time of day is cut off. Text is refused, since day and month cannot be told apart in it.
 * Days before 1900-03-01 are refused: older serials are most often a plain number in the wrong column.
 */
export function date(): ScalarKind<DaySerial> {
  const must = "a date";
  return scalarKind({
    name: "date",
    limits: { min: FIRST_DAY, max: LAST_DAY, whole: true, reason: "the days a worksheet can show" },
    must,
    zeroIsBlank: true,
    asWritten: { min: FIRST_DAY, max: LAST_DAY, whole: true },
    readCell(cell, where) {
      if (typeof cell === "number") {
        const serial = Math.floor(cell);
        if (serial >= FIRST_DAY && serial <= LAST_DAY) return serial;
        throw invalid(where, `a date from ${isoDate(FIRST_DAY)} to ${isoDate(LAST_DAY)}`, cell);
      }
      if (typeof cell === "string" && (looksLikeDate(cell) || looksLikeNumber(cell))) {
        throw new DomainError(
          "invalid",
          `${where} must be a date; got the text ${shown(cell)}: turn the cell into a date`,
        );
      }
      throw invalid(where, must, cell);
    },
  });
}

/** Free text. A number is taken as the text that the sheet shows (a cow called 114); TRUE and FALSE are refused. */
export function text(name = "text"): ScalarKind<string> {
  return scalarKind({
    name,
    limits: {},
    must: name === "text" ? "text" : `a ${name}`,
    readCell(cell, where) {
      if (typeof cell === "boolean") throw invalid(where, name === "text" ? "text" : `a ${name}`, cell);
      return String(cell);
    },
  });
}

/**
 * One of a few words. Case, spaces and hyphens do not matter; `synonyms` maps other words of the trade to them.
 * A number 0 is a blank, as some hosts hand it over, unless the word "0" is one of them.
 */
export function choice<const Word extends string>(
  words: readonly Word[],
  synonyms: Readonly<Record<string, Word>> = {},
): ScalarKind<Word> {
  const lookup = new Map<string, Word>();
  for (const word of words) lookup.set(folded(word), word);
  for (const [other, word] of Object.entries(synonyms)) lookup.set(folded(other), word);
  const must = words
    .map((word) => `"${word}"`)
    .join(", ")
    .replace(/, ([^,]*)$/, " or $1");
  return scalarKind({
    name: "word",
    limits: { choices: words },
    must,
    zeroIsBlank: !lookup.has("0"),
    readCell(cell, where) {
      const word = typeof cell === "boolean" ? undefined : lookup.get(folded(String(cell)));
      if (word === undefined) throw invalid(where, must, cell);
      return word;
    },
  });
}

/** Text with case, spaces, hyphens and underscores folded away, for comparing words. */
export function folded(word: string): string {
  return word.toLowerCase().replace(/[\s\u00a0_-]+/g, "");
}
