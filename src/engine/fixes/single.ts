import {
  type ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  NullValueObject,
} from "@univerjs/engine-formula";
import type { EngineFunction, EngineResult } from "../engine-function";
import { referenceTo } from "../reference";

/** The function that stands for the operator "@" of @A1:A9: the one cell in the formula's own row or column. */
export const SINGLE = "SINGLE";

/**
 * The engine refuses "@" before most operands. Source: Microsoft, "Implicit intersection operator: @": of a range the
 * cell in the same row or column, of an array its first value, of a single value itself.
 */
class Single extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;

  override calculate(operand: FunctionVariantType): EngineResult {
    return single(operand, this.row, this.column);
  }
}

function single(operand: FunctionVariantType, row: number, column: number): EngineResult {
  if (operand.isError()) return operand;
  if (operand.isReferenceObject()) return intersection(operand as BaseReferenceObject, row, column);
  return operand.isArray() ? ((operand as ArrayValueObject).get(0, 0) ?? NullValueObject.create()) : operand;
}

function intersection(reference: BaseReferenceObject, row: number, column: number): EngineResult {
  const { startRow, startColumn, endRow, endColumn } = reference.getRangePosition();
  const atRow = startRow === endRow ? startRow : row;
  const atColumn = startColumn === endColumn ? startColumn : column;
  const isBlock = startRow !== endRow && startColumn !== endColumn;
  const isInside = atRow >= startRow && atRow <= endRow && atColumn >= startColumn && atColumn <= endColumn;
  if (isBlock || !isInside) return ErrorValueObject.create(ErrorType.VALUE);
  const cell = { startRow: atRow, endRow: atRow, startColumn: atColumn, endColumn: atColumn };
  return referenceTo(cell, reference);
}

export const singleFunction: EngineFunction = [Single, SINGLE];
