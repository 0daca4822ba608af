import { type ArrayValueObject, type BaseValueObject, functionText, StringValueObject } from "@univerjs/engine-formula";
import { type EngineFunction, type EngineResult, stockFunction } from "../engine-function";

/** CONCAT writes TRUE as "true" and passes over an error that stands in one of its arguments. */
class Concat extends stockFunction(functionText, "CONCAT") {
  override calculate(...texts: BaseValueObject[]): EngineResult {
    const values = texts.flatMap((text) =>
      text.isArray() ? (text as ArrayValueObject).getArrayValue().flat() : [text],
    );
    let joined = "";
    for (const value of values) {
      if (!value || value.isNull()) continue;
      if (value.isError()) return value;
      joined += value.isBoolean() ? String(value.getValue()).toUpperCase() : String(value.getValue());
    }
    return StringValueObject.create(joined);
  }
}

export const concat: EngineFunction = [Concat, "CONCAT"];
