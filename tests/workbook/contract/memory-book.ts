import { cellAddress, cellPosition, type CellPosition } from "../../../src/workbook/cell-address";
import { MemoryBook, type MemorySheet, type MemoryTable } from "../../../src/workbook/memory/book";
import { placeOf, sheetOf, withCells } from "../../../src/workbook/memory/cells";
import { MemoryHost } from "../../../src/workbook/memory/table-host";
import type { CellLook } from "../../../src/workbook/look";
import type { PlainCell } from "../../../src/workbook/port";
import { openTables } from "../../../src/workbook/saving/open-tables";
import { faults } from "../../fakes/faults";
import type { OtherUser, StartTable, TestBook, RawLook } from "./test-book";

function memoryTable({ name, sheet, address, headings, days = [], calculated, rows }: StartTable): MemoryTable {
  return {
    name,
    sheet,
    at: cellPosition(address),
    columns: headings.map((heading) => ({
      heading,
      ...(days.includes(heading) ? { numberFormat: "dd/mm/yyyy" } : {}),
      ...(heading === calculated?.heading
        ? {
            calculate: (cells) =>
              cells[calculated.from] === null ? "" : Number(cells[calculated.from]) + calculated.add,
          }
        : {}),
    })),
    rows: rows.map((row) => headings.map((_, column) => row[column] ?? null)),
    filtered: false,
  };
}

function replaced<T>(list: readonly T[], at: number, count: number, ...items: readonly T[]): T[] {
  return [...list.slice(0, at), ...items, ...list.slice(at + count)];
}

function otherUser(book: MemoryBook): OtherUser {
  const change = async (name: string, edit: (table: MemoryTable) => MemoryTable | undefined): Promise<void> => {
    const changed = edit(book.table(name));
    const tables = book.state.tables.flatMap((table) => (table.name !== name ? [table] : (changed ?? [])));
    book.replace({ ...book.state, tables }, "other", [name]);
  };
  const changeSheet = (name: string, edit: (sheet: MemorySheet) => MemorySheet): void => {
    const sheets = book.state.sheets.map((sheet) => (sheet.name === name ? edit(sheet) : sheet));
    book.replace({ ...book.state, sheets }, "other", [undefined]);
  };
  return {
    setCell: (name, at, heading, value) =>
      change(name, (table) => {
        const column = table.columns.findIndex((known) => known.heading === heading);
        return {
          ...table,
          rows: table.rows.map((row, index) => (index === at ? replaced(row, column, 1, value) : row)),
        };
      }),
    deleteRow: (name, at) =>
      change(name, (table) => ({ ...table, rows: table.rows.filter((_, index) => index !== at) })),
    insertRow: (name, at, cells: readonly PlainCell[]) =>
      change(name, (table) => ({ ...table, rows: replaced(table.rows, at, 0, cells) })),
    renameTable: (from, to) => change(from, (table) => ({ ...table, name: to })),
    deleteTable: (name) => change(name, () => undefined),
    renameColumn: (name, from, to) =>
      change(name, (table) => ({
        ...table,
        columns: table.columns.map((column) => (column.heading === from ? { ...column, heading: to } : column)),
      })),
    filter: (name) => change(name, (table) => ({ ...table, filtered: true })),
    protectSheet: async (name) => changeSheet(name, (sheet) => ({ ...sheet, protected: true })),
    typeAt: async (name, address, value) => {
      const place = placeOf(book.state, sheetOf(book.state, name), address);
      book.replace(place.put(value, place.numberFormat), "other", [undefined]);
    },
    enterBlankFormula: async (name, address) => {
      const { cells } = sheetOf(book.state, name);
      const formula = { value: null, formula: 'IF(TRUE,"","")' };
      book.replace(withCells(book.state, name, { ...cells, [address]: formula }), "other", [undefined]);
    },
    merge: async (name, text) => {
      const [first, last] = text.split(":").map(cellPosition) as [CellPosition, CellPosition];
      const area = { firstRow: first.row, firstColumn: first.column, lastRow: last.row, lastColumn: last.column };
      changeSheet(name, (sheet) => ({ ...sheet, merges: [...(sheet.merges ?? []), area] }));
    },
    renameSheet: async (from, to) => {
      changeSheet(from, (sheet) => ({ ...sheet, name: to }));
      const tables = book.state.tables.map((table) => (table.sheet === from ? { ...table, sheet: to } : table));
      book.replace({ ...book.state, tables }, "other", [undefined]);
    },
    deleteSheet: async (name) => {
      const left = book.state.sheets.filter((sheet) => sheet.name !== name);
      const tables = book.state.tables.filter(({ sheet }) => sheet !== name);
      book.replace({ tables, sheets: left }, "other", [undefined]);
    },
    typeBelow: async (name, down) => {
      const { at, rows, sheet } = book.table(name);
      const address = cellAddress({ row: at.row + rows.length + down, column: at.column });
      const sheets = book.state.sheets.map((known) =>
        known.name === sheet ? { ...known, cells: { ...known.cells, [address]: { value: "total" } } } : known,
      );
      book.replace({ ...book.state, sheets }, "other", [undefined]);
    },
  };
}

const USUAL_WIDTH = 8;

function lookOf({ bold, italic, size, colour, fill, horizontal, borders }: CellLook = {}): RawLook {
  return {
    ...(bold === undefined ? {} : { bold }),
    ...(italic === undefined ? {} : { italic }),
    ...(size === undefined ? {} : { size }),
    ...(colour === undefined ? {} : { colour }),
    ...(fill === undefined ? {} : { fill }),
    ...(horizontal === "right" ? { right: true } : {}),
    ...(borders?.bottom === undefined ? {} : { lineBelow: borders.bottom.colour }),
  };
}

/** A workbook in memory for the contract, and the memory behind it. */
export function openMemoryBook(
  tables: readonly StartTable[],
): Promise<{ readonly test: TestBook; readonly memory: MemoryBook }> {
  const book = new MemoryBook(tables.map(memoryTable));
  const steps = faults();
  let turn = (): Promise<void> => Promise.resolve();
  book.beforeStep = async () => {
    await turn();
    steps.step();
  };
  const test: TestBook = {
    user: (log) => openTables(new MemoryHost(book), log),
    other: otherUser(book),
    cell: async (name, row, heading) => {
      const { columns, rows } = book.table(name);
      const index = columns.findIndex((known) => known.heading === heading);
      const { calculate, numberFormat } = columns[index]!;
      return {
        value: rows[row]?.[index] ?? null,
        hasFormula: calculate !== undefined && rows[row] !== undefined,
        ...(numberFormat === undefined ? {} : { numberFormat }),
      };
    },
    bodyRows: async (name) => book.table(name).rows.length,
    sheetCell: async (name, address) => {
      const sheet = book.state.sheets.find((known) => known.name === name);
      const { value = null, formula, numberFormat, look } = sheet?.cells[address] ?? {};
      return {
        value,
        hasFormula: formula !== undefined,
        ...(numberFormat === undefined ? {} : { numberFormat }),
        look: lookOf(look),
        width: sheet?.widths?.[cellPosition(address).column] ?? USUAL_WIDTH,
      };
    },
    sheetNames: async () => book.state.sheets.map(({ name }) => name),
    steps: steps.taken,
    failSteps: steps.fail,
    setTurn: (next) => {
      turn = next;
    },
    close: async () => book.close(),
  };
  return Promise.resolve({ test, memory: book });
}
