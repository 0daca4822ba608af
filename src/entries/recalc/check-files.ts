import { type DaySerial, serialOf } from "../../core/shared/days";
import { type BookCheck, checkBook } from "../../herd/check/check-book";
import { AS_OF } from "../../workbook/tables";
import { WorkbookFileError } from "../../xlsx/file-error";
import type { WorkbookModel } from "../../xlsx/model";
import { readWorkbook } from "../../xlsx/read";
import { parseCell } from "../../xlsx/address";
import { FileError, readWholeFile } from "./files";
import { plainBook } from "../../workbook/file/plain-book";

/** A workbook after its check: what was found, or why it could not be read. */
export type FileCheck =
  | { readonly path: string; readonly check: BookCheck; readonly asOf: DaySerial; readonly milliseconds: number }
  | { readonly path: string; readonly failure: string };

/** Checks one workbook. It never throws: a workbook that cannot be read is a result like any other. */
export async function checkFile(path: string, asOf: DaySerial | undefined): Promise<FileCheck> {
  try {
    const bytes = await readWholeFile(path);
    const started = performance.now();
    const model = readWorkbook(bytes, []);
    const day = asOf ?? asOfOf(model) ?? today();
    const check = checkBook(plainBook(model), day);
    return { path, check, asOf: day, milliseconds: performance.now() - started };
  } catch (error) {
    return { path, failure: failureOf(path, error as Error) };
  }
}

function failureOf(path: string, error: Error): string {
  if (error instanceof FileError) return error.message.replace(`${path}: `, "");
  if (error instanceof WorkbookFileError) return error.message;
  return `it could not be checked: ${error.message}`;
}

/** The day in the cell that the workbook names AsOf. */
function asOfOf({ names, sheets }: WorkbookModel): DaySerial | undefined {
  const formula = names.find(({ name }) => name.toLowerCase() === AS_OF.toLowerCase())?.formula ?? "";
  const parts = /^(?:'((?:[^']|'')+)'|([^!']+))!(.+)$/.exec(formula);
  const place = parseCell(parts?.[3] ?? "");
  const sheet = sheets.find(({ name }) => name === (parts?.[1]?.replace(/''/g, "'") ?? parts?.[2]));
  const cell = sheet?.cells.find(({ row, column }) => row === place?.row && column === place.column);
  return typeof cell?.value === "number" ? Math.floor(cell.value) : undefined;
}

function today(): DaySerial {
  const now = new Date();
  return serialOf({ year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() });
}
