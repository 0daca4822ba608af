import type { PlainArea, PlainBook, PlainSheet } from "../../herd/mapping/plain-book";
import { isDateFormat } from "../../workbook/number-format";
import type { PlainCell } from "../../workbook/port";
import type { CellModel, CellStyle, SheetModel, WorkbookModel } from "../../xlsx/model";

/** A workbook file as the herd's mapping and check read it: the values saved with it, hidden sheets included. */
export function plainBook({ sheets, styles, from1904 }: WorkbookModel): PlainBook {
  return { sheets: sheets.map((sheet) => plainSheet(sheet, styles)), from1904 };
}

function plainSheet({ name, cells, tables, merges }: SheetModel, styles: readonly CellStyle[]): PlainSheet {
  const isDay = styles.map(({ numberFormat }) => isDateFormat(numberFormat));
  const rows: PlainCell[][] = [];
  const days = new ColumnRuns();
  const formulas = new ColumnRuns();
  for (const cell of cells) {
    const { row, column, style } = cell;
    const value = plainCell(cell);
    while (rows.length <= row) rows.push([]);
    const line = rows[row]!;
    while (line.length < column) line.push(null);
    line[column] = value;
    if (typeof value === "number" && isDay[style] === true) days.add(row, column);
    if (cell.formula !== undefined || cell.spilled === true) formulas.add(row, column);
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
    merges,
  };
}

function plainCell({ value }: CellModel): PlainCell {
  return typeof value === "object" && value !== null ? value.error : value;
}

/** Cells of each column gathered into runs. Cells come row by row. */
class ColumnRuns {
  readonly areas: PlainArea[] = [];
  readonly #open = new Map<number, number>();

  add(row: number, column: number): void {
    const at = this.#open.get(column);
    const last = at === undefined ? undefined : this.areas[at]!;
    if (at !== undefined && last!.lastRow === row - 1) {
      this.areas[at] = { ...last!, lastRow: row };
      return;
    }
    this.#open.set(column, this.areas.length);
    this.areas.push({ firstRow: row, lastRow: row, firstColumn: column, lastColumn: column });
  }
}
