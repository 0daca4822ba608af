import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "../trial/page/page.css";
import { registry } from "../functions/registry";
import { Controls } from "../trial/page/controls";
import { Session } from "../trial/session";
import { dayOfWorkbook } from "../workbook/grid/as-of";
import { GridBookHost } from "../workbook/grid/book/host";
import { GridPort } from "../workbook/grid/port";
import { GridTableHost } from "../workbook/grid/tables/host";

/** The trial page: a workbook in a grid, and beside it the pane in a frame of its own, as in Excel. */
const port = new GridPort();
const tables = new GridTableHost();
window.workbookPort = port;
window.workbookTables = tables;
const book = new GridBookHost();
window.workbookBook = book;

const place = document.getElementById("grid");
const frame = document.getElementById("pane");
if (place && frame instanceof HTMLIFrameElement) {
  const ids = registry.map(({ id }) => id);
  const session = new Session(place, port, tables, book, ids);
  window.dayOfWorkbook = () => session.grid && dayOfWorkbook(session.grid.api);
  // The tests drive the grid from here.
  window.trialSession = session;
  frame.src = "pane.html";
  void new Controls(session).openFirst();
}

declare global {
  interface Window {
    trialSession?: Session;
  }
}
