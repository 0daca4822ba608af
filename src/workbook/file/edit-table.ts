import { SHEET_ROWS } from "../cell-address";
import type { CellMark } from "../../xlsx/edit/mark-cells";
import { isDateFormat, ISO_DATE } from "../number-format";
import { needsTextMark } from "../plain-text";
import type { RowWrite, TablePlan } from "../saving/edit-plan";
import { plainValue } from "../saving/row-match";
import { TableError, tableFull } from "../table-error";
import { isDay, type TypedValue } from "../table-port";
import type { FileBook, FileTable } from "./file-book";

/** Makes the edits of a plan in the cells of a table. Gives the marks that its cells need besides. */
export function editTable(book: FileBook, table: FileTable, plan: TablePlan): CellMark[] {
  const marks: CellMark[] = [];
  for (const write of plan.set) marks.push(...writeRow(book, table, write));
  for (const write of plan.append) {
    if (write.index >= table.bodyRows) makeRoom(table, write.index);
    marks.push(...writeRow(book, table, write));
    fillDown(table, write.index);
  }
  if (plan.remove.length > 0) removeRows(table, new Set(plan.remove));
  return marks;
}

/** Values in their cells, with a date format where a day stands in none, and text that stays text. */
function writeRow(book: FileBook, table: FileTable, { index, cells }: RowWrite): CellMark[] {
  const row = table.firstRow + index;
  const above = Math.max(0, Math.min(index, table.info.rowCount) - 1);
  return cells.flatMap((value, at) => {
    if (value === undefined) return [];
    const column = table.firstColumn + at;
    const like = table.cells.at(table.firstRow + above, column);
    table.cells.put(row, column, { value: plainValue(value) }, like);
    const { style } = table.cells.at(row, column)!;
    const marks = markOf(value, book.model.styles[style]?.numberFormat);
    return marks.map((mark) => ({ sheet: table.sheet.name, row, column, style, ...mark }));
  });
}

export function markOf(
  value: TypedValue,
  numberFormat: string | undefined,
): { readonly numberFormat?: string; readonly asText?: boolean }[] {
  if (isDay(value)) return isDateFormat(numberFormat) ? [] : [{ numberFormat: ISO_DATE }];
  return typeof value === "string" && needsTextMark(value) ? [{ asText: true }] : [];
}

function makeRoom(table: FileTable, index: number): void {
  const row = table.firstRow + index;
  const full = tableFull(table.info.name, table.info.sheet);
  if (table.table.hasTotals || row >= SHEET_ROWS) throw full;
  const last = table.firstColumn + table.info.columns.length - 1;
  for (let column = table.firstColumn; column <= last; column++) if (table.cells.isUsed(row, column)) throw full;
  const met = table.sheet.tables.some(
    ({ name, area }) =>
      name !== table.info.name &&
      area.firstRow <= row &&
      area.lastRow >= row &&
      area.firstColumn <= last &&
      area.lastColumn >= table.firstColumn,
  );
  if (met) throw full;
  table.cells.resize(table.info.name, row);
}

function fillDown(table: FileTable, index: number): void {
  table.fills.forEach((formula, at) => {
    if (formula === undefined) return;
    const column = table.firstColumn + at;
    const like = table.cells.at(table.firstRow + Math.max(0, index - 1), column);
    table.cells.put(table.firstRow + index, column, { formula, value: null }, like);
  });
}

/** Moves the rows below up; the rows that become free at the end leave the table. */
function removeRows(table: FileTable, removed: ReadonlySet<number>): void {
  const { cells, firstRow, firstColumn, info, fills } = table;
  const kept = Array.from({ length: table.bodyRows }, (_, index) => index).filter((index) => !removed.has(index));
  const columns = info.columns.map((_, at) => firstColumn + at);
  refuseMovedFormulas(table, kept, columns);
  const moved = kept.map((index) => columns.map((column) => cells.at(firstRow + index, column)));
  for (let index = 0; index < table.bodyRows; index++) {
    columns.forEach((column, at) => {
      const source = moved[index]?.[at];
      const isLeft = index < Math.max(1, kept.length);
      const formula = isLeft ? (source?.formula ?? fills[at]) : undefined;
      const value = source?.value ?? null;
      cells.put(firstRow + index, column, formula === undefined ? { value } : { formula, value });
    });
  }
  cells.resize(info.name, firstRow + Math.max(1, kept.length) - 1);
}

/** A formula that someone typed among the values may point to cells by their place. */
function refuseMovedFormulas(table: FileTable, kept: readonly number[], columns: readonly number[]): void {
  const moves = kept.filter((index, to) => index !== to);
  const isTyped = (index: number): boolean =>
    columns.some(
      (column, at) =>
        table.fills[at] === undefined && table.cells.at(table.firstRow + index, column)?.formula !== undefined,
    );
  if (moves.some(isTyped)) {
    const { name } = table.info;
    throw new TableError(
      "failed",
      `Rows of table ${name} hold formulas and cannot be moved up: delete the row in Excel.`,
    );
  }
}
