import { defaultRecheckRules } from "../../../src/core/claws/recheck-rules";
import { day, isoDate } from "../../../src/core/shared/days";
import { cowFacts } from "../../../src/herd/cow-facts";
import { type Herd, readHerd } from "../../../src/herd/herd";
import { inventedHerd } from "../../../src/samples/herd/invented-herd";
import { readBook } from "../../../src/taskpane/screens/due/book";
import { listingOf } from "../../../src/taskpane/screens/due/listing";
import type { PlainCell } from "../../../src/workbook/port";
import { inputColumns, type TableDefinition } from "../../../src/workbook/table-definition";
import type { TablePort } from "../../../src/workbook/table-port";
import { cowsTable, findingsTable, scoresTable } from "../../../src/workbook/tables";
import { book, sheet } from "../../unit/herd/plain-sheet";
import { openFarmBook, openSetUp } from "./own-book";

const AS_OF = day("2026-09-01");
const herd = inventedHerd(defaultRecheckRules);

function ourSheet(table: TableDefinition, rows: readonly Readonly<Record<string, PlainCell>>[]) {
  const columns = inputColumns(table);
  const days = columns.flatMap(({ holds }, column) => (holds === "day" ? [column] : []));
  const cells = rows.map((row) => columns.map(({ key }) => row[key] ?? null));
  return sheet(table.name, [columns.map(({ heading }) => heading), ...cells], { table: table.name, days });
}

function german(serial: PlainCell): PlainCell {
  return typeof serial === "number" ? isoDate(serial).split("-").reverse().join(".") : serial;
}

function inWords(words: Readonly<Record<string, string>>, value: PlainCell): PlainCell {
  return value === null ? null : (words[String(value)] ?? value);
}

const FEET = { LF: "VL", RF: "VR", LH: "HL", RH: "HR" };
const CLAWS = { inner: "innen", outer: "außen" };
const FROM = { "hard horn": "hartes Horn", "skin-horn line": "Kronsaum" };
const GROUPS = { dry: "trocken" };
const OUTCOMES = { healed: "geheilt", same: "gleich", gone: "abgegangen" };

/** The same herd in a book whose table and ranges have German headings, words and dates as text. */
const farm = book(
  sheet(
    "Bestand",
    [
      ["Kuh", "Geburt", "Lakt.", "Kalbung", "Trockenstellen", "Zugang", "Abgang", "Gruppe"],
      ...herd.cows.map((row): PlainCell[] => [row.cow, row.born, row.lactation, row.calved, row.dryOff, row.entered, row.left, inWords(GROUPS, row.group)]), // oxfmt-ignore
    ],
    { table: "Bestand", days: [1, 3, 4, 5, 6] },
  ),
  sheet("Klauen", [
    ["Kuh", "Datum", "Lakt.", "Melktag", "Bein", "Klaue", "Zone", "Befund", "Stadium", "Grad", "Klauenlänge (cm)", "gemessen ab", "Behandlung", "kontrolliert am", "Verlauf", "nächste Kontrolle", "erledigt am", "Bemerkung"], // oxfmt-ignore
    ...herd.findings.map((row): PlainCell[] => [
      row.cow, german(row.date), row.lactation, row.daysInMilk, inWords(FEET, row.foot), inWords(CLAWS, row.claw), row.zone, row.lesion, row.stage, row.severity,
      typeof row.toeMm === "number" ? row.toeMm / 10 : null, inWords(FROM, row.measuredFrom), row.treatment, german(row.seenAgain), inWords(OUTCOMES, row.outcome), german(row.nextLook), german(row.closedOn), row.note,
    ]), // oxfmt-ignore
  ]),
  sheet("Gang", [["Datum", "Kuh", "Gangnote"], ...herd.scores.map((row): PlainCell[] => [row.date, row.cow, row.score])], { days: [0] }), // oxfmt-ignore
);

const own = openFarmBook(book(ourSheet(cowsTable, herd.cows), ourSheet(findingsTable, herd.findings), ourSheet(scoresTable, herd.scores))); // oxfmt-ignore

let mapped: TablePort;
beforeAll(async () => {
  mapped = (await openSetUp(farm)).tables;
});

/** What Record shows of every cow on the day. */
function factsOf(read: Herd) {
  return read.cows.all.map((cow) => [cow.name, cowFacts(read, cow, cow.name, AS_OF, defaultRecheckRules)]);
}

test("Record knows the same of every cow", async () => {
  const [ours, theirs] = [await readHerd(own.tables), await readHerd(mapped)];
  expect(theirs.missing).toEqual([]);
  expect(factsOf(theirs)).toEqual(factsOf(ours));
  expect(theirs.cows.all.length).toBe(herd.cows.length);
});

test("Due lists the same work on the same days", async () => {
  const [ours, theirs] = [await readBook(own.tables), await readBook(mapped)];
  const [listed, expected] = [listingOf(theirs, AS_OF, 60), listingOf(ours, AS_OF, 60)];
  expect(expected.lines.length).toBeGreaterThan(10);
  expect(listed.lines).toEqual(expected.lines);
  expect(listed.remarks).toEqual(expected.remarks);
});
