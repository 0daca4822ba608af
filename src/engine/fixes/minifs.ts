import { type ArrayValueObject, functionStatistical, NumberValueObject } from "@univerjs/engine-formula";
import { type EngineFunction, type EngineResult, stockFunction } from "../engine-function";
import { newArray } from "../new-array";

type Arguments = Parameters<InstanceType<ReturnType<typeof stockFunction>>["calculate"]>;

/**
 * Where MINIFS or MAXIFS finds nothing for one of several criteria, the engine puts a list into the cell, which no
 * other formula can work with. Source: Microsoft's pages on MINIFS and MAXIFS: 0.
 */
function zeroWhereNone(name: "MINIFS" | "MAXIFS"): EngineFunction {
  class ZeroWhereNone extends stockFunction(functionStatistical, name) {
    override calculate(...given: Arguments): EngineResult {
      const result = super.calculate(...given);
      if (!result.isArray()) return result;
      const rows = (result as ArrayValueObject).getArrayValue();
      return newArray(rows.map((row) => row.map((cell) => (cell?.isArray() ? NumberValueObject.create(0) : cell!))));
    }
  }
  return [ZeroWhereNone, name];
}

export const minifs = zeroWhereNone("MINIFS");
export const maxifs = zeroWhereNone("MAXIFS");
