import { Workbook } from "@cj-tech-master/excelts";
import type { PlainCell } from "../../../src/workbook/port";
import type { RawCell } from "./test-book";

/** Reads a cell by another library than the one under test. */
export async function rawFileCell(bytes: Uint8Array, sheet: string, address: string): Promise<RawCell> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  const cell = workbook.getWorksheet(sheet)?.getCell(address);
  if (cell === undefined) return { value: null, hasFormula: false };
  const { value, formula, numFmt } = cell as { value: unknown; formula?: string; numFmt?: string };
  return {
    value: formula === undefined ? plain(value) : null,
    hasFormula: formula !== undefined,
    ...(numFmt === undefined ? {} : { numberFormat: numFmt }),
  };
}

/** The library gives days as dates. Serial 25,569 is 1970-01-01. */
function plain(value: unknown): PlainCell {
  if (value instanceof Date) return value.getTime() / 86_400_000 + 25_569;
  if (value === undefined || value === "") return null;
  if (typeof value === "object" && value !== null && "richText" in value) return JSON.stringify(value);
  return value as PlainCell;
}

/** The file after someone changed it with another program. */
export async function editedFile(bytes: Uint8Array, change: (workbook: Workbook) => unknown): Promise<Uint8Array> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  await change(workbook);
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as unknown as ArrayBuffer);
}
