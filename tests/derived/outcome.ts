import { DomainError } from "../../src/core/shared/domain-error";
import type { FunctionSpec, ResultValue } from "../../src/functions/define";
import { evaluate } from "../../src/functions/evaluate";

/** A call's end: a value, or one of the two errors with its message. Any other error is a defect and is thrown. */
export type Outcome = { readonly value: ResultValue } | { readonly kind: string; readonly message: string };

export function outcome(spec: FunctionSpec, raw: readonly unknown[]): Outcome {
  try {
    return { value: evaluate(spec, raw).value };
  } catch (error) {
    if (error instanceof DomainError) return { kind: error.kind, message: error.message };
    throw error;
  }
}

/** The error of a call that must not give a value. */
export function refusal(
  spec: FunctionSpec,
  raw: readonly unknown[],
): { readonly kind: string; readonly message: string } {
  const end = outcome(spec, raw);
  if ("value" in end) {
    throw new Error(`HERD.${spec.id}(${JSON.stringify(raw)}) should be refused; it gave ${JSON.stringify(end.value)}`);
  }
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

/** Fails unless the result is text, a finite number, or a block of them without holes. */
export function expectSound(value: ResultValue): void {
  const cells = typeof value === "object" ? value.flat() : [value];
  if (typeof value === "object") {
    const width = value[0]?.length;
    if (width === undefined || value.some((row) => row.length !== width)) throw new Error("the result is not a block");
  }
  for (const cell of cells) {
    const sound = typeof cell === "number" ? Number.isFinite(cell) : ["string", "boolean"].includes(typeof cell);
    if (!sound) throw new Error(`a cell of the result is ${String(cell)}`);
  }
}
