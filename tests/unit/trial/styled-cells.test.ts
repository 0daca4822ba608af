import { Workbook } from "@cj-tech-master/excelts";
import { LocaleService, LocaleType } from "@univerjs/core";
import { unzipSync } from "fflate";
import { type OpenEngine, openEngine } from "../../../src/engine/open-engine";
import { toSnapshot } from "../../../src/engine/snapshot";
import { styledCells } from "../../../src/trial/styled-cells";
import { GridBookHost } from "../../../src/workbook/grid/book/host";
import { GridTableHost } from "../../../src/workbook/grid/tables/host";
import { openBook } from "../../../src/workbook/saving/open-book";
import { openTables } from "../../../src/workbook/saving/open-tables";
import { changeFile } from "../../../src/xlsx/change-package";
import { markCells } from "../../../src/xlsx/edit/mark-cells";
import { readWorkbook } from "../../../src/xlsx/read";
import { rawFileCell } from "../../workbook/contract/raw-file";

let engine: OpenEngine;
afterEach(async () => {
  await engine.settled();
  engine.close();
}, 60_000);

/** A list whose first date is text in a cell with a look of its own. */
async function textDates(): Promise<Uint8Array> {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Feet");
  const cell = sheet.getCell("A1");
  cell.value = "02/03/2024";
  cell.font = { bold: true, size: 14 };
  sheet.getCell("B1").value = 7;
  sheet.getCell("B2").value = { formula: "B1*2", result: 14 };
  return new Uint8Array((await workbook.xlsx.writeBuffer()) as unknown as ArrayBuffer);
}

async function opened() {
  const bytes = await textDates();
  const model = readWorkbook(bytes, []);
  engine = openEngine(toSnapshot(model, { id: "styled" }), []);
  const { workbook, injector } = engine;
  // What takes longer than a second tells of it in the words of a language.
  injector.get(LocaleService).load({ [LocaleType.EN_US]: {} });
  const grid = { workbook, injector, protectedSheets: new Set<string>() };
  const saved = (): Uint8Array => changeFile(bytes, (file) => markCells(file, styledCells(workbook, model)));
  return { bytes, grid, saved };
}

test("a text date that became a day is saved as a date and keeps the look of its cell", async () => {
  const { grid, saved } = await opened();
  const host = new GridBookHost();
  host.turnTo(grid);
  // 2024-03-02.
  const cells = [{ sheet: "Feet", address: "A1", was: "02/03/2024", set: { day: 45_353 } }];
  await openBook(host).changeCells({ id: "days", title: "1 date", cells });
  const cell = await rawFileCell(saved(), "Feet", "A1");
  expect(cell.numberFormat).toBe("yyyy-mm-dd");
  expect(cell.look).toMatchObject({ bold: true, size: 14 });
});

test("the looks of a block are saved, those of cells that stay blank too", async () => {
  const { grid, saved } = await opened();
  const host = new GridTableHost();
  host.turnTo(grid);
  await openTables(host).writeBlock({
    sheet: "Feet",
    address: "D2",
    cells: [
      [
        { value: "Cows", look: "heading", alignRight: true },
        { value: null, look: "input", numberFormat: "0.0" },
      ],
    ],
  });
  const [heading, input] = await Promise.all(["D2", "E2"].map((at) => rawFileCell(saved(), "Feet", at)));
  expect(heading?.look).toMatchObject({ bold: true, colour: "#1F5673", fill: "#E3ECEF", right: true });
  expect(input).toMatchObject({ numberFormat: "0.0", look: { fill: "#FFF4D6", lineBelow: "#C9B98A" } });
});

test("a workbook in which nothing was changed is left as it is", async () => {
  const { bytes, saved } = await opened();
  expect(unzipSync(saved())).toEqual(unzipSync(bytes));
});
