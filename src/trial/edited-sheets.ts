import type { ICellData, Injector, Nullable, Workbook } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { TableManager } from "@univerjs/sheets-table";
import type { ComputedWorkbook } from "../engine/results";
import { styleNumber } from "../engine/snapshot/sheet";
import type { EditedCell, EditedSheet } from "../xlsx/save-edits";

/** What of the grid is saved. */
export interface OpenGrid {
  readonly workbook: Workbook;
  readonly injector: Injector;
}

/** The sheets of a workbook as they now stand in the grid. */
export function editedSheets({ workbook, injector }: OpenGrid, { sheets: fresh }: ComputedWorkbook): EditedSheet[] {
  const tables = injector.get(TableManager);
  return workbook.getSheets().map((sheet): EditedSheet => {
    const [id, name] = [sheet.getSheetId(), sheet.getName()];
    return {
      name,
      contents: contentsOf(injector, workbook, id),
      tables: tables.getTablesBySubunitId(workbook.getUnitId(), id).map((table) => {
        const { startRow, startColumn, endRow, endColumn } = table.getRangeInfo();
        const area = { firstRow: startRow, firstColumn: startColumn, lastRow: endRow, lastColumn: endColumn };
        return { name: table.getDisplayName(), area };
      }),
      fresh: fresh.find((known) => known.name === name) ?? { name, cells: [], spills: [] },
    };
  });
}

function contentsOf(injector: Injector, workbook: Workbook, id: string): EditedCell[] {
  const formulas = injector.get(FormulaDataModel);
  const cells: EditedCell[] = [];
  workbook
    .getSheetBySheetId(id)
    ?.getCellMatrix()
    .forValue((row, column, cell) => {
      if (!cell) return;
      const formula =
        cell.f || cell.si
          ? formulas.getFormulaStringByCell(row, column, id, workbook.getUnitId())?.slice(1)
          : undefined;
      const value = typedValue(cell);
      if (!formula && value === null) return;
      cells.push({ row, column, value, ...(formula ? { formula } : {}), ...formatOf(workbook, cell) });
    });
  return cells;
}

/** The grid's mark of a cell that holds TRUE or FALSE. */
const BOOLEAN = 3;

function typedValue({ v: value, t: type, p: document }: ICellData): EditedCell["value"] {
  if (value === undefined || value === null || value === "") return document?.body?.dataStream.trim() || null;
  return type === BOOLEAN ? Boolean(Number(value)) : value;
}

/** The number of the file's style, or the number format that the grid gave to what was typed. */
function formatOf(workbook: Workbook, cell: Nullable<ICellData>): Pick<EditedCell, "style" | "numberFormat"> {
  const style = typeof cell?.s === "string" ? styleNumber(cell.s) : undefined;
  if (style !== undefined) return { style };
  const numberFormat = workbook.getStyles().getStyleByCell(cell)?.n?.pattern;
  return numberFormat === undefined ? {} : { numberFormat };
}
