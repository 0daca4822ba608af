import { type BaseReferenceObject, type FunctionVariantType, UnionNodeFactory } from "@univerjs/engine-formula";

interface UnionNode {
  _unionFunction(first: FunctionVariantType, last: FunctionVariantType): FunctionVariantType;
}

/**
 * The range that A1 and B9 make together is not told which cells are filled by formulas elsewhere: it goes on reading
 * cells that such a formula has meanwhile emptied.
 */
export function fixRangeUnion(): void {
  const node = new UnionNodeFactory(undefined as never).create(":");
  const prototype = Object.getPrototypeOf(node) as UnionNode;
  const union = prototype._unionFunction;
  prototype._unionFunction = function (this: UnionNode, first, last) {
    const range = union.call(this, first, last);
    if (range.isReferenceObject() && first.isReferenceObject()) {
      const [whole, corner] = [range as BaseReferenceObject, first as BaseReferenceObject];
      whole.setArrayFormulaRange(corner.getArrayFormulaRange());
      whole.setRuntimeArrayFormulaRange(corner.getRuntimeArrayFormulaRange());
    }
    return range;
  };
}
