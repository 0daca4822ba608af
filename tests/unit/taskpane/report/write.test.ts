import { takeReportBack, writeReport } from "../../../../src/taskpane/screens/report/effects";
import { reportOf } from "../../../../src/taskpane/screens/report/report";
import { initialReportState } from "../../../../src/taskpane/screens/report/state";
import { writtenAmong } from "../../../../src/taskpane/screens/report/written";
import { MemoryBook } from "../../../../src/workbook/memory/book";
import { MemoryPort } from "../../../../src/workbook/memory/port";
import { MemoryHost } from "../../../../src/workbook/memory/table-host";
import { openTables } from "../../../../src/workbook/saving/open-tables";
import { memoryLog } from "../../../../src/workbook/saving/save-log";
import { cases, computedReport, findingsOf, tenCows, VISIT } from "./computed";

const BOOK = [findingsOf(cases("2026-07-01", "DD", 3)), tenCows];

test("a written report can be taken back after the pane was opened anew, and goes when it is taken back elsewhere", async () => {
  const book = new MemoryBook(BOOK);
  const log = memoryLog();
  const opened = () => ({ port: new MemoryPort(), tables: openTables(new MemoryHost(book), log), today: () => VISIT });
  const computed = await computedReport(BOOK);
  const report = reportOf({ block: computed, listing: undefined, rolling: undefined, tables: new Map() });
  const write = (attempt: number) =>
    writeReport(opened(), { report, state: { ...initialReportState, writing: { attempt } }, computed, given: {} });
  expect(await write(0)).toEqual({ type: "written", sheet: "Visit 2026-09-01" });
  expect(await write(0)).toEqual({ type: "name taken" });
  expect(await write(1)).toEqual({ type: "written", sheet: "Visit 2026-09-01 2" });

  const { tables } = opened();
  const standing = writtenAmong(tables.pastSaves());
  expect(standing.map(({ sheet }) => sheet)).toEqual(["Visit 2026-09-01 2", "Visit 2026-09-01"]);
  // Another screen lists the same saves, and takes one back.
  await tables.takeBack(standing[0]!.id);
  const [first, ...others] = writtenAmong(opened().tables.pastSaves());
  expect([first, others]).toEqual([{ id: standing[1]!.id, sheet: "Visit 2026-09-01" }, []]);
  expect(await takeReportBack(opened(), first!.id)).toEqual({ type: "taken back" });
  expect(writtenAmong(opened().tables.pastSaves())).toEqual([]);
  expect(book.state.sheets.map(({ name }) => name)).toEqual(["Findings", "Cows"]);
});

test("saves of other screens are no reports", () => {
  const saves = [
    { id: "1", title: "Cow 12" },
    { id: "2", title: "Visit report on sheet Visit 2026-08-01" },
    { id: "3", title: "Where to look" },
  ];
  expect(writtenAmong(saves)).toEqual([{ id: "2", sheet: "Visit 2026-08-01" }]);
});
