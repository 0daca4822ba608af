import type { CellModel, CellStyle, SheetModel, WorkbookModel } from "../../xlsx/model";
import { ColumnRuns } from "../column-runs";
import { isDateFormat } from "../number-format";
import { isSeveral, type PlainArea, type PlainBook, type PlainSheet } from "../plain-book";
import type { PlainCell } from "../port";

/** A workbook file as plain values: those saved with it, hidden sheets included. */
export function plainBook({ sheets, styles, from1904 }: WorkbookModel): PlainBook {
  return { sheets: sheets.map((sheet) => plainSheet(sheet, styles)), from1904 };
}

export function plainSheet(
  { name, state, cells, tables, merges }: SheetModel,
  styles: readonly CellStyle[],
): PlainSheet {
  const isDay = styles.map(({ numberFormat }) => isDateFormat(numberFormat));
  const rows: PlainCell[][] = [];
  const days = new ColumnRuns();
  const formulas = new ColumnRuns();
  const spills: PlainArea[] = [];
  for (const cell of cells) {
    const { row, column, style } = cell;
    const value = plainCell(cell);
    while (rows.length <= row) rows.push([]);
    const line = rows[row]!;
    while (line.length < column) line.push(null);
    line[column] = value;
    if (typeof value === "number" && isDay[style] === true) days.add(row, column);
    if (cell.formula !== undefined || cell.spilled === true) formulas.add(row, column);
    if (cell.array !== undefined && isSeveral(cell.array.area)) spills.push(cell.array.area);
  }
  return {
    name,
    rows,
    tables: tables
      .filter(({ hasHeadings }) => hasHeadings)
      .map(({ name: table, area, hasTotals, columns }) => ({
        name: table,
        area: hasTotals ? { ...area, lastRow: area.lastRow - 1 } : area,
        calculated: columns.filter(({ formula }) => formula !== undefined).map((column) => column.name),
      })),
    days: days.areas,
    formulas: formulas.areas,
    ...(spills.length === 0 ? {} : { spills }),
    merges,
    ...(state === "visible" ? {} : { hidden: true }),
  };
}

function plainCell({ value }: CellModel): PlainCell {
  return typeof value === "object" && value !== null ? value.error : value;
}
