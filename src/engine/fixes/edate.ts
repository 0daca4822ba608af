import {
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  functionDate,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { addMonths, FIRST_DAY, LAST_DAY } from "../../core/shared/days";
import { type EngineFunction, overCells, stockFunction } from "../engine-function";

/**
 * EDATE runs over into the next month where the day is missing: 31 January and one month gave 3 March. Source:
 * Microsoft's page on EDATE, and ISO/IEC 29500-1, 18.17.7.98: the last day of the month.
 */
class Edate extends stockFunction(functionDate, "EDATE") {
  override calculate(start: BaseValueObject, months: BaseValueObject): BaseValueObject {
    return overCells([start, months], (startOf, monthsOf) => {
      const from = asNumber(startOf!);
      const by = asNumber(monthsOf!);
      if (from === undefined || by === undefined) return ErrorValueObject.create(ErrorType.VALUE);
      const serial = addMonths(Math.floor(from), Math.trunc(by));
      if (from < FIRST_DAY || serial < FIRST_DAY || serial > LAST_DAY) return ErrorValueObject.create(ErrorType.NUM);
      return NumberValueObject.create(serial, "yyyy-mm-dd");
    });
  }
}

function asNumber(value: BaseValueObject): number | undefined {
  if (value.isNull()) return 0;
  if (value.isBoolean()) return undefined;
  const number = value.isString() ? value.convertToNumberObjectValue() : value;
  return number.isNumber() ? Number(number.getValue()) : undefined;
}

export const edate: EngineFunction = [Edate, "EDATE"];
