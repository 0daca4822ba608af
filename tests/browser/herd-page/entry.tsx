import "../../../src/taskpane/pane.css";
import { render } from "preact";
import { registry } from "../../../src/functions/registry";
import { Herd } from "../../../src/taskpane/screens/herd/screen";
import { today } from "../../../src/taskpane/today";
import type { MemoryBook } from "../../../src/workbook/memory/book";
import { MemoryPort } from "../../../src/workbook/memory/port";
import { readWorkbook } from "../../../src/xlsx/read";
import { bookOf } from "../../unit/taskpane/due/memory-tables";
import { userOf } from "../../unit/taskpane/due/small-book";
import { largeHerd } from "../../unit/taskpane/large-herd";

/** The longest the page was held up, in ms, since it was asked last. */
export interface HerdPage {
  open(): void;
  longest(): number;
}

/** The Herd screen on the sample in memory; "?large" makes 50,000 findings and 60,000 scores. */
async function prepare(): Promise<void> {
  const book = await bookFor(new URLSearchParams(location.search));
  let longest = 0;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) longest = Math.max(longest, duration);
  }).observe({ type: "longtask" });
  const tables = userOf(book);
  Object.assign(window, {
    herd: {
      open() {
        const screen = <Herd port={new MemoryPort()} tables={tables} today={today} />;
        const main = (
          <main>
            <div class="screen">{screen}</div>
          </main>
        );
        render(main, document.getElementById("pane")!);
      },
      longest: () => longest,
    } satisfies HerdPage,
  });
}

async function bookFor(query: URLSearchParams): Promise<MemoryBook> {
  if (query.has("large")) return largeHerd();
  const response = await fetch("sample-workbooks/herd-workbook.xlsx");
  const bytes = new Uint8Array(await response.arrayBuffer());
  const ids = registry.map(({ id }) => id);
  return bookOf(readWorkbook(bytes, ids), ["Cows", "Findings", "Scores", "Targets", "Prices", "Rules", "TrimRules"]);
}

void prepare();
