import type { Source } from "../core/shared/source";
import type { CellValue } from "./cell";
import type { Kind } from "./kind";

/** One argument of a worksheet function. */
export interface Parameter<T> {
  readonly kind: Kind<T>;
  /** What it is, for someone who fills it in. */
  readonly description: string;
  readonly optional: boolean;
  /** What happens when it is left out, as the help shows it. Only on optional arguments. */
  readonly whenLeftOut?: string;
  /** The value used when it is left out. Only on optional arguments. */
  readonly fallback?: T;
}

/** An argument that must be given. */
export function required<T>(kind: Kind<T>, description: string): Parameter<T> {
  return { kind, description, optional: false };
}

/** An argument that may be left out; `whenLeftOut` says what is then done, without a value of its own. */
export function optional<T>(kind: Kind<T>, description: string, whenLeftOut: string): Parameter<T | undefined> {
  return { kind, description, optional: true, whenLeftOut };
}

/** An argument that may be left out and then has this value; `shown` says the value in words, with its standing. */
export function withDefault<T>(kind: Kind<T>, description: string, fallback: T, shown: string): Parameter<T> {
  return { kind, description, optional: true, whenLeftOut: shown, fallback };
}

/** A number, a text or a day in a result. `format` is the number format a host puts on the cell. */
export interface ResultColumn {
  readonly heading: string;
  readonly type: "number" | "text" | "date";
  readonly unit?: string;
  readonly format?: string;
}

/** What a function gives back. */
export type Result =
  | ({ readonly shape: "scalar" } & Omit<ResultColumn, "heading">)
  /** One value a row of the columns handed over, without a heading, to stand beside them. */
  | ({ readonly shape: "column" } & Omit<ResultColumn, "heading">)
  /** Spills its headings in the first row, then its rows. */
  | { readonly shape: "table"; readonly columns: readonly ResultColumn[] };

export type ResultValue = CellValue | readonly (readonly CellValue[])[];

/** A raw argument of an example, as a cell or a range would hand it over. */
export type ExampleArgument = CellValue | null | readonly (readonly (CellValue | null)[])[];

/** A worked example whose result does not come from this project's code. */
export interface Example {
  readonly arguments: readonly ExampleArgument[];
  readonly result: ResultValue;
  /** Decimals at which the result is printed in its source; numbers are compared exactly (1e-9) when absent. */
  readonly decimals?: number;
  /** `printed` in a source, computed by an `oracle` (another program), or worked by `hand`. */
  readonly origin: "printed" | "oracle" | "hand";
  /** The source, the program, or the working by hand. */
  readonly where: string;
}

/** One line of the working that the pane shows: "kg a day | 0.68 × log2(200 / 50) | 1.36". */
export interface Step {
  readonly label: string;
  readonly working: string;
  readonly value: string;
}

/** Collects what a reader must know beside the figure: rows left out, small numbers, capped counts. */
export class Remarks {
  readonly texts: string[] = [];
  add(text: string): void {
    this.texts.push(text);
  }
}

/** A worksheet function as hosts, help and tests see it. */
export interface FunctionSpec {
  /** Name without the namespace, such as RECHECK.DATE. Frozen once released. */
  readonly id: string;
  /** Heading under which help lists it. */
  readonly group: string;
  readonly summary: string;
  readonly parameters: readonly (Parameter<unknown> & { readonly name: string })[];
  readonly result: Result;
  readonly sources: readonly Source[];
  /** What the figure cannot tell. */
  readonly limits: readonly string[];
  /** What can hurt an animal or a person. */
  readonly cautions: readonly string[];
  readonly examples: readonly Example[];
  compute(args: Readonly<Record<string, unknown>>, remarks: Remarks): ResultValue;
  steps(args: Readonly<Record<string, unknown>>, result: ResultValue): readonly Step[];
}

type Parameters = Readonly<Record<string, Parameter<unknown>>>;
type Arguments<P extends Parameters> = { readonly [K in keyof P]: P[K] extends Parameter<infer T> ? T : never };

/** How a spec file writes a function: arguments by name, in order, and typed. */
export interface FunctionDefinition<P extends Parameters> extends Omit<
  FunctionSpec,
  "parameters" | "compute" | "steps"
> {
  readonly parameters: P;
  compute(args: Arguments<P>, remarks: Remarks): ResultValue;
  steps(args: Arguments<P>, result: ResultValue): readonly Step[];
}

/** Turns a typed definition into the one spec that everything else reads. */
export function defineFunction<const P extends Parameters>(definition: FunctionDefinition<P>): FunctionSpec {
  const { parameters, ...rest } = definition;
  return {
    ...(rest as Omit<FunctionSpec, "parameters">),
    parameters: Object.entries(parameters).map(([name, parameter]) => ({ ...parameter, name })),
  };
}
