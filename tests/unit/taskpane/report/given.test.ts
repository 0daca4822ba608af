import { legalLimit } from "../../../../src/blocks/cells/legal-limit";
import { BlockData } from "../../../../src/blocks/data";
import { visitReport } from "../../../../src/blocks/report/visit-report";
import { day } from "../../../../src/core/shared/days";
import { initialLiveState, type LiveState, nextLiveState } from "../../../../src/taskpane/parts/live-blocks/state";
import { readHerdTables } from "../../../../src/taskpane/parts/live-blocks/read-herd-tables";
import { writeReport } from "../../../../src/taskpane/screens/report/effects";
import { givenIn, givenTo } from "../../../../src/taskpane/screens/report/given";
import { reportOf } from "../../../../src/taskpane/screens/report/report";
import { initialReportState, nextReportState } from "../../../../src/taskpane/screens/report/state";
import { MemoryBook } from "../../../../src/workbook/memory/book";
import { MemoryPort } from "../../../../src/workbook/memory/port";
import { table, userOf } from "../due/small-book";
import { cases, computedReport, findingsOf, tenCows, VISIT } from "./computed";

const TESTS = table(
  "Tests",
  ["Date", "Cow", "Count"],
  ["2026-06-10", "2026-07-10", "2026-08-10"].map((on) => [day(on), 1, 200]),
);

async function stateWith(typed: LiveState["typed"]): Promise<LiveState> {
  const herd = await readHerdTables(userOf(new MemoryBook([TESTS])), ["Tests"], VISIT);
  const state = nextLiveState(initialLiveState(typed), { type: "read", wanted: 1, herd });
  expect(state.reading).toMatchObject({ kind: "read", data: expect.any(BlockData) });
  return state;
}

test.each([
  [{}, {}],
  [{ visit: "2026-07-31" }, { test: day("2026-07-10") }],
  [{ visit: "2026-07-10" }, { test: day("2026-07-10") }],
  // No test up to then: no mean, rather than that of a later test.
  [{ visit: "2026-06-09" }, undefined],
  [{ visit: "" }, undefined],
])("the rolling mean goes up to the visit: typed %j, given %j", async (typed, given) => {
  expect(givenTo(legalLimit, await stateWith(typed))).toEqual(given);
});

test("a day half typed is a blank to the report, and one that was not typed is left to it", async () => {
  expect(givenTo(visitReport, await stateWith({ visit: "2026-07-31" }))).toEqual({ visit: day("2026-07-31") });
  expect(givenTo(visitReport, await stateWith({ since: "" }))).toEqual({ since: null });
});

const BOOK = [findingsOf(cases("2026-07-01", "DD", 3)), tenCows];

test("a report is written with the days that it was computed for", async () => {
  const computed = await computedReport(BOOK, { since: day("2026-05-01") });
  expect(givenIn(computed, { since: "2026-08-01" })).toEqual({ since: day("2026-05-01") });
  expect(givenIn(computed, {})).toEqual({});
});

test("days that make no report name the field that is to be put right", async () => {
  const problemOf = async (given: Parameters<typeof computedReport>[1]) =>
    reportOf({ block: await computedReport(BOOK, given), listing: undefined, rolling: undefined, tables: new Map() });
  expect(await problemOf({ visit: null })).toEqual({ field: "visit", problem: "Choose the day of the visit." });
  expect(await problemOf({ since: null })).toEqual({ field: "since", problem: "Choose the day of the visit before." });
  expect(await problemOf({ since: VISIT })).toEqual({
    field: "since",
    problem: "The visit before must be earlier than 2026-09-01; got 2026-09-01.",
  });
});

test("writing ends, and says so, where the report is gone by the time another name is tried", async () => {
  const book = new MemoryBook(BOOK);
  const workbook = { port: new MemoryPort(), tables: userOf(book), today: () => VISIT };
  const pressed = nextReportState(initialReportState, { type: "write pressed" });
  const trying = nextReportState(pressed, { type: "name taken" });
  const report = { field: "since", problem: "Choose the day of the visit before." } as const;
  const event = await writeReport(workbook, { report, state: trying, computed: undefined, given: {} });
  expect(nextReportState(trying, event)).toMatchObject({
    writing: undefined,
    notice: { kind: "error", text: "Nothing was written. Choose the day of the visit before." },
  });
  expect(book.state.sheets.map(({ name }) => name)).toEqual(["Findings", "Cows"]);
});
