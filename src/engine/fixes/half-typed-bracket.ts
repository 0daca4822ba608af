import { LexerTreeBuilder } from "@univerjs/engine-formula";
import type { TreeBuilderInternals } from "../internals";

/**
 * A half-typed `Table[` leaves the parser, which all formulas share, inside a square bracket: every formula that it
 * reads later comes out wrong. It begins each formula outside of brackets.
 */
export function fixHalfTypedBracket(): void {
  const prototype = LexerTreeBuilder.prototype as unknown as TreeBuilderInternals;
  const reset = prototype._resetTemp;
  prototype._resetTemp = function (this: TreeBuilderInternals): void {
    reset.call(this);
    this._squareBracketState = 0;
    this._tableBracketState = false;
  };
}
