import type { BookPort } from "../../../../src/workbook/book-port";
import { cellAt, holds, type PlainArea, type PlainSheet } from "../../../../src/workbook/plain-book";
import { refusedAs } from "../start";
import { cows, feet, MARCH_1, notes, odd, startSheets } from "./start";
import type { SheetsHost, TestSheets } from "./test-sheets";

export function readingContract(host: SheetsHost): void {
  let book: TestSheets;
  let port: BookPort;
  beforeEach(async () => {
    book = await host.open(startSheets);
    port = book.user();
  });
  const inAny = (areas: readonly PlainArea[], row: number, column: number): boolean =>
    areas.some((area) => holds(area, row, column));
  const values = (sheet: PlainSheet, row: number): unknown[] =>
    [0, 1, 2, 3].map((column) => cellAt(sheet, row, column));

  test("all sheets in their order, the hidden one too", async () => {
    const { sheets, from1904 = false } = await port.readBook();
    expect(sheets.map(({ name }) => name)).toEqual(startSheets.map(({ name }) => name));
    expect(sheets.map(({ hidden = false }) => hidden)).toEqual(startSheets.map(({ hidden = false }) => hidden));
    expect(cellAt(sheets[3]!, 0, 0)).toBe("kept");
    expect(from1904).toBe(false);
  });

  test("values, and which of them are days and formulas", async () => {
    const sheet = await port.readSheet(feet.name);
    expect(values(sheet, 0)).toEqual(["Trimming 2024", null, null, null]);
    expect(values(sheet, 2)).toEqual(["Day", "Cow", "Lesion", "Note"]);
    expect(values(sheet, 3)).toEqual([MARCH_1, 101, "DD", null]);
    expect(values(sheet, 4)).toEqual(["02/03/2024", "102", "SU", "see vet"]);
    expect([3, 4, 5].map((row) => inAny(sheet.days, row, 0))).toEqual([true, false, true]);
    expect(inAny(sheet.days, 3, 1)).toBe(false);
    expect([3, 4].map((row) => inAny(sheet.formulas, row, 4))).toEqual([true, false]);
    expect(sheet.tables).toEqual([]);
  });

  test("tables and merged cells", async () => {
    const { sheets } = await port.readBook();
    const [, herd, merged] = sheets;
    expect(herd?.tables).toEqual([
      { name: "Herd", area: { firstRow: 1, firstColumn: 1, lastRow: 3, lastColumn: 2 }, calculated: [] },
    ]);
    expect(cellAt(herd!, 1, 1)).toBe("Cow");
    const areas = [...merged!.merges].sort((a, b) => b.firstRow - a.firstRow);
    expect(areas).toEqual([
      { firstRow: 9, firstColumn: 0, lastRow: 9, lastColumn: 1 },
      { firstRow: 5, firstColumn: 1, lastRow: 5, lastColumn: 2 },
    ]);
  });

  test("a sheet that is not there", async () => {
    expect(await refusedAs(port.readSheet("Gone"), "sheet-gone")).toMatch(/no sheet Gone/);
    await book.deleteSheet(cows.name);
    await refusedAs(port.readSheet(cows.name), "sheet-gone");
    expect((await port.readBook()).sheets).toHaveLength(startSheets.length - 1);
  });

  test("fifty sheets", async () => {
    const many = Array.from({ length: 50 }, (_, at) => ({ name: `Sheet ${at}`, cells: { A1: { value: at + 1 } } }));
    const { sheets } = await (await host.open(many)).user().readBook();
    expect(sheets.map((sheet) => cellAt(sheet, 0, 0))).toEqual(many.map((_, at) => at + 1));
  });

  test("shows a cell, or several, of a sheet in sight", async () => {
    await port.show({ sheet: feet.name, address: "B5" });
    if (host.shows) expect(book.shown()).toBe(`${feet.name}!B5`);
    await port.show({ sheet: odd.name, address: "A1:C2" });
    if (host.shows) expect(book.shown()).toBe(`${odd.name}!A1:C2`);
    expect(await refusedAs(port.show({ sheet: notes.name, address: "A1" }), "hidden")).toMatch(/Old notes is hidden/);
    await refusedAs(port.show({ sheet: "Gone", address: "A1" }), "sheet-gone");
    await refusedAs(port.show({ sheet: odd.name, address: "ZZZ9" }), "unwritable");
    await refusedAs(port.show({ sheet: odd.name, address: "here" }), "unwritable");
  });

  test("what cannot be read or shown is told as such: nothing was to be saved", async () => {
    const reads = [() => port.readBook(), () => port.readSheet(feet.name), () => port.brokenFormulas()];
    for (const read of [...reads, () => port.show({ sheet: feet.name, address: "B5" })]) {
      const from = book.steps();
      await read();
      if (book.steps() === from) continue;
      book.failSteps(0, 1);
      const told = await read().catch((error: unknown) => error);
      book.failSteps(0, 0);
      expect(told).toBeInstanceOf(Error);
      expect((told as Error).message).not.toMatch(/saved|typed/);
    }
  });

  test("a closed workbook", async () => {
    await book.close();
    await refusedAs(port.readBook(), "closed");
    await refusedAs(port.readSheet(feet.name), "closed");
  });

  test("free cells and room", async () => {
    const area = (firstRow: number, firstColumn: number, rows = 1, columns = 1): PlainArea => ({
      firstRow,
      firstColumn,
      lastRow: firstRow + rows - 1,
      lastColumn: firstColumn + columns - 1,
    });
    expect(await port.isFree(feet.name, area(0, 1, 2, 5))).toBe(true);
    expect(await port.isFree(feet.name, area(1, 1, 2, 1))).toBe(false);
    expect(await port.isFree(cows.name, area(4, 1))).toBe(true);
    expect(await port.isFree(cows.name, area(3, 2))).toBe(false);
    expect(await port.isFree(odd.name, area(5, 2))).toBe(false);
    expect(await port.findRoom("Empty", { rows: 3, columns: 3 })).toBe("A1");
    expect(await port.findRoom(feet.name, { rows: 9, columns: 3 })).toBe("G1");
    expect(await port.findRoom(feet.name, { rows: 9, columns: 16_380 })).toBe("A11");
    expect(await port.findRoom(feet.name, { rows: 1_048_576, columns: 16_380 })).toBeUndefined();
    await refusedAs(port.findRoom("Gone", { rows: 1, columns: 1 }), "sheet-gone");
  });
}
