import { readFileSync } from "node:fs";
import { join } from "node:path";
import { registry } from "../../../../src/functions/registry";
import type { MemoryBook } from "../../../../src/workbook/memory/book";
import type { PlainCell } from "../../../../src/workbook/port";
import type { SheetModel, WorkbookModel } from "../../../../src/xlsx/model";
import { readWorkbook } from "../../../../src/xlsx/read";
import { bookOf, valuesIn } from "./memory-tables";

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

export function valuesOf(name: string): (row: number, column: number) => PlainCell {
  return valuesIn(sheetOf(name));
}

/** The tables that the pane reads, in a workbook in memory. */
export function sampleBook(): MemoryBook {
  return bookOf(sample);
}
