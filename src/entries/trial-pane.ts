import { tablesWhenMapped } from "../herd/mapped-port/when-mapped";
import { openPane } from "../taskpane/pane";
import { today } from "../taskpane/today";
import type { WorkbookPort } from "../workbook/port";
import type { BookHost } from "../workbook/book-host";
import { framedBook, framedHost } from "../workbook/saving/framed-host";
import { openBook } from "../workbook/saving/open-book";
import { openTables } from "../workbook/saving/open-tables";
import type { TableHost } from "../workbook/table-host";
import { draftsOf, reportDraftsOf } from "./kept-in-browser";
import { openPlainBook } from "./open-plain-book";

/** The pane in its frame beside the grid. The page around it hands it the workbook. */
declare global {
  interface Window {
    /** Set by the trial page before it loads the frame. */
    workbookPort?: WorkbookPort;
    workbookTables?: TableHost;
    workbookBook?: BookHost;
    /** The day that the workbook counts from, where it says so. */
    dayOfWorkbook?(): number | undefined;
  }
}

const place = document.getElementById("pane");
const { workbookPort: port, workbookTables, workbookBook, dayOfWorkbook } = window.parent;
if (place && port && workbookTables) {
  const book = workbookBook === undefined ? undefined : openBook(framedBook(workbookBook));
  const tables = openTables(framedHost(workbookTables));
  openPane(place, {
    port,
    tables: book === undefined ? tables : tablesWhenMapped(tables, book),
    ...(book === undefined ? {} : { book }),
    openBook: openPlainBook,
    recordDrafts: draftsOf({ name: "trial" }),
    reportDrafts: reportDraftsOf({ name: "trial" }),
    today: () => dayOfWorkbook?.() ?? today(),
    holdsItsDay: () => Promise.resolve(dayOfWorkbook?.() !== undefined),
  });
}
