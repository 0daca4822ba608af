import { readFileSync } from "node:fs";
import { join } from "node:path";
import { registry } from "../../../../src/functions/registry";
import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import type { PlainCell } from "../../../../src/workbook/port";
import type { SheetModel, WorkbookModel } from "../../../../src/xlsx/model";
import { readWorkbook } from "../../../../src/xlsx/read";

const PATH = join(__dirname, "../../../../sample-workbooks/herd-workbook.xlsx");

/** The sample workbook as it is stored, with the values of its formulas. */
export const sample: WorkbookModel = readWorkbook(
  new Uint8Array(readFileSync(PATH)),
  registry.map(({ id }) => id),
);

/** The as-of day of the sample workbook, 2026-09-01. */
export const AS_OF = 46_266;

export function sheetOf(name: string): SheetModel {
  const sheet = sample.sheets.find((known) => known.name === name);
  if (sheet === undefined) throw new Error(`the sample has no sheet ${name}`);
  return sheet;
}

/** Values of a block of a sheet by row and column counted from 0; errors and blanks are null. */
export function valuesOf(name: string): (row: number, column: number) => PlainCell {
  const values = new Map(sheetOf(name).cells.map(({ row, column, value }) => [`${row} ${column}`, value]));
  return (row, column) => {
    const value = values.get(`${row} ${column}`) ?? null;
    return typeof value === "object" || value === "" ? null : value;
  };
}

/** The tables that the pane reads, in a workbook in memory. */
export function sampleBook(): MemoryBook {
  return new MemoryBook(["Cows", "Findings", "Scores", "Rules", "TrimRules"].map(memoryTable));
}

function memoryTable(name: string): MemoryTable {
  const sheet = sample.sheets.find(({ tables }) => tables.some((table) => table.name === name))!;
  const { area, columns } = sheet.tables.find((table) => table.name === name)!;
  const value = valuesOf(sheet.name);
  const rows = Array.from({ length: area.lastRow - area.firstRow }, (_, down) =>
    columns.map((_, right) => value(area.firstRow + 1 + down, area.firstColumn + right)),
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
