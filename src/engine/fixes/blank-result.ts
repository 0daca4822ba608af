import { FormulaRuntimeService, NumberValueObject } from "@univerjs/engine-formula";
import type { RuntimeInternals } from "../internals";

/**
 * A formula that ends in a blank cell showed a blank where it ends in a function, IF(TRUE,A1), or fills several cells,
 * A1:A3. In a worksheet the result of a formula is never blank: it is 0.
 */
export function fixBlankResult(): void {
  const prototype = FormulaRuntimeService.prototype as unknown as RuntimeInternals;
  const toCell = prototype._getValueObjectOfRuntimeData;
  prototype._getValueObjectOfRuntimeData = function (this: RuntimeInternals, value) {
    const isBlank = !value || (value.isValueObject() && value.isNull());
    return toCell.call(this, isBlank ? NumberValueObject.create(0) : value);
  };
}
