import { readFileSync } from "node:fs";
import type { LaidOutBlock } from "../../../src/blocks/laid-out";
import { recalculate } from "../../../src/engine/headless";
import { registry } from "../../../src/functions/registry";
import type { CellPosition } from "../../../src/workbook/cell-address";
import type { PlainCell } from "../../../src/workbook/port";
import { AS_OF } from "../../../src/workbook/tables";
import type { TableContent } from "../../../src/workbook/table-port";
import { cellAddress } from "../../../src/xlsx/address";
import type { CellModel, SheetModel, WorkbookModel } from "../../../src/xlsx/model";
import { readWorkbook } from "../../../src/xlsx/read";
import { Answers } from "../../engine/support";

/** The data sheets of a workbook, without the sheets that compute: what blocks are computed from. */
export function dataOnly(file: string, sheets: readonly string[]): WorkbookModel {
  const model = readWorkbook(
    readFileSync(file),
    registry.map(({ id }) => id),
  );
  return {
    ...model,
    sheets: model.sheets.filter(({ name }) => sheets.includes(name)).map(withoutFormulas),
    names: model.names.filter(({ name }) => name === AS_OF),
    activeSheet: 0,
  };
}

/** Columns that formulas fill are no input of a block; their saved values save the time to compute them. */
function withoutFormulas(sheet: SheetModel): SheetModel {
  return { ...sheet, cells: sheet.cells.map(({ row, column, style, value }) => ({ row, column, style, value })) };
}

/** The tables of a workbook as the table port reads them; formulas count as their saved values. */
export function tablesOf({ sheets }: WorkbookModel): Map<string, TableContent> {
  return new Map(
    sheets.flatMap((sheet) =>
      sheet.tables.map(({ name, area, columns }): [string, TableContent] => {
        const rows: PlainCell[][] = [];
        for (let row = area.firstRow + 1; row <= area.lastRow; row++) rows.push(columns.map(() => null));
        for (const { row, column, value } of sheet.cells) {
          const cells = rows[row - area.firstRow - 1];
          if (cells === undefined || row <= area.firstRow || column < area.firstColumn || column > area.lastColumn)
            continue;
          cells[column - area.firstColumn] = typeof value === "object" && value !== null ? value.error : value;
        }
        while (rows.length > 0 && rows.at(-1)!.every((cell) => cell === null)) rows.pop();
        const infos = columns.map((column) => ({ heading: column.name, calculated: false }));
        return [name, { name, sheet: sheet.name, columns: infos, rowCount: rows.length, rows }];
      }),
    ),
  );
}

/** Where the blocks are written: one sheet each. */
export const AT: CellPosition = { row: 1, column: 1 };

/** Computes laid out blocks in the workbook's engine, each on a sheet of its own. */
export async function inSheets(model: WorkbookModel, blocks: readonly LaidOutBlock[]): Promise<Answers> {
  const sheets = blocks.map((block): SheetModel => ({
    name: block.id,
    state: "visible",
    cells: block.cells.flatMap((row, index) =>
      row.flatMap((cell, column): CellModel[] => {
        const place = { row: AT.row + index, column: AT.column + column, style: 0 };
        if (cell === null) return [];
        if (cell.formula !== undefined) return [{ ...place, value: null, formula: cell.formula }];
        return cell.value === undefined || cell.value === null ? [] : [{ ...place, value: cell.value }];
      }),
    ),
    columns: [],
    rows: [],
    merges: [],
    tables: [],
    validations: [],
    conditionalFormats: [],
    showGridLines: true,
  }));
  return new Answers(await recalculate({ ...model, sheets: [...model.sheets, ...sheets] }));
}

/** Address of a cell of a block. */
export function addressIn({ row, column }: CellPosition): string {
  return cellAddress(AT.row + row, AT.column + column);
}
