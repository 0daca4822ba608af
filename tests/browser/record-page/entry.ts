import { openPane } from "../../../src/taskpane/pane";
import { today } from "../../../src/taskpane/today";
import { MemoryPort } from "../../../src/workbook/memory/port";
import { bookOf, portOn, rowsOf } from "../../unit/taskpane/record/herd";
import { largeBook } from "./large-book";

/** The pane on an invented workbook in memory. "?cows=5000&findings=50000" makes a large one. */
const query = new URLSearchParams(location.search);
const large = query.has("cows");
const book = large ? largeBook(Number(query.get("cows")), Number(query.get("findings"))) : bookOf();
const DRAFT = "record-draft";

Object.assign(window, {
  rowsOf: (table: string) => rowsOf(book, table),
  failNext: (message: string) => {
    const before = book.beforeStep;
    book.beforeStep = async (step) => {
      if (step !== "write") return;
      book.beforeStep = before;
      throw new Error(message);
    };
  },
});

// The workbook is made; from here on the pane's own time runs.
Object.assign(window, { paneStarted: performance.now() });
openPane(document.getElementById("pane")!, {
  port: new MemoryPort(),
  tables: portOn(book),
  today,
  recordDrafts: {
    read: () => {
      const kept = sessionStorage.getItem(DRAFT);
      return kept === null ? undefined : JSON.parse(kept);
    },
    keep: (draft) => sessionStorage.setItem(DRAFT, JSON.stringify(draft)),
  },
});

const ready = new MutationObserver(() => {
  if (!document.body.textContent.includes("Number or name")) return;
  Object.assign(window, { paneReady: performance.now() });
  ready.disconnect();
});
ready.observe(document.body, { subtree: true, childList: true, characterData: true });
