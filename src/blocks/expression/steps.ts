import type { Expression } from "./expression";

/** The lists behind expressions that are computed once and then known, so that each may be computed on its own. */
export function stepsOf(...expressions: readonly Expression[]): readonly Expression[] {
  return expressions.flatMap((expression) => (expression.isKept === true ? [expression] : (expression.steps ?? [])));
}
