import { cellAddress, cellPosition } from "../cell-address";
import { holds } from "../plain-book";
import type { PlainCell } from "../port";
import { plainCell } from "../saving/row-match";
import { headingInTable, sheetGone } from "../table-error";
import type { BookState, MemoryCell, MemorySheet, MemoryTable } from "./book";
import { areaOf } from "./plain-view";

/** A cell of a state, in a table or outside one, and the state with another value in it. */
export interface MemoryPlace {
  readonly value: PlainCell;
  readonly numberFormat: string | undefined;
  readonly hasFormula: boolean;
  put(value: PlainCell, numberFormat: string | undefined): BookState;
}

export function sheetOf({ sheets }: BookState, name: string): MemorySheet {
  const sheet = sheets.find((known) => known.name === name);
  if (sheet === undefined) throw sheetGone(name);
  return sheet;
}

export function withCells(state: BookState, sheet: string, cells: Readonly<Record<string, MemoryCell>>): BookState {
  return { ...state, sheets: state.sheets.map((known) => (known.name === sheet ? { ...known, cells } : known)) };
}

export function placeOf(state: BookState, sheet: MemorySheet, address: string): MemoryPlace {
  const { row, column } = cellPosition(address);
  const table = state.tables.find((known) => known.sheet === sheet.name && holds(areaOf(known), row, column));
  return table === undefined
    ? loosePlace(state, sheet, address)
    : tablePlace(state, table, row - table.at.row - 1, column - table.at.column);
}

function loosePlace(state: BookState, sheet: MemorySheet, address: string): MemoryPlace {
  const cell = sheet.cells[address];
  return {
    value: plainCell(cell?.value),
    numberFormat: cell?.numberFormat,
    hasFormula: cell?.formula !== undefined,
    put: (value, numberFormat) => {
      const { look } = cell ?? {};
      const put: MemoryCell = {
        value,
        ...(numberFormat === undefined ? {} : { numberFormat }),
        ...(look === undefined ? {} : { look }),
      };
      return withCells(state, sheet.name, { ...sheet.cells, [address]: put });
    },
  };
}

/** `row` counts from 0 below the headings. Formats are those of the column. */
function tablePlace(state: BookState, table: MemoryTable, row: number, column: number): MemoryPlace {
  const own = table.columns[column]!;
  const withTable = (changed: MemoryTable): BookState => ({
    ...state,
    tables: state.tables.map((known) => (known === table ? changed : known)),
  });
  const inColumn = (change: Partial<(typeof table.columns)[number]>): MemoryTable["columns"] =>
    table.columns.map((known, at) => (at === column ? { ...known, ...change } : known));
  if (row < 0) throw headingInTable(table.name, cellAddress({ row: table.at.row, column: table.at.column + column }));
  return {
    value: plainCell(table.rows[row]?.[column]),
    numberFormat: own.numberFormat,
    hasFormula: own.calculate !== undefined,
    put: (value, numberFormat) => {
      const rows = table.rows.map((cells, at) => {
        if (at !== row) return cells;
        return table.columns.map((_, right) => (right === column ? value : (cells[right] ?? null)));
      });
      const columns = numberFormat === undefined ? table.columns : inColumn({ numberFormat });
      return withTable({ ...table, columns, rows });
    },
  };
}
