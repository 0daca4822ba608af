import { day } from "../../../src/core/shared/days";
import { tablesWhenMapped } from "../../../src/herd/mapped-port/when-mapped";
import { openPane } from "../../../src/taskpane/pane";
import { plainBook } from "../../../src/workbook/file/plain-book";
import { MemoryPort } from "../../../src/workbook/memory/port";
import { readWorkbook } from "../../../src/xlsx/read";
import { memoryBook, portsOn } from "../../unit/taskpane/set-up/memory-book";

/** The whole pane on the sample with headings of its own, in memory. */
async function open(): Promise<void> {
  const bytes = await (await fetch("sample-workbooks/own-headings.xlsx")).arrayBuffer();
  const { tables, book } = portsOn(memoryBook(plainBook(readWorkbook(new Uint8Array(bytes), []))));
  Object.assign(window, { farmBook: book });
  openPane(document.getElementById("pane")!, {
    port: new MemoryPort(),
    tables: tablesWhenMapped(tables, book),
    book,
    recordDrafts: { read: () => undefined, keep: () => undefined },
    today: () => day("2026-09-01"),
  });
}

void open();
