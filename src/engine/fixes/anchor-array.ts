import {
  BaseFunction,
  type BaseReferenceObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import type { IRange } from "@univerjs/core";
import type { EngineFunction, EngineResult } from "../engine-function";
import { referenceTo } from "../reference";

/** The function that stands for the operator "#" of A1#: all cells that the formula in A1 fills. */
export const ANCHOR_ARRAY = "ANCHORARRAY";

/** The engine knows the operator but never worked it out. */
class AnchorArray extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;

  override calculate(anchor: FunctionVariantType): EngineResult {
    return anchorArray(anchor);
  }
}

function anchorArray(anchor: FunctionVariantType): EngineResult {
  if (anchor.isError()) return anchor;
  if (!anchor.isReferenceObject()) return ErrorValueObject.create(ErrorType.REF);
  const reference = anchor as BaseReferenceObject;
  const { startRow, startColumn } = reference.getRangePosition();
  if (cellText(reference, startRow, startColumn) === ErrorType.SPILL) return ErrorValueObject.create(ErrorType.SPILL);
  const range = spillRange(reference, startRow, startColumn);
  return range === undefined ? ErrorValueObject.create(ErrorType.REF) : referenceTo(range, reference);
}

function cellText(reference: BaseReferenceObject, row: number, column: number): unknown {
  return reference.getCurrentRuntimeSheetData()?.getValue(row, column)?.v;
}

/** The cells filled by the formula there, as of this calculation or else of the last one. */
function spillRange(reference: BaseReferenceObject, row: number, column: number): IRange | undefined {
  const now = reference.getCurrentRuntimeActiveArrayFormulaRange()?.[row]?.[column];
  if (now !== undefined) return plainRange(now);
  const isComputedNow = Boolean(reference.getCurrentRuntimeSheetData()?.getValue(row, column));
  const before = isComputedNow ? undefined : reference.getCurrentActiveArrayFormulaRange()?.[row]?.[column];
  if (before !== undefined) return plainRange(before);
  // A formula with one value fills one cell; a cell without a formula fills none.
  const cell = reference.getCurrentActiveSheetData().cellData.getValue(row, column);
  return cell?.f || cell?.si ? { startRow: row, startColumn: column, endRow: row, endColumn: column } : undefined;
}

function plainRange({ startRow, startColumn, endRow, endColumn }: IRange): IRange {
  return { startRow, startColumn, endRow, endColumn };
}

export const anchorArrayFunction: EngineFunction = [AnchorArray, ANCHOR_ARRAY];
