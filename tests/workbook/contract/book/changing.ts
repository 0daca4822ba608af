import type { BookPort, CellChange, CellChanges } from "../../../../src/workbook/book-port";
import { outcomeOf, refusedAs } from "../start";
import { cows, feet, MARCH_1, odd, startSheets } from "./start";
import { memoryBookLog } from "../../../../src/workbook/saving/book-log";
import type { SheetsHost, TestSheets } from "./test-sheets";

let made = 0;

function changesOf(...cells: CellChange[]): CellChanges {
  made += 1;
  return { id: `change-${made}`, title: `Change ${made}`, cells };
}

const textDay: CellChange = {
  sheet: feet.name,
  address: "A5",
  was: "02/03/2024",
  set: { day: MARCH_1 + 1 },
};
const textCow: CellChange = { sheet: feet.name, address: "B5", was: "102", set: 102 };
const inTable: CellChange = { sheet: cows.name, address: "C3", was: "A", set: "heifers" };

export function changingContract(host: SheetsHost): void {
  let book: TestSheets;
  let port: BookPort;
  beforeEach(async () => {
    book = await host.open(startSheets);
    port = book.user();
  });
  const value = async (sheet: string, address: string) => (await book.cell(sheet, address)).value;

  test("cells of several sheets are changed and taken back", async () => {
    const changes = changesOf(textDay, textCow, inTable);
    await port.changeCells(changes);
    expect(await book.cell(feet.name, "A5")).toMatchObject({ value: MARCH_1 + 1, numberFormat: "yyyy-mm-dd" });
    expect(await value(feet.name, "B5")).toBe(102);
    expect(await value(cows.name, "C3")).toBe("heifers");
    expect(port.pastChanges()).toEqual([{ id: changes.id, title: changes.title }]);
    await port.takeBack(changes.id);
    expect(await book.cell(feet.name, "A5")).toMatchObject({ value: "02/03/2024", hasFormula: false });
    expect((await book.cell(feet.name, "A5")).numberFormat ?? "General").toBe("General");
    expect(await value(feet.name, "B5")).toBe("102");
    expect(await value(cows.name, "C3")).toBe("A");
    expect(port.pastChanges()).toEqual([]);
    await refusedAs(port.takeBack(changes.id), "unknown-save");
  });

  test("a day keeps the date format that its cell has", async () => {
    await port.changeCells(changesOf({ sheet: feet.name, address: "A4", was: MARCH_1, set: { day: MARCH_1 + 9 } }));
    expect(await book.cell(feet.name, "A4")).toMatchObject({ value: MARCH_1 + 9, numberFormat: "dd/mm/yyyy" });
  });

  test("a number is a number in a cell for text too, and taken back it is as before", async () => {
    const changes = changesOf({ sheet: feet.name, address: "B9", was: 7, set: 8 });
    await port.changeCells(changes);
    expect(await value(feet.name, "B9")).toBe(8);
    expect((await book.cell(feet.name, "B9")).numberFormat ?? "General").toBe("General");
    await port.takeBack(changes.id);
    expect(await book.cell(feet.name, "B9")).toMatchObject({ value: 7, numberFormat: "@" });
  });

  test.each(["=1+1", "+1", "-x", "@sum", "12", "TRUE", "1/2", "'quoted", "two\nlines"])(
    "the text %j stays that text",
    async (text) => {
      await port.changeCells(changesOf({ ...textDay, set: text }));
      expect(await book.cell(feet.name, "A5")).toMatchObject({ value: text, hasFormula: false });
      expect((await port.readSheet(feet.name)).rows[4]?.[0]).toBe(text);
    },
  );

  test("thousands of cells on several sheets are changed and taken back", async () => {
    const rows = Array.from({ length: 1200 }, (_, at) => at + 20);
    const cells = rows.flatMap((row): CellChange[] => [
      { sheet: "Empty", address: `B${row}`, was: null, set: `note ${row}` },
      { sheet: feet.name, address: `H${row}`, was: null, set: row % 2 === 0 ? row : { day: MARCH_1 } },
    ]);
    const changes = changesOf(...cells);
    await port.changeCells(changes);
    const held = async (sheet: string, column: number) => {
      const found = await port.readSheet(sheet);
      return rows.map((row) => found.rows[row - 1]?.[column] ?? null);
    };
    expect(await held("Empty", 1)).toEqual(rows.map((row) => `note ${row}`));
    expect(await held(feet.name, 7)).toEqual(rows.map((row) => (row % 2 === 0 ? row : MARCH_1)));
    await port.takeBack(changes.id);
    expect([...(await held("Empty", 1)), ...(await held(feet.name, 7))].every((cell) => cell === null)).toBe(true);
  });

  test("a cell is emptied and a blank one filled", async () => {
    const changes = changesOf(
      { sheet: feet.name, address: "D5", was: "see vet", set: null },
      { sheet: "Empty", address: "C3", was: null, set: true },
    );
    await port.changeCells(changes);
    expect(await value(feet.name, "D5")).toBeNull();
    expect(await value("Empty", "C3")).toBe(true);
    await port.takeBack(changes.id);
    expect(await value(feet.name, "D5")).toBe("see vet");
    expect(await value("Empty", "C3")).toBeNull();
  });

  test("a cell that someone changed meanwhile is named, and nothing is written", async () => {
    await book.type(feet.name, "B5", 555);
    const message = await refusedAs(port.changeCells(changesOf(textDay, textCow)), "changed");
    expect(message).toMatch(/B5 .*Feet 'hind' & more.*"102".*555/);
    expect(await value(feet.name, "A5")).toBe("02/03/2024");
    expect(port.pastChanges()).toEqual([]);
  });

  test("a change is not taken back where someone changed one of its cells meanwhile", async () => {
    const changes = changesOf(textDay, textCow);
    await port.changeCells(changes);
    await book.type(feet.name, "B5", 999);
    expect(await refusedAs(port.takeBack(changes.id), "changed")).toMatch(/B5/);
    expect(await value(feet.name, "A5")).toBe(MARCH_1 + 1);
    await book.type(feet.name, "B5", 102);
    await port.takeBack(changes.id);
    expect(await value(feet.name, "B5")).toBe("102");
  });

  test("handed over twice it is made once", async () => {
    const changes = changesOf(textCow);
    await port.changeCells(changes);
    await book.type(feet.name, "B5", "102");
    await port.changeCells(changes);
    expect(await value(feet.name, "B5")).toBe("102");
  });

  test("refused with a plain sentence", async () => {
    const refused = async (cell: Partial<CellChange>, kind: Parameters<typeof refusedAs>[1]): Promise<string> =>
      refusedAs(port.changeCells(changesOf(inTable, { ...textCow, ...cell })), kind);
    expect(await refused({ sheet: "Gone" }, "sheet-gone")).toMatch(/no sheet Gone/);
    expect(await refused({ address: "E4", was: 202 }, "calculated")).toMatch(/E4/);
    expect(await refused({ sheet: odd.name, address: "B10", was: null }, "merged")).toMatch(/A10:B10/);
    expect(await refused({ sheet: cows.name, address: "B2", was: "Cow" }, "headings")).toMatch(/B2 is a heading/);
    expect(await refused({ address: "XFE1" }, "unwritable")).toMatch(/XFE1/);
    expect(await refused({ address: "A1:B2" }, "unwritable")).toMatch(/A1:B2/);
    expect(await refused({ set: NaN }, "unwritable")).toMatch(/B5.*NaN/);
    expect(await refused({ set: "x".repeat(32_768) }, "unwritable")).toMatch(/32768/);
    expect(await refused({ ...inTable, address: "C3" }, "unwritable")).toMatch(/C3.*twice/);
    await refusedAs(port.changeCells(changesOf()), "unwritable");
    await book.protectSheet(feet.name);
    expect(await refused({}, "protected")).toMatch(/Feet 'hind' & more is protected/);
    expect(await value(cows.name, "C3")).toBe("A");
    expect(port.pastChanges()).toEqual([]);
  });

  test("the first cell of merged ones is changed", async () => {
    await port.changeCells(changesOf({ sheet: odd.name, address: "A10", was: "over both", set: "over two" }));
    expect(await value(odd.name, "A10")).toBe("over two");
  });

  test("whichever step fails, all cells are changed or none, and trying again makes it whole", async () => {
    const cells = [textDay, textCow, inTable];
    const from = book.steps();
    await port.changeCells(changesOf(...cells));
    const steps = book.steps() - from;
    for (let after = 0; after < steps; after++) {
      const trial = await host.open(startSheets);
      const log = memoryBookLog();
      const changes = changesOf(...cells);
      trial.failSteps(after, 1);
      const outcome = await outcomeOf(trial.user(log).changeCells(changes));
      trial.failSteps(0, 0);
      const stands = async (): Promise<unknown[]> =>
        Promise.all(cells.map(async ({ sheet, address }) => (await trial.cell(sheet, address)).value));
      if (outcome === "failed") expect(await stands()).toEqual(["02/03/2024", "102", "A"]);
      // A second try that is refused knows no more of the first than was known before.
      trial.failSteps(after % 3, 1);
      const again = await outcomeOf(trial.user(log).changeCells(changes));
      trial.failSteps(0, 0);
      if (!["done", "uncertain"].includes(again)) expect(await stands()).toEqual(["02/03/2024", "102", "A"]);
      await trial.user(log).changeCells(changes);
      expect(await stands()).toEqual([MARCH_1 + 1, 102, "heifers"]);
      await trial.user(log).takeBack(changes.id);
      expect(await stands()).toEqual(["02/03/2024", "102", "A"]);
    }
  });
}
