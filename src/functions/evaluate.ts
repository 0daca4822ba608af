import { DomainError } from "../core/shared/domain-error";
import type { Column } from "./columns";
import { type FunctionSpec, Remarks, type ResultValue, type Step } from "./define";
import { isBlankArgument } from "./scalars";

export interface Evaluation {
  readonly value: ResultValue;
  /** What a reader must know beside the figure. */
  readonly remarks: readonly string[];
}

/** A result made of many cells is checked for numbers that are none; this is what a broken one says. */
const BROKEN_RESULT = "the result is not a finite number: one of the arguments is far outside what can be computed";

/**
 * Runs a worksheet function on raw arguments as a host hands them over.
 * Throws DomainError with a message for the user; any other error is a defect of ours.
 */
export function evaluate(spec: FunctionSpec, raw: readonly unknown[], read: ReadArgument = readAnew): Evaluation {
  const remarks = new Remarks();
  const value = spec.compute(readArguments(spec, raw, read), remarks);
  if (!isSound(value)) throw new DomainError("invalid", BROKEN_RESULT);
  return { value, remarks: remarks.texts };
}

export interface Explanation extends Evaluation {
  readonly steps: readonly Step[];
  /** The arguments as read, by name. */
  readonly arguments: Readonly<Record<string, unknown>>;
}

/** The same run with its working, for the pane. */
export function explain(spec: FunctionSpec, raw: readonly unknown[]): Explanation {
  const { value, remarks } = evaluate(spec, raw);
  const args = readArguments(spec, raw);
  return { value, remarks, arguments: args, steps: spec.steps(args, value) };
}

/** Reads a raw argument; who runs many functions on the same columns may keep what was read of them. */
export type ReadArgument = (parameter: FunctionSpec["parameters"][number], given: unknown) => unknown;

const readAnew: ReadArgument = ({ kind, name }, given) => kind.read(given, name);

/** The arguments by name, read and checked; columns of one call must have equal length. */
export function readArguments(
  spec: FunctionSpec,
  raw: readonly unknown[],
  read: ReadArgument = readAnew,
): Readonly<Record<string, unknown>> {
  const { parameters } = spec;
  if (raw.slice(parameters.length).some((extra) => extra !== null && extra !== undefined)) {
    throw new DomainError("invalid", `HERD.${spec.id} takes at most ${parameters.length} arguments; got ${raw.length}`);
  }
  const args: Record<string, unknown> = {};
  let firstColumn: Column<unknown> | undefined;
  for (let index = 0; index < parameters.length; index++) {
    const parameter = parameters[index]!;
    const { name, kind, optional, fallback } = parameter;
    const given = raw[index];
    if (optional && isBlankArgument(given, kind)) {
      args[name] = fallback;
      continue;
    }
    const value = (args[name] = read(parameter, given));
    if (kind.shape !== "column") continue;
    const column = value as Column<unknown>;
    firstColumn ??= column;
    if (column.length !== firstColumn.length) throw unequal(firstColumn, column);
  }
  return args;
}

function unequal(first: Column<unknown>, other: Column<unknown>): DomainError {
  return new DomainError(
    "invalid",
    `${other.argument} must have as many rows as ${first.argument} (${first.length}); got ${other.length}`,
  );
}

function isSound(value: ResultValue): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object") return true;
  for (let row = 0; row < value.length; row++) {
    const cells = value[row]!;
    for (let place = 0; place < cells.length; place++) {
      const cell = cells[place]!;
      if (typeof cell === "number" && !Number.isFinite(cell)) return false;
    }
  }
  return true;
}
