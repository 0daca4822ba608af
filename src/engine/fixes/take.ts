import {
  type ArrayValueObject,
  type BaseValueObject,
  functionLookup,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { type EngineFunction, type EngineResult, overCells, stockFunction } from "../engine-function";

/**
 * TAKE of more rows or columns from the end than there are was #VALUE!. Source: Microsoft's page on TAKE: then all of
 * them come back, as they do from the beginning.
 */
class Take extends stockFunction(functionLookup, "TAKE") {
  override calculate(array: BaseValueObject, ...counts: BaseValueObject[]): EngineResult {
    const table = array.isArray() ? (array as ArrayValueObject) : undefined;
    const most = [table?.getRowCount() ?? 1, table?.getColumnCount() ?? 1];
    return super.calculate(array, ...counts.map((count, index) => atLeast(count, -most[index]!)));
  }
}

function atLeast(count: BaseValueObject, fewest: number): BaseValueObject {
  return overCells([count], (cell) =>
    cell!.isNumber() && Number(cell!.getValue()) < fewest ? NumberValueObject.create(fewest) : cell!,
  );
}

export const take: EngineFunction = [Take, "TAKE"];
