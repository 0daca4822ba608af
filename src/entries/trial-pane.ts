import { openPane } from "../taskpane/pane";
import type { WorkbookPort } from "../workbook/port";

/** The pane in its frame beside the grid. The page around it hands it the workbook. */
declare global {
  interface Window {
    /** Set by the trial page before it loads the frame. */
    workbookPort?: WorkbookPort;
  }
}

const place = document.getElementById("pane");
const port = window.parent.workbookPort;
if (place && port) openPane(place, { port });
