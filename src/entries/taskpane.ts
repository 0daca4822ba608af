import { startWithWorkbook } from "./excel-start";

/** The pane beside the workbook in Excel. Its code is asked for only now, so that no function waits for it. */
void Office.onReady().then(async ({ host }) => {
  const place = document.getElementById("pane");
  if (place === null) return;
  if (host === Office.HostType.Excel) {
    void startWithWorkbook(Office);
    const { openPane } = await import(/* webpackChunkName: "pane" */ "./pane");
    await openPane(place);
  } else place.textContent = "Evenfoot works inside Excel. Open it there from the Home tab.";
});
