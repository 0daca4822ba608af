import { anyCharacter } from "../../any-character";
import fc from "../../random";
import { day } from "../../../src/core/shared/days";
import { cellText } from "../../../src/workbook/plain-text";
import { rowAsRead } from "../../../src/workbook/table-port";
import { findings, MARCH_1, saveOf, startTables, typedRows } from "./start";
import type { TestHost } from "./test-book";

/** Text that a spreadsheet takes for something else when it is typed, and text that is hard to keep. */
export const HARD_TEXT = [
  "=1+1",
  '=HYPERLINK("x")',
  "+1",
  "-1",
  "- see note",
  "@SUM(A1)",
  "\t=1+1",
  "\r=1+1",
  "\n=1+1",
  "'=1+1",
  "'quoted'",
  " =1+1",
  "\u00a0=1+1",
  "\u3000=1+1",
  '"=1+1"',
  "\uff1d1+1",
  "\uff0b1",
  "\uff0d1",
  "\uff20SUM(A1)",
  "007",
  "1/2",
  "2024-02-03",
  "3 Mar",
  "1e5",
  "12 %",
  "1,5",
  "TRUE",
  "false",
  "#N/A",
  "#VALUE!",
  "M4.1",
  "_x0041_",
  "Kuh 🐄 № 7",
  "e\u0301",
  "\u202Eabc",
  "\u200b",
  "שלום",
  "a\u0000b\u001fc",
  "\ud83d",
  "<b>&amp;\"'",
  "two\r\nlines\nmore",
  "  spaces  ",
  "x".repeat(32_767),
];

export function valuesContract(host: TestHost): void {
  test("text stays text, whatever it looks like", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const before = (await port.readTable("Care")).rowCount;
    await port.save(saveOf({ append: "Care", rows: HARD_TEXT.map((text) => ({ Cow: 1, What: text })) }));
    const { rows } = await port.readTable("Care");
    expect(rows.slice(before).map((row) => row[1])).toEqual(HARD_TEXT.map(cellText));
    for (let row = 0; row < HARD_TEXT.length; row++) {
      const cell = await book.cell("Care", before + row, "What");
      expect([HARD_TEXT[row], cell.hasFormula, typeof cell.value]).toEqual([HARD_TEXT[row], false, "string"]);
    }
  });

  test("text put into a row that is there stays text", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    for (const text of ["=1+1", "007", "@x", "-"]) {
      await port.save(saveOf({ update: rowAsRead(await port.readTable("Care"), 0), set: { What: text } }));
      expect((await book.cell("Care", 0, "What")).hasFormula).toBe(false);
      expect((await typedRows(port, "Care"))[0]?.[1]).toBe(text);
    }
    for (let left = 4; left > 0; left--) await port.takeBack(port.pastSaves()[0]!.id);
    expect((await typedRows(port, "Care"))[0]?.[1]).toBe("bandage off");
  });

  test("any text comes back as it went in", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const texts = fc.sample(fc.string({ unit: anyCharacter, minLength: 1, maxLength: 30 }), { numRuns: 200, seed: 11 });
    await port.save(saveOf({ append: "Care", rows: texts.map((text) => ({ Cow: 1, What: text })) }));
    expect((await typedRows(port, "Care")).slice(2).map((row) => row[1])).toEqual(texts.map(cellText));
  });

  test("numbers and truth values keep their kind and their digits", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const values = [0, -1, 0.1, 1 / 3, 1e-7, 123_456_789_012, 1e21, true, false];
    await port.save(saveOf({ append: "Care", rows: values.map((Done) => ({ Cow: 1, Done })) }));
    expect((await typedRows(port, "Care")).slice(2).map((row) => row[3])).toEqual(values);
  });

  test("a blank stays blank and is never zero", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    await port.save(saveOf({ append: "Care", rows: [{ Cow: 1, What: "", When: null, Done: 0 }] }));
    expect((await typedRows(port, "Care"))[2]).toEqual([1, null, null, 0]);
    expect((await book.cell("Care", 2, "What")).value).toBeNull();
    expect((await book.cell("Care", 2, "When")).value).toBeNull();
    await port.save(
      saveOf({ update: rowAsRead(await port.readTable("Care"), 2), set: { Done: null, Cow: null, What: "x" } }),
    );
    expect((await typedRows(port, "Care"))[2]).toEqual([null, "x", null, null]);
  });

  test("a day is a number shown as a date, in the column's own date format where it has one", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    const leapDay = day("2024-02-29");
    await port.save(saveOf({ append: "Findings", rows: [{ Date: { day: leapDay }, Cow: 1, Lesion: "DD" }] }));
    await port.save(saveOf({ append: "Scores", rows: [{ Date: { day: leapDay }, Cow: 1, Score: 2 }] }));
    const own = await book.cell("Findings", 0, "Date");
    const written = await book.cell("Findings", 3, "Date");
    expect([written.value, written.numberFormat]).toEqual([45_351, own.numberFormat]);
    const fresh = await book.cell("Scores", 0, "Date");
    expect([fresh.value, fresh.numberFormat]).toEqual([45_351, "yyyy-mm-dd"]);
  });

  test("a day set in a row that is there is shown as a date", async () => {
    const book = await host.open(startTables);
    const port = book.user();
    await port.save(saveOf({ update: rowAsRead(await port.readTable("Care"), 0), set: { Done: { day: MARCH_1 } } }));
    const cell = await book.cell("Care", 0, "Done");
    expect([cell.value, cell.numberFormat]).toEqual([MARCH_1, "yyyy-mm-dd"]);
  });

  test("the headings may hold any characters", async () => {
    const headings = ["Cow #", "Toe [mm]", "What's 'up'?", "Größe", "A\nB", "1st"];
    const book = await host.open([
      findings,
      { name: "Odd_1", sheet: "It's", address: "C4", headings, rows: [[1, 2, 3, 4, 5, 6]] },
    ]);
    const port = book.user();
    await port.save(
      saveOf({ append: "Odd_1", rows: [Object.fromEntries(headings.map((heading, at) => [heading, at]))] }),
    );
    expect(await typedRows(port, "Odd_1")).toEqual([
      [1, 2, 3, 4, 5, 6],
      [0, 1, 2, 3, 4, 5],
    ]);
  });
}
