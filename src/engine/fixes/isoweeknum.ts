import {
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  functionDate,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { dateOf, FIRST_DAY, LAST_DAY, serialOf } from "../../core/shared/days";
import { type EngineFunction, overCells, stockFunction } from "../engine-function";

/**
 * ISOWEEKNUM numbers the last days of December on, where they belong to week 1 of the next year. Source: ISO 8601-1,
 * 3.1.1.23: week 1 is the week, Monday to Sunday, that holds the year's first Thursday.
 */
class IsoWeekNumber extends stockFunction(functionDate, "ISOWEEKNUM") {
  override calculate(date: BaseValueObject): BaseValueObject {
    return overCells([date], (dateOfCell) => {
      const value = dateOfCell!.isString() ? dateOfCell!.convertToNumberObjectValue() : dateOfCell!;
      const serial = Math.floor(Number(value.getValue()));
      if (!value.isNumber()) return ErrorValueObject.create(ErrorType.VALUE);
      if (serial < FIRST_DAY || serial > LAST_DAY) return ErrorValueObject.create(ErrorType.NUM);
      return NumberValueObject.create(isoWeek(serial));
    });
  }
}

const DAYS_PER_WEEK = 7;
/** Thursday is the third day after Monday. */
const THURSDAY = 3;
/** Serial 2 is a Monday, and with it every serial that leaves 2 over weeks. */
const A_MONDAY = 2;

function isoWeek(serial: number): number {
  const daysSinceMonday = (serial - A_MONDAY) % DAYS_PER_WEEK;
  const thursday = serial - daysSinceMonday + THURSDAY;
  const newYear = serialOf({ year: dateOf(thursday).year, month: 1, day: 1 });
  return 1 + Math.floor((thursday - newYear) / DAYS_PER_WEEK);
}

export const isoWeekNumber: EngineFunction = [IsoWeekNumber, "ISOWEEKNUM"];
