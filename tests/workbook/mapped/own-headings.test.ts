import { day } from "../../../src/core/shared/days";
import { rowAsRead, type Save, type TableContent } from "../../../src/workbook/table-port";
import { cellAt, type PlainBook } from "../../../src/workbook/plain-book";
import { cellPosition } from "../../../src/workbook/cell-address";
import { refusedAs } from "../contract/start";
import { type OpenFarmBook, openSetUp, sampleBook } from "./own-book";

const own = sampleBook("own-headings.xlsx");
const FEET = "Feet 2026";

let open: OpenFarmBook;
let findings: TableContent;
beforeEach(async () => {
  open = await openSetUp(own);
  findings = await open.tables.readTable("Findings");
});

let saves = 0;
function saveOf(...changes: Save["changes"]): Save {
  saves += 1;
  return { id: `save ${saves}`, title: `Save ${saves}`, changes };
}

/** Cells of a row of the sheet of feet, from column A on. */
async function feetRow(row: number) {
  const sheet = await open.book.readSheet(FEET);
  return Array.from({ length: 13 }, (_, column) => cellAt(sheet, row, column));
}

/** What stands in the cells of a book; blanks at the end of rows and sheets do not count. */
function cellsOf({ sheets }: PlainBook) {
  const trimmed = <T>(list: readonly T[], isBlank: (item: T) => boolean): readonly T[] => {
    let length = list.length;
    while (length > 0 && isBlank(list[length - 1]!)) length--;
    return list.slice(0, length);
  };
  return sheets.map(({ name, rows }) => [
    name,
    trimmed(
      rows.map((row) => trimmed(row, (cell) => cell === null)),
      (row) => row.length === 0,
    ),
  ]);
}

const HEADINGS_AT = cellPosition("A6").row;

test("its lists are listed and read as ours", async () => {
  const infos = await open.tables.listTables();
  expect(infos.map(({ name, sheet }) => [name, sheet])).toEqual([
    ["Cows", "Herd"],
    ["Mapping", "Mapping"],
    ["Words", "Words"],
    ["Findings", FEET],
    ["Scores", "Walking"],
    ["Tests", "Milk recording"],
  ]);
  expect(findings.columns.map(({ heading }) => heading)).toEqual([
    "Date", "Cow", "Foot", "Claw", "Lesion", "Stage", "Toe mm", "Measured from", "Treatment", "Next look", "Note", "Drug", "Withdrawal",
  ]); // oxfmt-ignore
});

test("a finding is written below the list in the farm's words, units and dates, and taken back", async () => {
  const last = HEADINGS_AT + findings.rowCount;
  const before = await open.book.readBook();
  const save = saveOf({
    append: "Findings",
    rows: [
      { Date: { day: day("2026-09-02") }, Cow: 12, Foot: "LH", Claw: "outer", Lesion: "SU", "Toe mm": 82, "Measured from": "skin-horn line", Treatment: "trim, block", "Next look": { day: day("2026-09-30") }, Note: "=quiet cow" }, // oxfmt-ignore
      { Date: { day: day("2026-09-12") }, Cow: 15, Foot: "RF", Claw: "inner", Lesion: "DD" },
      { Date: { day: day("2026-09-12") }, Cow: 18, Lesion: "none" },
    ],
  });
  await open.tables.save(save);
  expect(await feetRow(last + 1)).toEqual(["02/09/2026", 12, "left back", "outside", "sole ulcer", null, 8.2, "hairline", "trim, block", day("2026-09-30"), null, null, "=quiet cow"]); // oxfmt-ignore
  // No front foot stands in the list, and two words for digital dermatitis do: the codes are written.
  expect((await feetRow(last + 2)).slice(0, 5)).toEqual(["12/09/2026", 15, "RF", "inside", "DD"]);
  expect((await feetRow(last + 3)).slice(0, 5)).toEqual(["12/09/2026", 18, null, null, "clean"]);
  const read = await open.tables.readTable("Findings");
  expect(read.rowCount).toBe(findings.rowCount + 3);
  expect(read.rows.at(-3)!.slice(0, 9)).toEqual([day("2026-09-02"), 12, "LH", "outer", "SU", null, 82, "skin-horn line", "trim, block"]); // oxfmt-ignore
  expect(open.tables.pastSaves()).toEqual([{ id: save.id, title: save.title }]);
  await open.tables.save(save);
  expect((await open.tables.readTable("Findings")).rowCount).toBe(findings.rowCount + 3);
  await open.tables.takeBack(save.id);
  expect(cellsOf(await open.book.readBook())).toEqual(cellsOf(before));
  expect((await open.tables.readTable("Findings")).rows).toEqual(findings.rows);
  expect(open.tables.pastSaves()).toEqual([]);
});

test("an outcome is written into the row that was read; a row that someone changed meanwhile is refused", async () => {
  const index = findings.rows.findIndex((row) => row[4] === "DD");
  const row = rowAsRead(findings, index);
  await open.tables.save(saveOf({ update: row, set: { "Next look": { day: day("2026-10-01") }, Note: "better" } }));
  const cells = await feetRow(HEADINGS_AT + 1 + index);
  expect([cells[9], cells[12]]).toEqual([day("2026-10-01"), "better"]);
  expect(await refusedAs(open.tables.save(saveOf({ update: row, set: { Note: "again" } })), "changed")).toMatch(
    /Findings.*"Next look"/,
  );
});

test("a word that someone changed for another of the same meaning is a change too", async () => {
  const index = findings.rows.findIndex((row) => row[4] === "DD");
  const word = (await feetRow(HEADINGS_AT + 1 + index))[4]!;
  const other = word === "digi" ? "hairy wart" : "digi";
  await open.book.changeCells({ id: "other", title: "", cells: [{ sheet: FEET, address: `E${HEADINGS_AT + 2 + index}`, was: word, set: other }] }); // oxfmt-ignore
  const save = saveOf({ update: rowAsRead(findings, index), set: { Note: "better" } });
  expect(await refusedAs(open.tables.save(save), "changed")).toMatch(/What found.*(digi|hairy wart)/);
});

test("what the farm has no column for is refused before anything is written, and a blank is not", async () => {
  const before = await open.book.readBook();
  const row = { Date: { day: day("2026-09-02") }, Cow: 12, Lesion: "SU" };
  const message = await refusedAs(
    open.tables.save(saveOf({ append: "Scores", rows: [{ Date: { day: day("2026-09-02") }, Cow: 12, Score: 2 }] }, { append: "Findings", rows: [{ ...row, Zone: 4 }] })), // oxfmt-ignore
    "column-missing",
  );
  expect(message).toMatch(/Feet 2026.*Zone/);
  expect(cellsOf(await open.book.readBook())).toEqual(cellsOf(before));
  await open.tables.save(saveOf({ append: "Findings", rows: [{ ...row, Zone: null }] }));
});

test("a save into a table and a plain range is whole, or not there, and is taken back whole", async () => {
  const before = await open.book.readBook();
  const cows = await open.tables.readTable("Cows");
  const at = cows.columns.findIndex(({ heading }) => heading === "Left");
  const cow = cows.rows.findIndex((row) => row[at] === null);
  const gone = { update: rowAsRead(cows, cow), set: { Left: { day: day("2026-09-02") } } };
  const seen = { update: rowAsRead(findings, 3), set: { "Next look": null, Note: "gone" } };
  const save = saveOf(gone, seen);
  await open.tables.save(save);
  expect((await open.tables.readTable("Cows")).rows[cow]![at]).toBe(day("2026-09-02"));
  expect((await open.tables.readTable("Findings")).rows[3]![10]).toBe("gone");
  expect(open.tables.pastSaves()).toEqual([{ id: save.id, title: save.title }]);
  await open.tables.takeBack(save.id);
  expect(cellsOf(await open.book.readBook())).toEqual(cellsOf(before));

  const late = { update: { ...rowAsRead(findings, 3), cells: { ...rowAsRead(findings, 3).cells, Note: "other" } }, set: { Note: "x" } }; // oxfmt-ignore
  await refusedAs(open.tables.save(saveOf(gone, late)), "changed");
  expect(cellsOf(await open.book.readBook())).toEqual(cellsOf(before));
});

test("whichever step fails, a save over both is whole or not there, and saving again ends it", async () => {
  const cows = await open.tables.readTable("Cows");
  const changes = [
    { update: rowAsRead(cows, 5), set: { Group: "dry" } },
    { append: "Scores", rows: [{ Date: { day: day("2026-09-02") }, Cow: 12, Score: 2 }] },
  ];
  for (let after = 0; after < 12; after += 2) {
    const trial = await openSetUp(own);
    await trial.tables.readTable("Cows");
    const before = await trial.book.readBook();
    let step = 0;
    trial.memory.beforeStep = async () => {
      if (step++ === after) throw new Error("the host broke off");
    };
    const save = saveOf(...changes);
    const outcome = await trial.tables.save(save).then(
      () => "saved",
      (error: { kind: string }) => error.kind,
    );
    trial.memory.beforeStep = () => Promise.resolve();
    if (outcome === "failed") expect(cellsOf(await trial.book.readBook())).toEqual(cellsOf(before));
    if (outcome !== "saved") await trial.tables.save(save);
    const [written, scores] = [await trial.tables.readTable("Cows"), await trial.tables.readTable("Scores")];
    expect([after, outcome, written.rows[5]!.at(-1), scores.rows.at(-1)]).toEqual([after, outcome, "dry", [day("2026-09-02"), 12, 2]]); // oxfmt-ignore
    expect(scores.rowCount).toBe((await open.tables.readTable("Scores")).rowCount + 1);
  }
});

test("two who save at once below the same plain range both find their row", async () => {
  const other = (await import("../../../src/herd/mapped-port/mapped-tables")).mappedTables(open.raw, open.book);
  const row = (cow: number) => ({ append: "Scores", rows: [{ Date: { day: day("2026-09-02") }, Cow: cow, Score: 1 }] });
  await Promise.all([open.tables.save(saveOf(row(501))), other.save(saveOf(row(502))), open.tables.save(saveOf(row(503)))]); // oxfmt-ignore
  const { rows } = await open.tables.readTable("Scores");
  expect(
    rows
      .slice(-3)
      .map((cells) => cells[1])
      .sort(),
  ).toEqual([501, 502, 503]);
});

test("a column that is gone is said with its sentence; other tables go on", async () => {
  await open.book.changeCells({ id: "other", title: "", cells: [{ sheet: FEET, address: `E${HEADINGS_AT + 1}`, was: "What found", set: "Butterfat" }] }); // oxfmt-ignore
  expect(await refusedAs(open.tables.readTable("Findings"), "column-missing")).toMatch(/Findings, Lesion: no heading of the sheet Feet 2026 is "What found" any more/); // oxfmt-ignore
  expect((await open.tables.listTables()).map(({ name }) => name)).toContain("Findings");
  expect((await open.tables.readTable("Scores")).rowCount).toBeGreaterThan(0);
});

test("a totals row at the end of a plain range keeps new rows from going below it", async () => {
  const sheets = own.sheets.map((sheet) => {
    if (sheet.name !== "Walking") return sheet;
    const row = sheet.rows.length;
    return { ...sheet, rows: [...sheet.rows, ["Total", null, 12]], formulas: [{ firstRow: row, lastRow: row, firstColumn: 2, lastColumn: 2 }] }; // oxfmt-ignore
  });
  const totals = await openSetUp({ sheets });
  const save = saveOf({ append: "Scores", rows: [{ Date: { day: day("2026-09-02") }, Cow: 12, Score: 2 }] });
  expect(await refusedAs(totals.tables.save(save), "full")).toMatch(/Walking.*formula/);
});

test("changes of a mapped table are told under our names", async () => {
  const told: (string | undefined)[] = [];
  await open.tables.listTables();
  const unwatch = open.tables.watchChanges(({ table }) => told.push(table));
  await open.tables.save(saveOf({ append: "Scores", rows: [{ Date: { day: day("2026-09-02") }, Cow: 12, Score: 2 }] }));
  expect(told).toContain("Scores");
  const cows = await open.raw.readTable("HerdList");
  await open.raw.save(saveOf({ update: rowAsRead(cows, 0), set: { Pen: "dry" } }));
  expect(told).toContain("Cows");
  expect(told).not.toContain("HerdList");
  unwatch();
});

test("a workbook without a mapping passes through as it is", async () => {
  const { raw, tables } = await import("./own-book").then(({ openFarmBook }) => openFarmBook(own));
  expect(await tables.listTables()).toEqual(await raw.listTables());
  expect(await tables.readTable("HerdList")).toEqual(await raw.readTable("HerdList"));
});
