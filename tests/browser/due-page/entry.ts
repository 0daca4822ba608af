import { registry } from "../../../src/functions/registry";
import { openPane } from "../../../src/taskpane/pane";
import { today } from "../../../src/taskpane/today";
import { MemoryPort } from "../../../src/workbook/memory/port";
import { readWorkbook } from "../../../src/xlsx/read";
import { largeBook } from "../../unit/taskpane/due/large-book";
import { bookOf } from "../../unit/taskpane/due/memory-tables";
import { rowOf, typeInto, userOf } from "../../unit/taskpane/due/small-book";

/** The pane on the tables of the sample workbook in memory; "?large" makes 50,000 findings. */
async function open(): Promise<void> {
  const large = new URLSearchParams(location.search).has("large");
  const book = large
    ? largeBook()
    : bookOf(
        readWorkbook(
          await sampleBytes(),
          registry.map(({ id }) => id),
        ),
      );
  const tables = userOf(book);
  let waitMs = 0;
  book.beforeStep = (step) =>
    step === "write" && waitMs > 0 ? new Promise((resolve) => setTimeout(resolve, waitMs)) : Promise.resolve();
  Object.assign(window, {
    due: {
      rowOf: (table: string, index: number) => rowOf(book, table, index),
      typeInto: (index: number, heading: string, text: string) => typeInto(book, "Findings", index, heading, text),
      saves: () => tables.pastSaves().length,
      sheets: () => book.state.sheets.map(({ name }) => name),
      slow: (ms: number) => {
        waitMs = ms;
      },
    } satisfies DueBook,
  });
  const drafts = { read: () => undefined, keep: () => undefined };
  openPane(document.getElementById("pane")!, { port: new MemoryPort(), tables, recordDrafts: drafts, today });
}

async function sampleBytes(): Promise<Uint8Array> {
  return new Uint8Array(await (await fetch("sample-workbooks/herd-workbook.xlsx")).arrayBuffer());
}

/** What a test may look at and do behind the page. */
export interface DueBook {
  rowOf(table: string, index: number): Record<string, unknown>;
  typeInto(index: number, heading: string, text: string): void;
  saves(): number;
  sheets(): string[];
  slow(ms: number): void;
}

void open();
