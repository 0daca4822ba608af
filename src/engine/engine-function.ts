import type { Ctor } from "@univerjs/core";
import {
  type ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
} from "@univerjs/engine-formula";
import { newArray } from "./new-array";

/** A function as the engine registers it: its class and its name in formulas. */
export type EngineFunction = [Ctor<BaseFunction>, string];

/** What a function may give back: a value, or a reference to cells. */
export type EngineResult = ReturnType<BaseFunction["calculate"]>;

/** The engine's own class of that name, to be built upon. */
export function stockFunction(functions: readonly unknown[], name: string): Ctor<BaseFunction> {
  const found = (functions as readonly EngineFunction[]).find(([, known]) => known === name);
  if (found === undefined) throw new Error(`the engine has no function ${name}`);
  return found[0];
}

/**
 * Runs a function of single values over arguments of which some may be ranges: cell by cell, over the largest of
 * them; a row, a column or a single value is repeated. Errors are handed on.
 */
export function overCells(
  variants: readonly BaseValueObject[],
  compute: (...values: BaseValueObject[]) => BaseValueObject,
): BaseValueObject {
  const run = (...values: BaseValueObject[]): BaseValueObject =>
    values.find((value) => value.isError()) ?? compute(...values);
  const arrays = variants.filter((variant): variant is ArrayValueObject => variant.isArray());
  if (arrays.length === 0) return run(...variants);
  const rowCount = Math.max(...arrays.map((array) => array.getRowCount()));
  const columnCount = Math.max(...arrays.map((array) => array.getColumnCount()));
  const rows = Array.from({ length: rowCount }, (_, row) =>
    Array.from({ length: columnCount }, (_, column) => run(...variants.map((variant) => cellOf(variant, row, column)))),
  );
  return newArray(rows);
}

function cellOf(variant: BaseValueObject, row: number, column: number): BaseValueObject {
  if (!variant.isArray()) return variant;
  const array = variant as ArrayValueObject;
  const atRow = array.getRowCount() === 1 ? 0 : row;
  const atColumn = array.getColumnCount() === 1 ? 0 : column;
  if (atRow >= array.getRowCount() || atColumn >= array.getColumnCount()) return ErrorValueObject.create(ErrorType.NA);
  return array.get(atRow, atColumn) ?? NullValueObject.create();
}
