import { BaseReferenceObject } from "@univerjs/engine-formula";
import { SHEET_COLUMNS, SHEET_ROWS } from "../../xlsx/limits";

/**
 * The engine takes a reference that reaches beyond the rows which the grid shows for an unknown name: a range that
 * leaves room for rows to come, such as A2:A5000, was #NAME?. All worksheets have the same size; the cells beyond are
 * blank. A range that reaches to the last row there is ends, like A:A, where the grid ends.
 */
export function fixSheetLimits(): void {
  const prototype = BaseReferenceObject.prototype;
  const position = prototype.getRangePosition;
  prototype.getRangePosition = function () {
    const range = position.call(this);
    const rowCount = this.getActiveSheetRowCount();
    if (range.endRow === SHEET_ROWS - 1 && range.startRow < rowCount) range.endRow = rowCount - 1;
    return range;
  };
  prototype.isExceedRange = function () {
    const { startRow, startColumn, endRow, endColumn } = this.getRangePosition();
    return startRow < 0 || startColumn < 0 || endRow >= SHEET_ROWS || endColumn >= SHEET_COLUMNS;
  };
}
