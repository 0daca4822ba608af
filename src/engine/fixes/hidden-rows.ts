import { BooleanNumber, type Nullable, UniverInstanceType, type Workbook } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { HiddenRows } from "../internals";

type RowData = Readonly<Record<number, Nullable<{ readonly hd: BooleanNumber }>>>;

/**
 * At every computing the engine asks of each row of each sheet whether it is hidden. Only a few functions want to know,
 * and of a few rows: each row is asked for when it is wanted.
 */
export function fixHiddenRows(): void {
  const prototype = FormulaDataModel.prototype as unknown as HiddenRows;
  prototype.getHiddenRowsFiltered = function (this: HiddenRows) {
    const workbooks = this._univerInstanceService.getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    return Object.fromEntries(
      workbooks.map((workbook) => [
        workbook.getUnitId(),
        Object.fromEntries(workbook.getSheets().map((sheet) => [sheet.getSheetId(), rowsOf(sheet)])),
      ]),
    );
  };
}

function rowsOf(sheet: { getRowVisible(row: number): boolean }): RowData {
  return new Proxy<RowData>(
    {},
    {
      get: (_, row) =>
        typeof row === "string" && /^\d+$/.test(row) && !sheet.getRowVisible(Number(row))
          ? { hd: BooleanNumber.TRUE }
          : undefined,
    },
  );
}
