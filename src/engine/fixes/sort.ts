import { type ArrayValueObject, type BaseValueObject, functionLookup } from "@univerjs/engine-formula";
import { type EngineFunction, type EngineResult, stockFunction } from "../engine-function";
import { newArray } from "../new-array";

/**
 * SORT sorts the rows of the range in place, and the engine hands the same rows to every formula that reads the
 * range: they would all see it sorted. Here it sorts a copy.
 */
class Sort extends stockFunction(functionLookup, "SORT") {
  override calculate(array: BaseValueObject, ...rest: BaseValueObject[]): EngineResult {
    return super.calculate(
      array.isArray() ? newArray([...(array as ArrayValueObject).getArrayValue()] as never) : array,
      ...rest,
    );
  }
}

export const sort: EngineFunction = [Sort, "SORT"];
