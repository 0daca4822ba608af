import {
  type ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  functionLogical,
} from "@univerjs/engine-formula";
import { type EngineFunction, type EngineResult, stockFunction } from "../engine-function";

/** IF takes any text for TRUE and "" for FALSE. In a worksheet a text is no condition, unless it spells TRUE or FALSE. */
class If extends stockFunction(functionLogical, "IF") {
  override calculate(condition: BaseValueObject, ...rest: BaseValueObject[]): EngineResult {
    if (!condition.isArray()) return super.calculate(asCondition(condition), ...rest);
    const isText = holdsText(condition as ArrayValueObject);
    return super.calculate(isText ? condition.mapValue((value) => asCondition(value)) : condition, ...rest);
  }
}

function holdsText(array: ArrayValueObject): boolean {
  return array.getArrayValue().some((row) => row.some((value) => value && value.isString()));
}

function asCondition(value: BaseValueObject): BaseValueObject {
  if (!value.isString()) return value;
  const word = String(value.getValue()).toUpperCase();
  return word === "TRUE" || word === "FALSE"
    ? BooleanValueObject.create(word === "TRUE")
    : ErrorValueObject.create(ErrorType.VALUE);
}

export const ifFunction: EngineFunction = [If, "IF"];
