import "../../../src/taskpane/pane.css";
import { render } from "preact";
import { registry } from "../../../src/functions/registry";
import { Cells } from "../../../src/taskpane/screens/cells/screen";
import { Costs } from "../../../src/taskpane/screens/costs/screen";
import { Herd } from "../../../src/taskpane/screens/herd/screen";
import { VisitReport } from "../../../src/taskpane/screens/report/screen";
import { today } from "../../../src/taskpane/today";
import type { MemoryBook } from "../../../src/workbook/memory/book";
import { MemoryPort } from "../../../src/workbook/memory/port";
import { readWorkbook } from "../../../src/xlsx/read";
import { BOOKS } from "../../unit/taskpane/cells/books";
import { bookOf } from "../../unit/taskpane/due/memory-tables";
import { userOf } from "../../unit/taskpane/due/small-book";

const SCREENS = { herd: Herd, cells: Cells, costs: Costs, report: VisitReport } as const;

/** What a test may do and look at behind the page. */
export interface FiguresPage {
  open(screen: keyof typeof SCREENS): void;
  sheets(): readonly string[];
}

/** The screens of figures on the sample in memory, or on a book that "?book" names. */
async function prepare(): Promise<void> {
  const book = await bookFor(new URLSearchParams(location.search).get("book"));
  const tables = userOf(book);
  Object.assign(window, {
    figures: {
      open(name) {
        const Content = SCREENS[name];
        const screen = <Content port={new MemoryPort()} tables={tables} today={today} />;
        const main = (
          <main>
            <div class="screen">{screen}</div>
          </main>
        );
        render(main, document.getElementById("pane")!);
      },
      sheets: () => book.state.sheets.map(({ name }) => name),
    } satisfies FiguresPage,
  });
}

const SAMPLE_TABLES = ["Cows", "Findings", "Scores", "Tests", "Targets", "Prices", "Costs", "Rules", "TrimRules"];

async function bookFor(name: string | null): Promise<MemoryBook> {
  if (name !== null) return BOOKS[name]!();
  const response = await fetch("sample-workbooks/herd-workbook.xlsx");
  const bytes = new Uint8Array(await response.arrayBuffer());
  const ids = registry.map(({ id }) => id);
  return bookOf(readWorkbook(bytes, ids), SAMPLE_TABLES);
}

void prepare();
