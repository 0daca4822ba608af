import { cellAddress, cellPosition } from "../cell-address";
import { ColumnRuns } from "../column-runs";
import { isDateFormat, ISO_DATE } from "../number-format";
import { holds, type PlainArea, type PlainBook, type PlainSheet, type PlainTable } from "../plain-book";
import type { PlainCell } from "../port";
import { type BookState, contentOf, MemoryBook, type MemoryCell, type MemorySheet, type MemoryTable } from "./book";

/** A workbook in memory with the cells of a plain one. Formulas are known by their values alone. */
export function memoryBook({ sheets }: PlainBook): MemoryBook {
  const book = new MemoryBook();
  const state = {
    tables: sheets.flatMap((sheet) => sheet.tables.map((table) => tableOf(sheet, table))),
    sheets: sheets.map(sheetOf),
  };
  book.replace(state, undefined, []);
  return book;
}

function tableOf(sheet: PlainSheet, { name, area, calculated }: PlainTable): MemoryTable {
  const { firstRow, firstColumn, lastRow, lastColumn } = area;
  const width = lastColumn - firstColumn + 1;
  const line = (row: number): PlainCell[] =>
    Array.from({ length: width }, (_, right) => sheet.rows[row]?.[firstColumn + right] ?? null);
  const columns = line(firstRow).map((cell, right) => {
    const heading = String(cell ?? "");
    const dated = sheet.days.some((days) => holds(days, firstRow + 1, firstColumn + right));
    return {
      heading,
      ...(calculated.includes(heading) ? { calculate: kept(heading) } : {}),
      ...(dated ? { numberFormat: ISO_DATE } : {}),
    };
  });
  const rows = Array.from({ length: lastRow - firstRow }, (_, index) => line(firstRow + 1 + index));
  return { name, sheet: sheet.name, at: { row: firstRow, column: firstColumn }, columns, rows, filtered: false };
}

/** Nothing computes here: a calculated column keeps the values that it came with. */
function kept(heading: string): (cells: Readonly<Record<string, PlainCell>>) => PlainCell {
  return (cells) => cells[heading] ?? null;
}

function sheetOf(sheet: PlainSheet): MemorySheet {
  const { name, rows, tables, days, formulas, spills = [], merges, hidden = false } = sheet;
  const cells: Record<string, MemoryCell> = {};
  const inAny = (areas: readonly PlainArea[], row: number, column: number): boolean =>
    areas.some((area) => holds(area, row, column));
  const tableAreas = tables.map(({ area }) => area);
  rows.forEach((line, row) =>
    line.forEach((value, column) => {
      if (value === null || inAny(tableAreas, row, column)) return;
      cells[cellAddress({ row, column })] = {
        value,
        ...(inAny(formulas, row, column) ? { formula: String(value) } : {}),
        ...(inAny(days, row, column) ? { numberFormat: ISO_DATE } : {}),
      };
    }),
  );
  return { name, protected: false, cells, hidden, merges, spills };
}

/** A sheet of a workbook in memory as plain values. */
export function plainSheet(sheet: MemorySheet, state: BookState): PlainSheet {
  const { name, cells, hidden = false, merges = [], spills = [] } = sheet;
  const rows: PlainCell[][] = [];
  const days = new ColumnRuns();
  const formulas = new ColumnRuns();
  const put = (row: number, column: number, value: PlainCell, numberFormat: string | undefined): void => {
    while (rows.length <= row) rows.push([]);
    const line = rows[row]!;
    while (line.length < column) line.push(null);
    line[column] = value;
    if (typeof value === "number" && isDateFormat(numberFormat)) days.add(row, column);
  };
  const loose = Object.entries(cells).map(([address, cell]) => ({ ...cellPosition(address), cell }));
  loose.sort((a, b) => a.row - b.row || a.column - b.column);
  for (const { row, column, cell } of loose) {
    if (cell.value === null && cell.formula === undefined) continue;
    put(row, column, cell.value, cell.numberFormat);
    if (cell.formula !== undefined) formulas.add(row, column);
  }
  const own = state.tables.filter(({ sheet }) => sheet === name);
  for (const table of own) {
    const { at, columns } = table;
    columns.forEach(({ heading }, right) => put(at.row, at.column + right, heading, undefined));
    contentOf(table, state).rows.forEach((line, index) =>
      line.forEach((value, right) => {
        const [row, column] = [at.row + 1 + index, at.column + right];
        put(row, column, value, columns[right]?.numberFormat);
        if (columns[right]?.calculate !== undefined) formulas.add(row, column);
      }),
    );
  }
  return {
    name,
    rows,
    tables: own.map(plainTable),
    days: days.areas,
    formulas: [...formulas.areas, ...spills],
    ...(spills.length === 0 ? {} : { spills }),
    merges,
    hidden,
  };
}

function plainTable(table: MemoryTable): PlainTable {
  const { name, columns } = table;
  const calculated = columns.filter(({ calculate }) => calculate !== undefined).map(({ heading }) => heading);
  return { name, area: areaOf(table), calculated };
}

export function areaOf({ at, columns, rows }: MemoryTable): PlainArea {
  return {
    firstRow: at.row,
    firstColumn: at.column,
    lastRow: at.row + rows.length,
    lastColumn: at.column + columns.length - 1,
  };
}
