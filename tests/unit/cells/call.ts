import type { FunctionSpec } from "../../../src/functions/define";
import { evaluate, explain } from "../../../src/functions/evaluate";
import { refusalOf } from "../refusal";

/** The value of a call with one result, as a number. */
export function value(spec: FunctionSpec, ...raw: unknown[]): number {
  return evaluate(spec, raw).value as number;
}

/** What a call says beside its result. */
export function remarks(spec: FunctionSpec, ...raw: unknown[]): readonly string[] {
  return evaluate(spec, raw).remarks;
}

/** What a reader is told of a call: its working as label, working and value of each line, and what is said beside it. */
export function told(
  spec: FunctionSpec,
  ...raw: unknown[]
): { readonly steps: string[][]; readonly remarks: readonly string[] } {
  const { steps, remarks: said } = explain(spec, raw);
  return { steps: steps.map(({ label, working, value: shown }) => [label, working, shown]), remarks: said };
}

/** The rows of a spilled result, headings first. */
export function table(spec: FunctionSpec, ...raw: unknown[]): readonly (readonly unknown[])[] {
  return evaluate(spec, raw).value as readonly (readonly unknown[])[];
}

/** The row of a spilled result with that text in its first column. */
export function row(spec: FunctionSpec, label: string, ...raw: unknown[]): readonly unknown[] {
  const found = table(spec, ...raw).find(([first]) => first === label);
  if (found === undefined) throw new Error(`no row ${label}`);
  return found;
}

/** The error of a call that must not give a value. */
export function refusal(spec: FunctionSpec, ...raw: unknown[]): { readonly kind: string; readonly message: string } {
  return refusalOf(() => evaluate(spec, raw).value);
}
