import { cellAddress } from "../../../../src/workbook/cell-address";
import { MemoryBook, type MemoryCell, type MemorySheet, type MemoryTable } from "../../../../src/workbook/memory/book";
import { MemoryBookHost } from "../../../../src/workbook/memory/book-host";
import { MemoryHost } from "../../../../src/workbook/memory/table-host";
import { cellAt, holds, type PlainBook, type PlainSheet } from "../../../../src/workbook/plain-book";
import { openBook } from "../../../../src/workbook/saving/open-book";
import { openTables } from "../../../../src/workbook/saving/open-tables";

const DAY = "yyyy-mm-dd";

/** A workbook in memory with the cells and tables of a plain one. Its formulas compute nothing. */
export function memoryBook({ sheets }: PlainBook): MemoryBook {
  const book = new MemoryBook();
  const state = { tables: sheets.flatMap(tablesOf), sheets: sheets.map(sheetOf) };
  book.replace(state, undefined, []);
  return book;
}

/** One user's ports on a workbook in memory. */
export function portsOn(book: MemoryBook) {
  return { tables: openTables(new MemoryHost(book)), book: openBook(new MemoryBookHost(book)) };
}

function formatAt({ days }: PlainSheet, row: number, column: number): { readonly numberFormat?: string } {
  return days.some((area) => holds(area, row, column)) ? { numberFormat: DAY } : {};
}

function tablesOf(sheet: PlainSheet): MemoryTable[] {
  return sheet.tables.map(({ name, area, calculated }) => {
    const places = Array.from({ length: area.lastColumn - area.firstColumn + 1 }, (_, at) => area.firstColumn + at);
    const rows = Array.from({ length: area.lastRow - area.firstRow }, (_, at) => area.firstRow + 1 + at);
    return {
      name,
      sheet: sheet.name,
      at: { row: area.firstRow, column: area.firstColumn },
      columns: places.map((column) => {
        const heading = String(cellAt(sheet, area.firstRow, column) ?? "");
        const fills = calculated.includes(heading) ? { calculate: () => null } : {};
        return { heading, ...fills, ...formatAt(sheet, area.firstRow + 1, column) };
      }),
      rows: rows.map((row) => places.map((column) => cellAt(sheet, row, column))),
      filtered: false,
    };
  });
}

function sheetOf(sheet: PlainSheet): MemorySheet {
  const cells: Record<string, MemoryCell> = {};
  sheet.rows.forEach((line, row) =>
    line.forEach((value, column) => {
      if (value === null || sheet.tables.some(({ area }) => holds(area, row, column))) return;
      cells[cellAddress({ row, column })] = { value, ...formatAt(sheet, row, column) };
    }),
  );
  return { name: sheet.name, protected: false, cells, merges: sheet.merges };
}
