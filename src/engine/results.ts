import { CellValueType, type ICellData, type Injector, type Nullable, type Workbook } from "@univerjs/core";
import { ERROR_TYPE_SET, FormulaDataModel } from "@univerjs/engine-formula";
import { cellNumber } from "../xlsx/address";
import type { Area, CellContent, CellError } from "../xlsx/model";
import type { CallLog } from "./call-log";
import { errorMessage } from "./error-messages";

export interface ComputedWorkbook {
  readonly sheets: readonly ComputedSheet[];
}

export interface ComputedSheet {
  readonly name: string;
  /** Every cell that shows something, row by row. */
  readonly cells: readonly ComputedCell[];
  /** The formulas that fill several cells, and which. */
  readonly spills: readonly Spill[];
}

export interface ComputedCell {
  readonly row: number;
  readonly column: number;
  readonly value: Exclude<CellContent, null>;
  /** The cell's own formula; a cell that another fills has none. */
  readonly formula?: string;
  /** What an error means, in words. */
  readonly message?: string;
}

export interface Spill {
  readonly row: number;
  readonly column: number;
  readonly area: Area;
}

/** What a computed workbook shows. */
export function readResults(workbook: Workbook, injector: Injector, log: CallLog): ComputedWorkbook {
  const data = injector.get(FormulaDataModel);
  const unitId = workbook.getUnitId();
  const spilled = data.getArrayFormulaCellData()[unitId];
  const ranges = data.getArrayFormulaRange()[unitId];
  return {
    sheets: workbook.getSheets().map((sheet): ComputedSheet => {
      const sheetId = sheet.getSheetId();
      const cells = new Map<number, ComputedCell>();
      const add = (row: number, column: number, cell: Nullable<ICellData>, isSpilled: boolean): void => {
        const formula = cell?.f?.slice(1);
        const value = contentOf(cell, isSpilled || formula !== undefined);
        if (value === null) return;
        cells.set(cellNumber(row, column), {
          row,
          column,
          value,
          ...(formula === undefined ? {} : { formula }),
          ...(isError(value)
            ? { message: errorMessage(value.error, formula, log.messageAt(sheetId, row, column, value.error)) }
            : {}),
        });
      };
      const filled = spilled?.[sheetId] ?? {};
      for (const [row, columns] of Object.entries(filled)) {
        for (const [column, cell] of Object.entries((columns ?? {}) as Record<string, ICellData>))
          add(Number(row), Number(column), cell, true);
      }
      sheet.getCellMatrix().forValue((row, column, cell) => add(row, column, cell, false));
      return {
        name: sheet.getName(),
        cells: [...cells.values()].sort((a, b) => a.row - b.row || a.column - b.column),
        spills: spillsOf(ranges?.[sheetId] ?? {}, filled),
      };
    }),
  };
}

type Rows<T> = { readonly [row: number]: { readonly [column: number]: T } };
type SpillRange = Nullable<{ startRow: number; startColumn: number; endRow: number; endColumn: number }>;

function spillsOf(ranges: Rows<SpillRange>, filled: Rows<Nullable<ICellData>>): Spill[] {
  return Object.entries(ranges).flatMap(([row, columns]) =>
    Object.entries(columns as Record<string, SpillRange>).flatMap(([column, range]): Spill[] => {
      // A formula that found no room keeps its wanted range but fills nothing.
      const isFilled = filled[Number(row)]?.[Number(column)]?.v !== "#SPILL!";
      if (!range || !isFilled) return [];
      const { startRow, startColumn, endRow, endColumn } = range;
      const area = { firstRow: startRow, firstColumn: startColumn, lastRow: endRow, lastColumn: endColumn };
      return [{ row: Number(row), column: Number(column), area }];
    }),
  );
}

function contentOf(cell: Nullable<ICellData>, isResult: boolean): CellContent {
  const value = cell?.v;
  if (value === null || value === undefined) return null;
  if (cell?.t === CellValueType.BOOLEAN) return Boolean(Number(value));
  return isResult && ERROR_TYPE_SET.has(value as never) ? { error: String(value) } : value;
}

function isError(value: CellContent): value is CellError {
  return typeof value === "object" && value !== null;
}
