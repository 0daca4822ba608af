import { type ICellData, type IMutationInfo, mergeWorksheetSnapshotWithDefault, type Worksheet } from "@univerjs/core";
import { InsertSheetMutation, RemoveSheetMutation } from "@univerjs/sheets";
import { sheetId } from "../../../engine/snapshot";
import { cellAddress, cellPosition, type CellPosition } from "../../cell-address";
import { ISO_DATE } from "../../number-format";
import { areaText, holds } from "../../plain-book";
import { areaFrom, meets } from "../../plain-room";
import { cellsMerged, cellsOccupied, nameTaken, sheetProtected } from "../../table-error";
import { contentOf, isWritten, styleOf } from "../../saving/block-cells";
import type { WidenedColumn } from "../../saving/written-block";
import { type BlockCell, type CellBlock, isDay, type NewTable } from "../../table-port";
import { type Cells, formatCell, formulaCell, hasFormula, put, shownValue, valueCell } from "./cells";
import { plainArea, spilledCells } from "../book/read-sheet";
import { knownTables } from "./known-table";
import { heightsChange, styleCell, widthsChange } from "./looks";
import { addTable, cellsChange, type Change } from "./mutations";
import type { OpenGrid } from "./open-grid";

/** Rows and columns of a new sheet. */
const NEW_ROWS = 1000;
const NEW_COLUMNS = 26;

export function tableMutations(grid: OpenGrid, table: NewTable): readonly Change[] {
  const { name, sheet: sheetName, address = "A1", columns, rows } = table;
  const at = cellPosition(address);
  const bodyRows = Math.max(1, rows.length);
  if (knownTables(grid).some(({ info }) => info.name.toLowerCase() === name.toLowerCase())) throw nameTaken(name);
  const { id, changes } = site(grid, sheetName, at, bodyRows + 1, columns.length);
  const cells: Cells = {};
  columns.forEach(({ heading, formula, numberFormat }, right) => {
    const column = at.column + right;
    put(cells, at.row, column, valueCell(heading));
    for (let index = 0; index < bodyRows; index++) {
      const value = rows[index]?.[heading] ?? null;
      const cell = formula === undefined ? valueCell(value) : formulaCell(`=${formula}`);
      const format = numberFormat ?? (isDay(value) ? ISO_DATE : undefined);
      put(cells, at.row + 1 + index, column, withFormat(cell, format));
    }
  });
  const range = {
    startRow: at.row,
    startColumn: at.column,
    endRow: at.row + bodyRows,
    endColumn: at.column + columns.length - 1,
  };
  return [
    ...changes,
    addTable(grid, {
      id: `table-${name}`,
      sheetId: id,
      name,
      range,
      headings: columns.map(({ heading }) => heading),
      formulas: columns.map(({ formula }) => (formula === undefined ? undefined : `=${formula}`)),
    }),
    cellsChange(grid, id, cells),
  ];
}

export function blockMutations(grid: OpenGrid, block: CellBlock, widened: readonly WidenedColumn[]): readonly Change[] {
  const { sheet, address, room } = block;
  const at = cellPosition(address);
  const rows = Math.max(block.cells.length, room?.rows ?? 0);
  const columns = Math.max(...block.cells.map((row) => row.length), room?.columns ?? 0);
  const { id, changes } = site(grid, sheet, at, rows, columns);
  const cells: Cells = {};
  block.cells.forEach((row, down) =>
    row.forEach((input, right) => {
      if (isWritten(input)) put(cells, at.row + down, at.column + right, blockCell(input));
    }),
  );
  const sizes = [...widthsChange(grid, id, widened), ...heightsChange(grid, id, block)];
  return [...changes, ...sizes, cellsChange(grid, id, cells)];
}

function blockCell(input: BlockCell): ICellData {
  const content = contentOf(input);
  const isFormula = typeof content === "object" && content !== null && "formula" in content;
  return { ...(isFormula ? formulaCell(`=${content.formula}`) : valueCell(content)), ...styleCell(styleOf(input)) };
}

function withFormat(cell: ICellData, format: string | undefined): ICellData {
  return format === undefined ? cell : { ...cell, ...formatCell(format) };
}

/** The sheet on which a block is to stand, made where it is not there. Throws where the cells are in use. */
function site(
  grid: OpenGrid,
  name: string,
  at: CellPosition,
  rows: number,
  columns: number,
): { readonly id: string; readonly changes: readonly Change[] } {
  const sheet = grid.workbook.getSheetBySheetName(name);
  if (sheet === undefined || sheet === null) return newSheet(grid, name, at.row + rows);
  if (grid.protectedSheets.has(name)) throw sheetProtected(name);
  const used = firstUsed(grid, sheet, at, rows, columns);
  if (used !== undefined) throw cellsOccupied(name, cellAddress(used));
  const merge = sheet
    .getMergeData()
    .map(plainArea)
    .find(meets(areaFrom(at, rows, columns)));
  if (merge !== undefined) throw cellsMerged(name, areaText(merge));
  return { id: sheet.getSheetId(), changes: [] };
}

function firstUsed(
  grid: OpenGrid,
  sheet: Worksheet,
  at: CellPosition,
  rows: number,
  columns: number,
): CellPosition | undefined {
  const tables = knownTables(grid).filter((table) => table.sheet === sheet);
  for (let row = at.row; row < at.row + rows; row++) {
    for (let column = at.column; column < at.column + columns; column++) {
      const cell = sheet.getCellRaw(row, column);
      const inTable = tables.some(
        ({ firstRow, firstColumn, bodyRows, info }) =>
          row >= firstRow - 1 &&
          row < firstRow + bodyRows &&
          column >= firstColumn &&
          column < firstColumn + info.columns.length,
      );
      if (inTable || hasFormula(cell) || shownValue(cell) !== null) return { row, column };
    }
  }
  const area = areaFrom(at, rows, columns);
  return spilledCells(grid, sheet).find(({ row, column }) => holds(area, row, column));
}

/** Sheets are told apart by their place in the workbook: a new one comes last. */
function newSheet({ workbook }: OpenGrid, name: string, rows: number) {
  const index = workbook.getSheets().length;
  const id = sheetId(index);
  const place = { unitId: workbook.getUnitId(), subUnitId: id, subUnitName: name };
  const rowCount = rows + NEW_ROWS;
  const sheet = mergeWorksheetSnapshotWithDefault({ id, name, rowCount, columnCount: NEW_COLUMNS, cellData: {} });
  const add: IMutationInfo = { id: InsertSheetMutation.id, params: { unitId: place.unitId, index, sheet } };
  return { id, changes: [{ redo: add, undo: { id: RemoveSheetMutation.id, params: place } }] };
}
