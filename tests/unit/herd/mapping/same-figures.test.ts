import { herdDoublings } from "../../../../src/core/cells/herd-doublings";
import { defaultRecheckRules } from "../../../../src/core/claws/recheck-rules";
import { isoDate } from "../../../../src/core/shared/days";
import { LesionWords } from "../../../../src/herd/codes/words";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import { readMapped } from "../../../../src/herd/mapping/read-mapped";
import { resolveMapping } from "../../../../src/herd/mapping/resolve";
import { readHerdTable } from "../../../../src/herd/read-rows";
import { inventedHerd } from "../../../../src/samples/herd/invented-herd";
import type { PlainCell } from "../../../../src/workbook/port";
import { inputColumns, type TableDefinition } from "../../../../src/workbook/table-definition";
import type { TableContent } from "../../../../src/workbook/table-port";
import { findingsTable, testsTable } from "../../../../src/workbook/tables";
import { book, sheet } from "../plain-sheet";

const herd = inventedHerd(defaultRecheckRules);

function inOurTable(table: TableDefinition, rows: readonly Readonly<Record<string, PlainCell>>[]): TableContent {
  const columns = inputColumns(table);
  return {
    name: table.name,
    sheet: table.name,
    columns: columns.map(({ heading }) => ({ heading, calculated: false })),
    rowCount: rows.length,
    rows: rows.map((row) => columns.map(({ key }) => row[key] ?? null)),
  };
}

function german(day: PlainCell): PlainCell {
  return typeof day === "number" ? isoDate(day).split("-").reverse().join(".") : day;
}

const FEET: Readonly<Record<string, string>> = { LF: "VL", RF: "VR", LH: "HL", RH: "HR" };

const feet = sheet("Klauen", [
  ["Kuh", "Datum", "Lakt.", "Melktag", "Bein", "Klaue", "Zone", "Befund", "Stadium", "Grad", "Klauenlänge (cm)", "gemessen ab", "Behandlung", "kontrolliert am", "Verlauf", "nächste Kontrolle", "erledigt am", "Bemerkung"], // oxfmt-ignore
  ...herd.findings.map((row): PlainCell[] => [
    row.cow,
    german(row.date),
    row.lactation,
    row.daysInMilk,
    row.foot === null ? null : FEET[row.foot]!,
    row.claw === null ? null : row.claw === "inner" ? "innen" : "außen",
    row.zone,
    row.lesion,
    row.stage,
    row.severity,
    typeof row.toeMm === "number" ? row.toeMm / 10 : null,
    row.measuredFrom === null ? null : row.measuredFrom === "hard horn" ? "hartes Horn" : "Kronsaum",
    row.treatment,
    german(row.seenAgain),
    row.outcome === null ? null : { healed: "geheilt", same: "gleich", gone: "abgegangen" }[row.outcome]!,
    german(row.nextLook),
    german(row.closedOn),
    row.note,
  ]),
]);

const milk = sheet("MLP", [
  ["Kuh", "Prüfdatum", "Lakt.", "Melktag", "Mkg", "Zellen je ml"],
  ...herd.tests.map((row): PlainCell[] => [
    row.cow,
    german(row.date),
    row.lactation,
    row.daysInMilk,
    row.milkKg,
    typeof row.count === "number" ? row.count * 1000 : row.count,
  ]),
]);

const farm = book(feet, milk);
const mapped = resolveMapping(guessBook(farm), farm).sources.map((source) => readMapped(source, new LesionWords()));

test("the findings of a mapped book are those of our own table, row by row", () => {
  const own = readHerdTable(findingsTable, inOurTable(findingsTable, herd.findings));
  const theirs = readHerdTable(findingsTable, mapped.find(({ content }) => content.name === "Findings")!.content);
  expect(theirs.rows).toEqual(own.rows);
  expect(theirs.doubtful).toEqual(own.doubtful);
});

test("the milk tests of a mapped book are those of our own table, and so are the doublings behind every loss", () => {
  const own = readHerdTable(testsTable, inOurTable(testsTable, herd.tests));
  const theirs = readHerdTable(testsTable, mapped.find(({ content }) => content.name === "Tests")!.content);
  expect(theirs.rows).toEqual(own.rows);
  const doublings = ({ rows }: typeof own) =>
    herdDoublings(
      rows.map(({ count }) => count ?? NaN),
      rows.map(({ lactation }) => lactation ?? NaN),
    );
  expect(doublings(theirs)).toEqual(doublings(own));
  expect(doublings(own).first.cows).toBeGreaterThan(100);
});
