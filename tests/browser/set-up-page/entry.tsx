import "../../../src/taskpane/pane.css";
import { render } from "preact";
import { day } from "../../../src/core/shared/days";
import { SetUp } from "../../../src/taskpane/screens/set-up/screen";
import { MemoryPort } from "../../../src/workbook/memory/port";
import { tablesWhenMapped } from "../../../src/herd/mapped-port/when-mapped";
import { plainBook } from "../../../src/workbook/file/plain-book";
import type { PlainBook } from "../../../src/workbook/plain-book";
import { readWorkbook } from "../../../src/xlsx/read";
import { memoryBook, portsOn } from "../../unit/taskpane/set-up/memory-book";
import { badBooks } from "../../unit/taskpane/set-up/bad-books";

/** The screen alone on a workbook in memory: the sample named by "?book=", or one of the bad books. */
async function open(): Promise<void> {
  const name = new URLSearchParams(location.search).get("book") ?? "own-headings";
  const book = memoryBook(await bookNamed(name));
  let waitMs = 0;
  book.beforeStep = (step) =>
    step === "write" && waitMs > 0 ? new Promise((resolve) => setTimeout(resolve, waitMs)) : Promise.resolve();
  Object.assign(window, {
    setUp: {
      shown: () => book.shown,
      slow: (ms: number) => {
        waitMs = ms;
      },
    } satisfies SetUpBook,
  });
  const { tables, book: sheets } = portsOn(book);
  const place = document.getElementById("pane")!;
  const openBook = (file: Blob): Promise<PlainBook> =>
    file.arrayBuffer().then((bytes) => fileBook(new Uint8Array(bytes)));
  render(
    <main>
      <SetUp
        port={new MemoryPort()}
        tables={tablesWhenMapped(tables, sheets)}
        book={sheets}
        today={() => day("2026-09-01")}
        openBook={openBook}
      />
    </main>,
    place,
  );
}

async function bookNamed(name: string): Promise<PlainBook> {
  const bad = badBooks[name];
  if (bad !== undefined) return bad();
  const bytes = await (await fetch(`sample-workbooks/${name}.xlsx`)).arrayBuffer();
  return fileBook(new Uint8Array(bytes));
}

function fileBook(bytes: Uint8Array): PlainBook {
  return plainBook(readWorkbook(bytes, []));
}

/** What a test may look at and do behind the page. */
export interface SetUpBook {
  shown(): unknown;
  slow(ms: number): void;
}

void open();
