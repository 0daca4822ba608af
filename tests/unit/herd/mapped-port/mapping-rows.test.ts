import { day } from "../../../../src/core/shared/days";
import { checkBook } from "../../../../src/herd/check/check-book";
import { mappedTables } from "../../../../src/herd/mapped-port/mapped-tables";
import { mappingTable } from "../../../../src/workbook/mapping-table";
import type { PlainCell } from "../../../../src/workbook/port";
import { rowAsRead } from "../../../../src/workbook/table-port";
import { openFarmBook } from "../../../workbook/mapped/own-book";
import { refusedAs } from "../../../workbook/contract/start";
import { book, sheet } from "../plain-sheet";

const FIRST = day("2026-06-01");
const walking = sheet("Walking", [["Day", "Tag", "Gait"], [FIRST, 101, 2], [FIRST, 102, 0]], { table: "Gaits", days: [0] }); // oxfmt-ignore
const feet = sheet("Feet", [["Visit", "Animal", "Found"], [FIRST, 101, "SU"], [FIRST, 102, "DD"]], { table: "Feet", days: [0] }); // oxfmt-ignore

const SCORES = [
  ["Scores", "Date", "Walking", "Gaits", "Day"],
  ["Scores", "Cow", "Walking", "Gaits", "Tag"],
  ["Scores", "Score", "Walking", "Gaits", "Gait"],
];
const FINDINGS = [
  ["Findings", "Date", "Feet", "Feet", "Visit"],
  ["Findings", "Cow", "Feet", "Feet", "Animal"],
  ["Findings", "Lesion", "Feet", "Feet", "Found"],
];

/** A Mapping sheet whose table begins in cell B3. */
function mapping(...rows: readonly (readonly PlainCell[])[]) {
  const headings = mappingTable.columns.map(({ heading }) => heading);
  const cells = [headings, ...rows].map((row) => [null, ...headings.map((_, place) => row[place] ?? null)]);
  const area = { firstRow: 2, firstColumn: 1, lastRow: 2 + rows.length, lastColumn: headings.length };
  return { ...sheet("Mapping", [["What is read"], [], ...cells]), tables: [{ name: "Mapping", area, calculated: [] }] };
}

const rowsOf = async (tables: ReturnType<typeof openFarmBook>["tables"], name: string) =>
  (await tables.readTable(name)).rows;

describe("a row of the Mapping table that is not understood", () => {
  test("with a known table keeps that table alone from being read, and is named by its cell", async () => {
    const { tables } = openFarmBook(book(walking, feet, mapping(...SCORES, ...FINDINGS, ["Scores", "Gait", "Walking", "Gaits", "X"]))); // oxfmt-ignore
    expect(await rowsOf(tables, "Findings")).toEqual([
      [FIRST, 101, "SU"],
      [FIRST, 102, "DD"],
    ]);
    const text = 'Mapping, C10: Value must be a heading of Scores; got "Gait".';
    expect(await refusedAs(tables.readTable("Scores"), "column-missing")).toBe(`${text} Open Set up to map it again.`);
    await tables.save({ id: "1", title: "", changes: [{ append: "Findings", rows: [{ Cow: 103, Lesion: "SU" }] }] });
    expect(await rowsOf(tables, "Findings")).toHaveLength(3);
  });

  test("keeps a table from being read of which every row is so, also where it is one of ours", async () => {
    const ours = sheet(
      "Scores",
      [
        ["Date", "Cow", "Score"],
        [FIRST, 101, 4],
      ],
      { table: "Scores", days: [0] },
    );
    const { tables } = openFarmBook(book(ours, feet, mapping(...FINDINGS, ["Scores", "Scor", "Scores", "Scores", "Score", null, null, "1-5"]))); // oxfmt-ignore
    expect((await tables.listTables()).map(({ name }) => name)).toContain("Scores");
    expect(await refusedAs(tables.readTable("Scores"), "column-missing")).toContain('got "Scor"');
    expect(await rowsOf(tables, "Findings")).toHaveLength(2);
  });

  test("with an unknown table concerns the lists of its sheet and source", async () => {
    const { tables } = openFarmBook(book(walking, feet, mapping(...SCORES, ...FINDINGS, ["Gaits", "Note", "walking", "gaits", "X"]))); // oxfmt-ignore
    expect(await refusedAs(tables.readTable("Scores"), "column-missing")).toContain(
      'Mapping, B10: Table must be Cows, Findings, Scores, Tests; got "Gaits".',
    );
    expect(await rowsOf(tables, "Findings")).toHaveLength(2);
  });

  test("that concerns no list blocks nothing, and the check tells of it", async () => {
    const farm = book(walking, feet, mapping(...SCORES, ...FINDINGS, ["Pens", "Cow", "Elsewhere", null, "X"]));
    const { tables } = openFarmBook(farm);
    expect(await rowsOf(tables, "Scores")).toHaveLength(2);
    expect(await rowsOf(tables, "Findings")).toHaveLength(2);
    expect(checkBook(farm, FIRST).remarks).toEqual([
      'Mapping, B10: Table must be Cows, Findings, Scores, Tests; got "Pens".',
    ]);
  });
});

describe("one row that gives our own table of scores its scale", () => {
  const ours = sheet("Scores", [["Date", "Cow", "Score", "Seen by"], [FIRST, 101, 4, "A"], [FIRST, 102, 1, null]], { table: "Scores", days: [0] }); // oxfmt-ignore
  const farm = book(ours, mapping(["Scores", "Score", "Scores", "Scores", "Score", null, null, "1-5"]));

  test("leaves its other columns as they are", async () => {
    const { tables } = openFarmBook(farm);
    const { columns, rows } = await tables.readTable("Scores");
    const read = rows.map((row) => Object.fromEntries(columns.map(({ heading }, at) => [heading, row[at]])));
    expect(read).toEqual([
      { Date: FIRST, Cow: 101, Score: 4, "Seen by": "A" },
      { Date: FIRST, Cow: 102, Score: 1, "Seen by": null },
    ]);
    const row = { Date: { day: FIRST + 1 }, Cow: 103, Score: 5 };
    await tables.save({ id: "1", title: "", changes: [{ append: "Scores", rows: [row] }] });
    expect((await tables.readTable("Scores")).rowCount).toBe(3);
  });

  test("is all that the check needs", () => {
    expect(checkBook(farm, FIRST)).toMatchObject({ doubts: [], remarks: [] });
  });
});

describe("two lists of findings, one a year", () => {
  const old = sheet("Old", [["Visit", "Animal", "Lact", "Found", "Zone no"], [FIRST - 300, 101, 2, "SU", 4]], { days: [0] }); // oxfmt-ignore
  const now = sheet(
    "Now",
    [
      ["Visit", "Animal", "Found", "Remarks"],
      [FIRST, 102, "DD", null],
    ],
    { days: [0] },
  );
  const rows = (name: string, values: Readonly<Record<string, string>>) =>
    Object.entries(values).map(([value, heading]) => ["Findings", value, name, null, heading]);
  const both = mapping(
    ...rows("Old", { Date: "Visit", Cow: "Animal", Lactation: "Lact", Lesion: "Found", Zone: "Zone no" }),
    ...rows("Now", { Date: "Visit", Cow: "Animal", Lesion: "Found", Note: "Remarks" }),
  );

  test("say which columns new rows can fill: those of the list that grows", async () => {
    const { columns } = await openFarmBook(book(old, now, both)).tables.readTable("Findings");
    expect(columns.filter(({ oldRowsOnly }) => oldRowsOnly !== true).map(({ heading }) => heading)).toEqual([
      "Date",
      "Cow",
      "Lesion",
      "Note",
    ]);
    expect(columns.filter(({ oldRowsOnly }) => oldRowsOnly === true).map(({ heading }) => heading)).toEqual([
      "Lactation",
      "Zone",
    ]);
  });

  test("name the cell of the sheet that someone changed", async () => {
    const { tables, book: cells } = openFarmBook(book(old, now, both));
    const read = await tables.readTable("Findings");
    await cells.changeCells({ id: "x", title: "", cells: [{ sheet: "Now", address: "C2", was: "DD", set: "dd" }] });
    const save = { id: "1", title: "", changes: [{ update: rowAsRead(read, 1), set: { Note: "better" } }] };
    expect(await refusedAs(tables.save(save), "changed")).toBe(
      'Someone changed the sheet Now meanwhile: cell C2, column "Found", held "DD" and now holds "dd". Nothing was written.',
    );
  });
});

test("what is asked for at once is read once", async () => {
  const { raw, book: cells } = openFarmBook(book(walking, feet, mapping(...SCORES, ...FINDINGS)));
  const read: string[] = [];
  const counting = { ...raw, readTable: (name: string) => (read.push(name), raw.readTable(name)) };
  const tables = mappedTables(counting, cells);
  await Promise.all([tables.listTables(), tables.readTable("Scores"), tables.readTable("Findings")]);
  expect(read.filter((name) => name !== "Mapping").sort()).toEqual(["Feet", "Gaits"]);
  await raw.save({ id: "1", title: "", changes: [{ append: "Gaits", rows: [{ Day: { day: FIRST }, Tag: 103, Gait: 1 }] }] }); // oxfmt-ignore
  expect((await tables.readTable("Scores")).rowCount).toBe(3);
});
