import type { FunctionSpec, Parameter } from "./define";
import { anchorOf } from "./names";

/** One argument in the metadata format that Excel reads. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: "any";
  readonly dimensionality: "scalar" | "matrix";
  readonly optional?: true;
}

/** One function in the metadata format that Excel reads. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly type: "any"; readonly dimensionality: "scalar" | "matrix" };
}

export interface Metadata {
  /** Lets a function give a date with its number format. */
  readonly allowCustomDataForDataTypeAny: true;
  /** Hands errors over to the function, so that its message can name the cell that holds one. */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly FunctionMetadata[];
}

/** Stands in functions.json for the address that the build fills in. */
const ADDRESS_PLACEHOLDER = "{{address}}";

/**
 * Longest text that Excel keeps of a function's or an argument's description when a function is registered.
 * Source: Excel XLL SDK, xlfRegister: strings of at most 255 characters.
 */
export const LONGEST_DESCRIPTION = 255;

/** functions.json: what Excel must know of every function before it loads any code. */
export function functionsMetadata(specs: readonly FunctionSpec[]): Metadata {
  return {
    allowCustomDataForDataTypeAny: true,
    allowErrorForDataTypeAny: true,
    functions: specs.map(functionMetadata),
  };
}

function functionMetadata(spec: FunctionSpec): FunctionMetadata {
  return {
    id: spec.id,
    name: spec.id,
    description: fitted([spec.summary]),
    helpUrl: `${ADDRESS_PLACEHOLDER}/help/functions.html#${anchorOf(spec.id)}`,
    parameters: spec.parameters.map(parameterMetadata),
    result: { type: "any", dimensionality: spec.result.shape === "scalar" ? "scalar" : "matrix" },
  };
}

function parameterMetadata(parameter: Parameter<unknown> & { readonly name: string }): ParameterMetadata {
  const { name, kind, description, optional, whenLeftOut } = parameter;
  const parts = [description, `: ${kind.must}`];
  if (whenLeftOut !== undefined) parts.push(`; left out: ${whenLeftOut}`);
  return {
    name,
    description: fitted(parts),
    type: "any",
    dimensionality: kind.shape === "scalar" ? "scalar" : "matrix",
    ...(optional ? { optional: true } : {}),
  };
}

/** As many of the parts as fit, in order; a first part that is too long itself is cut at a word. */
function fitted(parts: readonly [string, ...string[]] | string[]): string {
  const [first = "", ...more] = parts;
  if (first.length > LONGEST_DESCRIPTION) return `${first.slice(0, LONGEST_DESCRIPTION - 1).replace(/\s\S*$/, "")}…`;
  return more.reduce((text, part) => (text.length + part.length <= LONGEST_DESCRIPTION ? text + part : text), first);
}
