import { FIRST_DAY, LAST_DAY } from "../../src/core/shared/days";
import { DomainError } from "../../src/core/shared/domain-error";
import type { FunctionSpec, Result, ResultValue } from "../../src/functions/define";
import { evaluate } from "../../src/functions/evaluate";

/** A call's end: a value, or one of the two errors with its message. Any other error is a defect and is thrown. */
export type Outcome = { readonly value: ResultValue } | { readonly kind: string; readonly message: string };

/** "2 rows left out: " would keep its reason back. */
const SAYS_ALL = /[^\s:]$/;

export function outcome(spec: FunctionSpec, raw: readonly unknown[]): Outcome {
  try {
    const { value, remarks } = evaluate(spec, raw);
    const empty = remarks.find((remark) => !SAYS_ALL.test(remark));
    if (empty !== undefined) throw new Error(`HERD.${spec.id}(${JSON.stringify(raw)}) remarks "${empty}"`);
    return { value };
  } catch (error) {
    if (error instanceof DomainError) return { kind: error.kind, message: error.message };
    throw error;
  }
}

/** What a sheet shows as #VALUE! and as #N/A. */
const KINDS: readonly string[] = ["invalid", "unavailable"];

/** The error of a call that must not give a value. */
export function refusal(
  spec: FunctionSpec,
  raw: readonly unknown[],
): { readonly kind: string; readonly message: string } {
  const end = outcome(spec, raw);
  if ("value" in end) {
    throw new Error(`HERD.${spec.id}(${JSON.stringify(raw)}) should be refused; it gave ${JSON.stringify(end.value)}`);
  }
  if (!KINDS.includes(end.kind)) throw new Error(`an error of no kind: "${end.kind}", ${end.message}`);
  return end;
}

/** A copy of the arguments with one of them replaced. */
export function replaced(raw: readonly unknown[], index: number, value: unknown): unknown[] {
  const copy = [...raw];
  while (copy.length <= index) copy.push(null);
  copy[index] = value;
  return copy;
}

/** A copy of a one-column range with one row replaced. */
export function replacedRow(column: unknown, row: number, value: unknown): unknown[][] {
  const rows = (column as readonly (readonly unknown[])[]).map((cells) => [...cells]);
  rows[row] = [value];
  return rows;
}

/** Fails unless the result is what the spec declares: numbers, days and texts in their places, without a hole. */
export function expectSound(value: ResultValue, result: Result): void {
  if (result.shape === "scalar") {
    if (typeof value === "object") throw new Error("a single value is a range");
    return expectCell(value, result.type);
  }
  if (typeof value !== "object") throw new Error("a range is a single value");
  const types = result.shape === "table" ? result.columns.map(({ type }) => type) : [result.type];
  if (value.some((row) => row.length !== types.length)) throw new Error(`a row is not ${types.length} wide`);
  if (result.shape === "table" && value.length === 0) throw new Error("a table has no headings");
  value.forEach((row, index) => {
    if (result.shape === "table" && index === 0) {
      result.columns.forEach(({ heading }, column) => {
        if (row[column] !== heading) throw new Error(`the heading is ${String(row[column])} instead of ${heading}`);
      });
    } else row.forEach((cell, column) => expectCell(cell, types[column]!));
  });
}

function expectCell(cell: unknown, type: "number" | "text" | "date"): void {
  if (cell === "") return;
  const isSound =
    type === "text"
      ? typeof cell === "string"
      : typeof cell === "number" &&
        Number.isFinite(cell) &&
        (type === "number" || (Number.isInteger(cell) && cell >= FIRST_DAY && cell <= LAST_DAY));
  if (!isSound) throw new Error(`a cell of type ${type} is ${String(cell)}`);
}

/** What no reader should see: the words of a program for something that is not there. */
const UNFIT = /undefined|\[object|NaN|Infinity/;

/** A message names what is wrong, and fits on a screen whatever the cell holds. */
const SHORTEST_MESSAGE = 10;
const LONGEST_MESSAGE = 700;

/** Fails unless the error is one of the two, with a message for the user. Texts that were given may stand in it. */
export function expectMessage({ kind, message }: Exclude<Outcome, { value: unknown }>, given: () => string): void {
  const isUnfit = !isFit(message, given);
  const isRightLength = message.length >= SHORTEST_MESSAGE && message.length <= LONGEST_MESSAGE;
  if (!KINDS.includes(kind) || !isRightLength || isUnfit) {
    throw new Error(`an error without a proper message: ${kind}, ${message}`);
  }
}

/** `given` tells all that the arguments hold. */
export function isFit(text: string, given: () => string): boolean {
  return !UNFIT.test(text) || UNFIT.test(given());
}
