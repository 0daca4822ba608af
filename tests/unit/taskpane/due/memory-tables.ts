import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import type { PlainCell } from "../../../../src/workbook/port";
import type { SheetModel, WorkbookModel } from "../../../../src/xlsx/model";

/** The tables that the Due screen reads. */
const DUE_TABLES = ["Cows", "Findings", "Scores", "Rules", "TrimRules"] as const;

/** Tables of a workbook in memory. Calculated columns are there, but compute nothing. */
export function bookOf({ sheets }: WorkbookModel, names: readonly string[] = DUE_TABLES): MemoryBook {
  const tables = names.map((name) => {
    const sheet = sheets.find((known) => known.tables.some((table) => table.name === name));
    if (sheet === undefined) throw new Error(`the workbook has no table ${name}`);
    return memoryTable(sheet, name);
  });
  return new MemoryBook(tables);
}

function memoryTable(sheet: SheetModel, name: string): MemoryTable {
  const { area, columns } = sheet.tables.find((table) => table.name === name)!;
  const value = valuesIn(sheet);
  const rows = Array.from({ length: area.lastRow - area.firstRow }, (_, down) =>
    columns.map(({ formula }, right) =>
      formula === undefined ? value(area.firstRow + 1 + down, area.firstColumn + right) : null,
    ),
  );
  return {
    name,
    sheet: sheet.name,
    at: { row: area.firstRow, column: area.firstColumn },
    columns: columns.map(({ name: heading, formula }) => ({
      heading,
      ...(formula === undefined ? {} : { calculate: () => null }),
    })),
    rows,
    filtered: false,
  };
}

/** Values of a sheet by row and column counted from 0; errors and blanks are null. */
export function valuesIn({ cells }: SheetModel): (row: number, column: number) => PlainCell {
  const values = new Map(cells.map(({ row, column, value }) => [`${row} ${column}`, value]));
  return (row, column) => {
    const value = values.get(`${row} ${column}`) ?? null;
    return typeof value === "object" || value === "" ? null : value;
  };
}
