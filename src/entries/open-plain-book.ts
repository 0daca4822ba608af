import type { PlainBook } from "../workbook/plain-book";

/** Reads a workbook file that the user chose. The reader is large, and asked for only when a file is there to be read. */
export async function openPlainBook(file: Blob): Promise<PlainBook> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { readPlainBook } = await import(/* webpackChunkName: "read-workbook" */ "./read-plain-book");
  return readPlainBook(bytes);
}
