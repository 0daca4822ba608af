import { Workbook } from "@cj-tech-master/excelts";
import { strFromU8, unzipSync } from "fflate";
import { LocaleService, LocaleType } from "@univerjs/core";
import { type OpenEngine, openEngine } from "../../../src/engine/open-engine";
import { readResults } from "../../../src/engine/results";
import { toSnapshot } from "../../../src/engine/snapshot";
import { savedFile } from "../../../src/trial/saved-file";
import { GridBookHost } from "../../../src/workbook/grid/book/host";
import { GridTableHost } from "../../../src/workbook/grid/tables/host";
import { type BookLog, memoryBookLog } from "../../../src/workbook/saving/book-log";
import { openBook } from "../../../src/workbook/saving/open-book";
import { openTables } from "../../../src/workbook/saving/open-tables";
import { memoryLog, type SaveLog } from "../../../src/workbook/saving/save-log";
import type { CellBlock } from "../../../src/workbook/table-port";
import { readWorkbook } from "../../../src/xlsx/read";
import { rawFileCell } from "../../workbook/contract/raw-file";
import { refusedAs } from "../../workbook/contract/start";

const engines: OpenEngine[] = [];
afterEach(async () => {
  for (const engine of engines.splice(0)) {
    await engine.settled();
    engine.close();
  }
}, 60_000);

/** A list whose first column is wider than usual. */
async function feet(): Promise<Uint8Array> {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Feet");
  sheet.getColumn(1).width = 20;
  sheet.getCell("A1").value = "Cow";
  sheet.getCell("A2").value = "007";
  sheet.getCell("B1").value = "Lesion";
  sheet.getCell("B2").value = "DD";
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as unknown as ArrayBuffer);
}

let opened = 0;

/** The file as the trial page has it open: whoever opens it later brings the same logs. */
async function open(bytes: Uint8Array, logs: { tables?: SaveLog; book?: BookLog } = {}, filtered: string[] = []) {
  const model = readWorkbook(bytes, []);
  opened += 1;
  const engine = openEngine(toSnapshot(model, { id: `saved-${opened}` }), []);
  engines.push(engine);
  const { workbook, injector, log } = engine;
  // What takes longer than a second tells of it in the words of a language.
  injector.get(LocaleService).load({ [LocaleType.EN_US]: {} });
  await engine.settled();
  const grid = {
    workbook,
    injector,
    protectedSheets: new Set<string>(),
    filteredSheets: new Set(filtered),
  };
  const [tables, book] = [new GridTableHost(), new GridBookHost()];
  tables.turnTo(grid);
  book.turnTo(grid);
  return {
    tables: openTables(tables, logs.tables),
    book: openBook(book, logs.book),
    save: async () => {
      await engine.settled();
      return savedFile({ bytes, model }, grid, readResults(workbook, injector, log), []);
    },
  };
}

const block: CellBlock = {
  id: "block",
  title: "Cows",
  sheet: "Cows",
  address: "B2",
  cells: [["=1+1", 5]],
  columnWidths: [30, 9],
};
const table = {
  id: "table",
  title: "Table Feet",
  sheet: "Feet",
  area: { firstRow: 0, firstColumn: 0, lastRow: 1, lastColumn: 1 },
  name: "Feet",
};

test("columns that a block made wider are saved so, and no others", async () => {
  const { tables, save } = await open(await feet());
  await tables.writeBlock(block);
  await tables.writeBlock({ ...block, id: "beside", sheet: "Feet", address: "D2" });
  const saved = await save();
  const { sheets } = readWorkbook(saved, []);
  const widths = sheets.map(({ columns }) =>
    columns.flatMap(({ first, last, width }) => (width === undefined ? [] : [[first, last, width]])),
  );
  expect(widths).toEqual([
    [
      [0, 0, 20],
      [3, 3, 30],
    ],
    [[1, 1, 30]],
  ]);
});

test("text that looks like a formula stays text when its cell is edited in the saved file", async () => {
  const { tables, save } = await open(await feet());
  await tables.writeBlock({ ...block, cells: [["=1+1", { value: "007", look: "label" }, "cows"]] });
  const saved = await save();
  const cells = ["B2", "C2", "D2"];
  const found = await Promise.all(cells.map((address) => rawFileCell(saved, "Cows", address)));
  expect(found.map(({ value, hasFormula }) => [value, hasFormula])).toEqual([
    ["=1+1", false],
    ["007", false],
    ["cows", false],
  ]);
  expect(found[1]?.look).toMatchObject({ colour: "#1D2B34" });
  expect(cells.map((address) => isMarkedText(saved, address))).toEqual([true, true, false]);
});

/** Whether the second sheet's cell has the mark of text that looks like something else. */
function isMarkedText(bytes: Uint8Array, address: string): boolean {
  const parts = unzipSync(bytes);
  const sheet = strFromU8(parts["xl/worksheets/sheet2.xml"]!);
  const style = Number(new RegExp(`<c r="${address}"[^>]* s="(\\d+)"`).exec(sheet)?.[1] ?? 0);
  const formats = /<cellXfs.*?<\/cellXfs>/s.exec(strFromU8(parts["xl/styles.xml"]!))?.[0] ?? "";
  return [...formats.matchAll(/<xf [^>]*>/g)][style]?.[0].includes('quotePrefix="1"') === true;
}

test("a sheet and a table that were in the opened file are not in it once they were taken back", async () => {
  const logs = { tables: memoryLog(), book: memoryBookLog() };
  const first = await open(await feet(), logs);
  await first.tables.writeBlock(block);
  await first.book.makeTable(table);
  const saved = await first.save();
  expect(readWorkbook(saved, []).sheets.map(({ name, tables }) => [name, tables.length])).toEqual([
    ["Feet", 1],
    ["Cows", 0],
  ]);
  const second = await open(saved, logs);
  await second.book.takeBack("table");
  await second.tables.takeBack("block");
  const again = await second.save();
  expect(readWorkbook(again, []).sheets.map(({ name, tables }) => [name, tables.length])).toEqual([["Feet", 0]]);
  expect((await rawFileCell(again, "Feet", "B2")).value).toBe("DD");
});

test("no table is made on a sheet that has a filter of its own in the file", async () => {
  const { book } = await open(await feet(), {}, ["Feet"]);
  expect(await refusedAs(book.makeTable(table), "filtered")).toMatch(/Feet has a filter/);
});
