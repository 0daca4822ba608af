import type { MemoryBook } from "../../../../src/workbook/memory/book";
import { MemoryBookHost } from "../../../../src/workbook/memory/book-host";
import { MemoryHost } from "../../../../src/workbook/memory/table-host";
import { openBook } from "../../../../src/workbook/saving/open-book";
import { openTables } from "../../../../src/workbook/saving/open-tables";

export { memoryBook } from "../../../../src/workbook/memory/plain-view";

/** One user's ports on a workbook in memory. */
export function portsOn(book: MemoryBook) {
  return { tables: openTables(new MemoryHost(book)), book: openBook(new MemoryBookHost(book)) };
}
