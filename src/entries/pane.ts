import { openPane as draw } from "../taskpane/pane";
import { OfficePort } from "../workbook/office/port";

/** Draws the pane on the workbook that is open in Excel. */
export function openPane(place: Element): void {
  draw(place, { port: new OfficePort() });
}
