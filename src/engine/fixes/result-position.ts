import { ArrayValueObject, BaseReferenceObject } from "@univerjs/engine-formula";
import type { ReferenceArrays, ResultPositionInternals } from "../internals";

/**
 * Functions such as MINIFS and FILTER say of the cells they give that they stand where their formula stands. A
 * comparison, MINIFS(...)>0, then looked them up in the index of those cells of the sheet, which hold something else.
 * Only cells that were read from a sheet belong to one.
 */
export function fixResultPosition(): void {
  const fromSheet = new WeakSet<ArrayValueObject>();
  const reference = BaseReferenceObject.prototype as unknown as ReferenceArrays;
  const { toArrayValueObject } = reference;
  reference.toArrayValueObject = function (this: ReferenceArrays, ...options) {
    const cells = toArrayValueObject.apply(this, options);
    fromSheet.add(cells);
    return cells;
  };
  const array = ArrayValueObject.prototype as unknown as ResultPositionInternals;
  const compare = array._batchOperatorValue;
  array._batchOperatorValue = function (this: ResultPositionInternals, ...operands) {
    if (!fromSheet.has(this as unknown as ArrayValueObject)) {
      this._currentRow = NOWHERE;
      this._currentColumn = NOWHERE;
    }
    compare.apply(this, operands);
  };
}

/** The engine's place of cells that belong to no sheet. */
const NOWHERE = -1;
