import { tokenize } from "@borgar/fx";
import { ALL_IMPLEMENTED_FUNCTIONS_SET } from "@univerjs/engine-formula";
import { registry } from "../functions/registry";
import { NAMESPACE } from "./register";

/** What the errors of ordinary formulas mean. */
const MEANINGS: Readonly<Record<string, string>> = {
  "#DIV/0!": "something is divided by zero or by a blank cell",
  "#N/A": "a value is not there: a lookup found nothing, or a cell that is needed is #N/A",
  "#NAME?": "a name in the formula is not known",
  "#NULL!": "two ranges have no cell in common",
  "#NUM!": "a number is outside what can be computed",
  "#REF!": "the formula refers to cells or columns that are not there",
  "#SPILL!": "the cells that the result would fill are not empty",
  "#CALC!": "the result is an empty list",
  "#VALUE!": "a value is of the wrong kind, such as text in place of a number",
};

/** What an error means: what the worksheet function said, or what such an error means in any formula. */
export function errorMessage(error: string, formula: string | undefined, said: string | undefined): string {
  if (said !== undefined) return said;
  if (error === "#NAME?" && formula !== undefined) {
    const unknown = unknownFunctions(formula);
    if (unknown.length > 0) return `no such function: ${unknown.join(", ")}`;
  }
  return MEANINGS[error] ?? "the formula cannot be computed";
}

function unknownFunctions(formula: string): string[] {
  const known = new Set(registry.map(({ id }) => `${NAMESPACE}.${id}`));
  return tokenize(formula)
    .filter(({ type, value }) => type === "func" && !known.has(value.toUpperCase()) && !isStock(value.toUpperCase()))
    .map(({ value }) => value);
}

function isStock(name: string): boolean {
  return ALL_IMPLEMENTED_FUNCTIONS_SET.has(name as never) || name === "LET" || name === "LAMBDA";
}
