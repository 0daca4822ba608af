import { openPane } from "../taskpane/pane";
import { OfficePort } from "../workbook/office/port";

/** The pane beside the workbook in Excel. The page has loaded the functions before. */
void Office.onReady().then(({ host }) => {
  const place = document.getElementById("pane");
  if (place === null) return;
  if (host === Office.HostType.Excel) openPane(place, new OfficePort());
  else place.textContent = "Evenfoot works inside Excel. Open it there from the Home tab.";
});
