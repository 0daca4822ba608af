import { readFileSync } from "node:fs";
import { join } from "node:path";
import { guessBook } from "../../../src/herd/mapping/guess-book";
import { mappedTables } from "../../../src/herd/mapped-port/mapped-tables";
import { mappingWrites } from "../../../src/herd/set-up/keep-mapping";
import { wordsProposal, wordsWrites } from "../../../src/herd/set-up/keep-words";
import type { TableWrites } from "../../../src/herd/set-up/table-writes";
import type { BookPort } from "../../../src/workbook/book-port";
import { plainBook } from "../../../src/workbook/file/plain-book";
import type { MemoryBook } from "../../../src/workbook/memory/book";
import { MemoryBookHost } from "../../../src/workbook/memory/book-host";
import { memoryBook } from "../../../src/workbook/memory/plain-view";
import { MemoryHost } from "../../../src/workbook/memory/table-host";
import type { PlainBook } from "../../../src/workbook/plain-book";
import { openBook } from "../../../src/workbook/saving/open-book";
import { openTables } from "../../../src/workbook/saving/open-tables";
import type { TablePort } from "../../../src/workbook/table-port";
import { readWorkbook } from "../../../src/xlsx/read";

/** A workbook in memory with the ports on it; `tables` shows the farm's lists as ours. */
export interface OpenFarmBook {
  readonly memory: MemoryBook;
  readonly book: BookPort;
  /** The tables as they stand. */
  readonly raw: TablePort;
  readonly tables: TablePort;
}

export function sampleBook(file: string): PlainBook {
  return plainBook(readWorkbook(readFileSync(join(__dirname, "../../../sample-workbooks", file)), []));
}

export function openFarmBook(plain: PlainBook): OpenFarmBook {
  const memory = memoryBook(plain);
  const raw = openTables(new MemoryHost(memory));
  const book = openBook(new MemoryBookHost(memory));
  return { memory, book, raw, tables: mappedTables(raw, book) };
}

export async function write(tables: TablePort, writes: TableWrites): Promise<void> {
  if ("create" in writes) await tables.createTable(writes.create);
  else if (writes.changes.length > 0) await tables.save({ id: `writes ${Math.random()}`, title: "set up", changes: writes.changes }); // oxfmt-ignore
}

/** The book with the mapping as it is guessed and the words as they are proposed, both confirmed. */
export async function openSetUp(plain: PlainBook): Promise<OpenFarmBook> {
  const open = openFarmBook(plain);
  const mapping = { sources: guessBook(plain).sources };
  await write(open.raw, mappingWrites(mapping, undefined));
  await write(open.raw, wordsWrites(wordsProposal(plain, mapping, undefined).rows, undefined));
  return open;
}
