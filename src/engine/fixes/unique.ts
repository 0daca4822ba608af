import {
  type ArrayValueObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  functionLookup,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import { type EngineFunction, type EngineResult, stockFunction } from "../engine-function";
import { newArray } from "../new-array";

type Row = readonly (BaseValueObject | null)[];

/**
 * UNIQUE tells "DD" from "dd", which a worksheet holds to be the same text, and takes the text "1" for the number 1;
 * its cost grows with the square of the rows.
 */
class Unique extends stockFunction(functionLookup, "UNIQUE") {
  override calculate(array: BaseValueObject, byColumn?: BaseValueObject, once?: BaseValueObject): EngineResult {
    const error = [array, byColumn, once].find((argument) => argument?.isError());
    if (error !== undefined) return error;
    if (!array.isArray()) return array;
    const isByColumn = isTrue(byColumn);
    const source = isByColumn ? (array as ArrayValueObject).transpose() : (array as ArrayValueObject);
    const kept = uniqueRows(source.getArrayValue() as Row[], isTrue(once));
    if (kept.length === 0) return ErrorValueObject.create(ErrorType.CALC);
    const result = newArray(kept.map((row) => [...row]));
    return isByColumn ? result.transpose() : result;
  }
}

function isTrue(argument: FunctionVariantType | undefined): boolean {
  const value = argument?.isArray()
    ? (argument as ArrayValueObject).get(0, 0)
    : (argument as BaseValueObject | undefined);
  return value !== undefined && value !== null && !value.isNull() && Boolean(value.getValue());
}

function uniqueRows(rows: readonly Row[], onlyOnce: boolean): Row[] {
  const counts = new Map<string, number>();
  const keys = rows.map(keyOf);
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  const seen = new Set<string>();
  return rows.filter((_, index) => {
    const key = keys[index]!;
    if (onlyOnce) return counts.get(key) === 1;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function keyOf(row: Row): string {
  return JSON.stringify(
    row.map((cell) => {
      if (!cell || cell.isNull()) return null;
      const value = cell.getValue();
      return typeof value === "string" ? value.toLowerCase() : [value];
    }),
  );
}

export const unique: EngineFunction = [Unique, "UNIQUE"];
