import { readFileSync } from "node:fs";
import { join } from "node:path";
import { day } from "../../../../src/core/shared/days";
import { plainBook } from "../../../../src/workbook/file/plain-book";
import type { PlainBook } from "../../../../src/workbook/plain-book";
import { readWorkbook } from "../../../../src/xlsx/read";

/** The day on which the invented farm's own book is looked at. */
export const TODAY = day("2026-09-01");

/** A sample workbook as plain values. */
export function sampleBook(file: string): PlainBook {
  return plainBook(readWorkbook(readFileSync(join(__dirname, "../../../../sample-workbooks", file)), []));
}
