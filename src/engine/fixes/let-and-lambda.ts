import { ErrorType, LexerTreeBuilder } from "@univerjs/engine-formula";
import type { TreeBuilderInternals } from "../internals";

/**
 * Working out LET or LAMBDA changes the parsed formula, which the parser keeps and hands out again: the second time it
 * fails. Formulas with them are parsed anew each time.
 */
export function fixLetAndLambda(): void {
  const prototype = LexerTreeBuilder.prototype as unknown as TreeBuilderInternals;
  const parse = prototype.treeBuilder;
  prototype.treeBuilder = function (this: TreeBuilderInternals, formula, transformSuffix = true, names) {
    if (!transformSuffix || !/\b(LET|LAMBDA)\s*\(/i.test(formula))
      return parse.call(this, formula, transformSuffix, names);
    // Only a tree whose suffixes are left alone is not kept.
    const tree = parse.call(this, formula, false, names);
    return typeof tree === "string" || this._suffixExpressionHandler(tree) ? tree : ErrorType.VALUE;
  };
}
