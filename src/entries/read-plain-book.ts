import { plainBook } from "../workbook/file/plain-book";
import type { PlainBook } from "../workbook/plain-book";
import { readWorkbook } from "../xlsx/read";

/** The values saved in a workbook file. Throws WorkbookFileError, with a plain sentence, where it is none. */
export function readPlainBook(bytes: Uint8Array): PlainBook {
  return plainBook(readWorkbook(bytes, []));
}
