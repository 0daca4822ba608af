import { readHerdTables } from "../../../../src/taskpane/parts/live-blocks/read-herd-tables";
import { listingOf } from "../../../../src/taskpane/screens/due/listing";
import { noneNamed, type Report, reportOf } from "../../../../src/taskpane/screens/report/report";
import type { ThingFacts } from "../../../../src/taskpane/screens/report/things";
import { linesThatFit, nothingDue, nothingStandsOut } from "../../../../src/taskpane/screens/report/untold";
import { writtenWords } from "../../../../src/taskpane/screens/report/written";
import { MemoryBook, type MemoryTable } from "../../../../src/workbook/memory/book";
import type { TableContent } from "../../../../src/workbook/table-port";
import { table, userOf } from "../due/small-book";
import { computedReport, findingsOf, tenCows, VISIT } from "./computed";

const NAMES = ["Findings", "Cows", "Scores", "Tests"] as const;

async function reportOn(tables: readonly MemoryTable[]): Promise<Report> {
  const herd = await readHerdTables(userOf(new MemoryBook(tables)), NAMES, VISIT);
  const [findings, cows, scores] = NAMES.map((name) => herd.tables.get(name));
  const book = { findings, cows, scores, rules: undefined, trimRules: undefined, scale: herd.scale };
  const block = await computedReport(tables, {}, NAMES);
  return reportOf({ block, listing: listingOf(book, VISIT, 7), rolling: undefined, tables: herd.tables }) as Report;
}

test.each<[string, readonly MemoryTable[]]>([
  ["no tables", []],
  ["empty tables", [findingsOf([]), table("Tests", ["Date", "Cow", "Count"], [])]],
])("%s: what is not known is not told as nothing", async (_, tables) => {
  const report = await reportOn(tables);
  expect(report.things).toEqual([]);
  const things =
    "What stands out cannot be told: the workbook has no findings, no cows, no mobility scores and no milk tests.";
  const due = "What is due cannot be told: the workbook has no findings, no cows and no mobility scores.";
  expect([noneNamed(report), report.nothingDue]).toEqual([things, due]);
  const words = writtenWords(report, [], { heading: "", notes: "" });
  expect(words).toContainEqual([things]);
  expect(words).toContainEqual([due]);
});

const content = (name: string, rowCount: number): [string, TableContent] => [
  name,
  { name, sheet: name, columns: [], rowCount, rows: [] },
];

test("what the workbook does not tell is named beside what it tells", () => {
  const told = new Map(NAMES.map((name) => content(name, 1)));
  const some = new Map([content("Cows", 10), content("Scores", 0)]);
  expect(nothingDue(told)).toBe("Nothing is due.");
  expect(nothingDue(some)).toBe(
    "Nothing is due, as far as the workbook tells: it has no findings and no mobility scores.",
  );
  const facts: ThingFacts = { day: VISIT, due: [], lesions: [], causes: [], rolling: 150, top: undefined, examined: 1 };
  expect(nothingStandsOut(facts, told)).toBe(
    "Nothing stands out in what the workbook tells. It does not tell: lesions.",
  );
  const all = {
    code: "all",
    newCases: 1,
    rate: 1,
    low: 0,
    high: 5,
    against: "",
    target: undefined,
    verdict: undefined,
  };
  expect(nothingStandsOut({ ...facts, lesions: [all] }, told)).toBe("Nothing stands out.");
  const nothing = { ...facts, due: undefined, rolling: undefined, examined: undefined };
  expect(nothingStandsOut(nothing, told)).toBe("What stands out cannot be told: see below what is not in the report.");
});

test("things that were all taken out are not told as nothing", async () => {
  const report = await reportOn([tenCows, findingsOf([[VISIT - 10, 1, null, "none"]])]);
  // One cow of ten examined: there is something to look at.
  expect(report.things.map(({ id }) => id)).toContain("examined");
  expect(noneNamed(report)).toBe("None named.");
});

test("what does not fit on paper is counted", () => {
  const texts = ["a", "b", "c", "d"];
  expect(linesThatFit(texts, 4)).toEqual(texts);
  expect(linesThatFit(texts, 3)).toEqual(["a", "b", "and 2 more, in the pane."]);
});
