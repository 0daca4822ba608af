import {
  type ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { newArray } from "./new-array";
import type { CellValue } from "../functions/cell";
import type { Result, ResultValue } from "../functions/define";

/** The ranges of one calculation are shared by all formulas that read them; so are their plain values. */
const plainRanges = new WeakMap<ArrayValueObject, readonly (readonly unknown[])[]>();

/** An argument of the engine as the evaluator takes it: a value, or rows of values for a range. A blank is null. */
export function plainArgument(argument: BaseValueObject): unknown {
  if (!argument.isArray()) return plainValue(argument);
  const array = argument as ArrayValueObject;
  const known = plainRanges.get(array);
  if (known !== undefined) return known;
  const rows = array.getArrayValue().map((row) => row.map((cell) => (cell ? plainValue(cell) : null)));
  plainRanges.set(array, rows);
  return rows;
}

function plainValue(value: BaseValueObject): unknown {
  if (value.isNull()) return null;
  // A function made with LAMBDA is nothing that a cell can hold; the evaluator refuses it by name.
  return value.isLambda() ? {} : value.getValue();
}

/** A result as the engine takes it; days carry the number format that shows them as dates. */
export function engineValue(value: ResultValue, result: Result): BaseValueObject {
  if (typeof value !== "object") return engineCell(value, result.shape === "table" ? undefined : dateFormat(result));
  const formats = result.shape === "table" ? result.columns.map(dateFormat) : [dateFormat(result)];
  const rows = value.map((row, index) =>
    row.map((cell, column) => {
      const isHeading = result.shape === "table" && index === 0;
      return engineCell(cell, isHeading ? undefined : formats[column]);
    }),
  );
  return newArray(rows);
}

function engineCell(value: CellValue, format: string | undefined): BaseValueObject {
  switch (typeof value) {
    case "number":
      return NumberValueObject.create(value, format);
    case "boolean":
      return BooleanValueObject.create(value);
    default:
      return StringValueObject.create(value);
  }
}

function dateFormat(column: { readonly type: string; readonly format?: string }): string | undefined {
  return column.type === "date" ? (column.format ?? "yyyy-mm-dd") : undefined;
}
