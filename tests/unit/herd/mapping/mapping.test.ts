import { day } from "../../../../src/core/shared/days";
import { LesionWords } from "../../../../src/herd/codes/words";
import { guessBook } from "../../../../src/herd/mapping/guess-book";
import type { Mapping } from "../../../../src/herd/mapping/mapping";
import { readMapped } from "../../../../src/herd/mapping/read-mapped";
import { resolveMapping } from "../../../../src/herd/mapping/resolve";
import { mappingRows, readMapping } from "../../../../src/herd/mapping/store";
import { readHerdTable } from "../../../../src/herd/read-rows";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import type { PlainCell } from "../../../../src/workbook/port";
import type { TableContent } from "../../../../src/workbook/table-port";
import { rowSchema } from "../../../../src/workbook/table-rows";
import { findingsTable } from "../../../../src/workbook/tables";
import { book, type Rows, sheet } from "../plain-sheet";

const HEADINGS = ["Kuh", "Datum", "Bein", "Befund", "Länge (cm)", "Behandlung"];
const ROWS: Rows = [
  [12, "03.04.2026", "HL", "Mortellaro", 8.2, "Verband"],
  [14, "13.04.2026", "HR", "Limax", 7.9, "Klotz"],
  [15, "14.04.2026", "VL", "DD", null, "Salbe"],
  [19, "15.04.2026", "hinten rechts", "Mortellaro", 8.5, null],
  [21, "16.04.2026", "HL", "o.B.", 7.7, "geschnitten"],
];

const german = book(sheet("Klauen", [HEADINGS, ...ROWS], { table: "tblKlauen" }));

function mappingOf(): Mapping {
  const { sources } = guessBook(german);
  return { sources: sources.map((source) => ({ ...source, landmark: "hard horn" })) };
}

function tableOf(rows: readonly Readonly<Record<string, unknown>>[]): TableContent {
  const columns = mappingTable.columns.map(({ heading }) => ({ heading, calculated: false }));
  const cells = rows.map((row) => mappingTable.columns.map(({ key }) => (row[key] ?? null) as PlainCell));
  return { name: "Mapping", sheet: "Mapping", columns, rowCount: cells.length, rows: cells };
}

function stored(): Mapping {
  const { mapping, problems } = readMapping(tableOf(mappingRows(mappingOf())));
  expect(problems).toEqual([]);
  return mapping;
}

const words = new LesionWords({
  name: "Words",
  sheet: "Words",
  columns: [
    { heading: "Word", calculated: false },
    { heading: "Code", calculated: false },
  ],
  rowCount: 3,
  rows: [
    ["mortellaro", "DD"],
    ["Limax", "IH"],
    ["o.B.", "none"],
  ],
});

describe("the Mapping table", () => {
  test("takes every row that is written, and gives the mapping back", () => {
    const schema = rowSchema(mappingTable);
    for (const row of mappingRows(mappingOf())) expect(schema.parse(row)).toEqual(row);
    expect(stored()).toEqual({
      sources: [
        {
          table: "Findings",
          sheet: "Klauen",
          source: "tblKlauen",
          headingRow: 0,
          landmark: "hard horn",
          columns: [
            { key: "cow", heading: "Kuh", column: 0 },
            { key: "date", heading: "Datum", column: 1, unit: "day first" },
            { key: "foot", heading: "Bein", column: 2 },
            { key: "lesion", heading: "Befund", column: 3 },
            { key: "toeMm", heading: "Länge (cm)", column: 4, unit: "cm" },
            { key: "treatment", heading: "Behandlung", column: 5 },
          ],
        },
      ],
    });
  });

  test.each([
    [{ table: "Feet", value: "Cow", sheet: "A", heading: "Kuh" }, /^Mapping, A2: Table must be Cows, Findings, Scores, Tests; got "Feet"/], // oxfmt-ignore
    [
      { table: "Findings", value: "Horn", sheet: "A", heading: "Kuh" },
      /Value must be a heading of Findings; got "Horn"/,
    ],
    [{ table: "Findings", value: "Cow", sheet: null, heading: "Kuh" }, /Sheet is blank/],
    [
      { table: "Findings", value: "Toe mm", sheet: "A", heading: "T", unit: "feet" },
      /Unit must be mm, cm, inches; got "feet"/,
    ],
    [{ table: "Findings", value: "Lesion", sheet: "A", heading: null }, /Heading and Column are blank/],
    [{ table: "Findings", value: "Measured from", sheet: "A", heading: null, unit: "cm" }, /Unit must be hard horn or skin-horn line/], // oxfmt-ignore
  ])("names a row that it does not understand: %j", (row, problem) => {
    const { mapping, problems } = readMapping(tableOf([row]));
    expect(problems.map(({ text }) => text)).toEqual([expect.stringMatching(problem)]);
    expect(mapping.sources.flatMap(({ columns }) => columns)).toEqual([]);
  });
});

describe("a mapped list", () => {
  test("is read in our terms, row by row", () => {
    const [source] = resolveMapping(stored(), german).sources;
    const { definition, content } = readMapped(source!, words);
    const { rows, doubtful } = readHerdTable(findingsTable, content);
    expect(definition).toBe(findingsTable);
    expect(doubtful).toEqual([]);
    expect(rows.map(({ cow, date, foot, lesion, toeMm, measuredFrom }) => [cow, date, foot, lesion, toeMm, measuredFrom])).toEqual([
      ["12", day("2026-04-03"), "LH", "DD", 82, "hard horn"],
      ["14", day("2026-04-13"), "RH", "IH", 79, "hard horn"],
      ["15", day("2026-04-14"), "LF", "DD", null, null],
      ["19", day("2026-04-15"), "RH", "DD", 85, "hard horn"],
      ["21", day("2026-04-16"), "LH", "none", 77, "hard horn"],
    ]); // oxfmt-ignore
  });

  test("leads from a value to the cell that it comes from", () => {
    const mapped = readMapped(resolveMapping(stored(), german).sources[0]!, words);
    expect([mapped.address("toeMm", 3), mapped.cell("toeMm", 3)]).toEqual(["E5", 8.5]);
    expect([mapped.address("date", 0), mapped.cell("date", 0)]).toEqual(["B2", "03.04.2026"]);
  });
});

describe("when the workbook has changed", () => {
  const changed = (headings: readonly PlainCell[], rows: Rows, name = "Klauen", table = "tblKlauen") => {
    const { sources, notes, broken } = resolveMapping(stored(), book(sheet(name, [headings, ...rows], { table })));
    const columns = Object.fromEntries(
      sources.flatMap(({ source }) => source.columns.map(({ key, column }) => [key, column])),
    );
    return { columns, notes, broken };
  };

  test("columns that moved are found again", () => {
    const moved = (cells: readonly PlainCell[]): PlainCell[] => [...cells].reverse();
    expect(changed(moved(HEADINGS), ROWS.map(moved))).toEqual({
      columns: { cow: 5, date: 4, foot: 3, lesion: 2, toeMm: 1, treatment: 0 },
      notes: [],
      broken: [],
    });
  });

  test("a heading that was renamed in its place is found and said", () => {
    const renamed = HEADINGS.map((heading) => (heading === "Befund" ? "Was war los" : heading));
    expect(changed(renamed, ROWS)).toMatchObject({
      columns: { lesion: 3 },
      notes: ['Findings, Lesion: the heading "Befund" is now "Was war los".'],
      broken: [],
    });
  });

  test("a column that holds something else now is broken and said", () => {
    const headings = HEADINGS.map((heading) => (heading === "Befund" ? "Preis" : heading));
    const rows = ROWS.map((cells) => cells.map((cell, column) => (column === 3 ? 12.5 : cell)));
    expect(changed(headings, rows)).toMatchObject({
      notes: [],
      broken: ['Findings, Lesion: no heading of the table tblKlauen is "Befund" any more; map it again.'],
    });
  });

  test("a column that was taken out is broken and said", () => {
    const without = (cells: readonly PlainCell[]): PlainCell[] => cells.filter((_, column) => column !== 3);
    expect(changed(without(HEADINGS), ROWS.map(without)).broken).toEqual([
      'Findings, Lesion: no heading of the table tblKlauen is "Befund" any more; map it again.',
    ]);
  });

  test("a renamed sheet and table are found by their headings", () => {
    expect(changed(HEADINGS, ROWS, "Klauenpflege", "Tabelle7")).toMatchObject({
      columns: { cow: 0, lesion: 3 },
      notes: ["Findings: the sheet Klauen is now Klauenpflege.", "Findings: the table tblKlauen is now Tabelle7."],
      broken: [],
    });
  });

  test("a list that is gone is broken and said", () => {
    expect(
      resolveMapping(
        stored(),
        book(
          sheet("Felder", [
            ["Feld", "Hektar"],
            ["A", 2],
            ["B", 3],
          ]),
        ),
      ),
    ).toMatchObject({
      sources: [],
      broken: ["Findings: the table tblKlauen is not there any more, or its headings are all others."],
    });
  });

  test("two columns of the same name are told apart by their place only", () => {
    const headings = [...HEADINGS, "Befund"];
    const rows = ROWS.map((cells) => [...cells, "anders"]);
    expect(changed(headings, rows)).toMatchObject({ columns: { lesion: 3 }, broken: [] });
    const moved = ["Neu", ...headings];
    expect(
      changed(
        moved,
        rows.map((cells) => [null, ...cells]),
      ).broken,
    ).toEqual(['Findings, Lesion: 2 columns of the table tblKlauen are called "Befund"; say which one.']);
  });
});
