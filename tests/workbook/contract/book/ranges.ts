import type { BookPort, RangeToTable } from "../../../../src/workbook/book-port";
import type { PlainArea, PlainSheet } from "../../../../src/workbook/plain-book";
import type { PlainCell } from "../../../../src/workbook/port";
import { outcomeOf, refusedAs } from "../start";
import { cows, feet, filled as filledSheet, odd, startSheets } from "./start";
import type { SheetsHost, TestSheets } from "./test-sheets";

const listArea: PlainArea = { firstRow: 2, firstColumn: 0, lastRow: 5, lastColumn: 3 };
const list: RangeToTable = {
  id: "table-1",
  title: "Table Trimmings",
  sheet: feet.name,
  area: listArea,
  name: "Trimmings",
};

/** Rows without blanks at their end. */
function filled({ rows }: PlainSheet): PlainCell[][] {
  const lastFilled = (row: readonly PlainCell[]): number =>
    row.reduce<number>((last, cell, at) => (cell === null ? last : at), -1);
  return rows.map((row) => row.slice(0, lastFilled(row) + 1));
}

export function rangeContract(host: SheetsHost): void {
  let book: TestSheets;
  let port: BookPort;
  beforeEach(async () => {
    book = await host.open(startSheets);
    port = book.user();
  });
  const tables = async (sheet: string) =>
    (await port.readSheet(sheet)).tables.map(({ name, area }) => ({ name, area }));

  test("a range becomes a table, once, and a range again with its cells as they are", async () => {
    const before = await port.readSheet(feet.name);
    expect(await port.makeTable(list)).toBe("Trimmings");
    expect(await port.makeTable(list)).toBe("Trimmings");
    expect(await tables(feet.name)).toEqual([{ name: "Trimmings", area: listArea }]);
    expect(filled(await port.readSheet(feet.name))).toEqual(filled(before));
    expect((await book.cell(feet.name, "A4")).numberFormat).toBe("dd/mm/yyyy");
    expect(port.pastChanges()).toEqual([{ id: list.id, title: list.title }]);
    await book.type(feet.name, "C6", "WL");
    await port.takeBack(list.id);
    expect(await tables(feet.name)).toEqual([]);
    expect(filled(await port.readSheet(feet.name))[5]).toEqual([...filled(before)[5]!.slice(0, 2), "WL"]);
    expect((await book.cell(feet.name, "A4")).numberFormat).toBe("dd/mm/yyyy");
    await refusedAs(port.takeBack(list.id), "unknown-save");
  });

  test.each([
    ["Herd", "Herd_2"],
    ["herd", "herd_2"],
    ["My feet, 2024!", "My_feet_2024_"],
    ["SCC200", "_SCC200"],
    ["R1C1", "_R1C1"],
    ["2024", "_2024"],
    ["  ", "List"],
    ["Füße", "Füße"],
  ])("the name %j becomes %j", async (wanted, name) => {
    expect(await port.makeTable({ ...list, name: wanted })).toBe(name);
    expect((await tables(feet.name)).map((table) => table.name)).toEqual([name]);
  });

  test("refused with a plain sentence", async () => {
    const refused = async (table: Partial<RangeToTable>, kind: Parameters<typeof refusedAs>[1]): Promise<string> =>
      refusedAs(port.makeTable({ ...list, ...table }), kind);
    const area = (firstRow: number, firstColumn: number, lastRow: number, lastColumn: number): PlainArea => ({
      firstRow,
      firstColumn,
      lastRow,
      lastColumn,
    });
    expect(await refused({ sheet: odd.name, area: area(0, 0, 1, 1) }, "headings")).toMatch(/B1 .*no heading/);
    expect(await refused({ sheet: odd.name, area: area(0, 2, 1, 3) }, "headings")).toMatch(/D1 .*text; got 2024/);
    await book.type(odd.name, "B1", "cow");
    expect(await refused({ sheet: odd.name, area: area(0, 0, 1, 2) }, "headings")).toMatch(/A1 and B1 .*rename/);
    expect(await refused({ sheet: odd.name, area: area(4, 0, 5, 1) }, "merged")).toMatch(/B6:C6/);
    expect(await refused({ sheet: cows.name, area: area(1, 2, 3, 3) }, "occupied")).toMatch(/meets table Herd/);
    expect(await refused({ area: area(2, 0, 2, 3) }, "unwritable")).toMatch(/A3:D3/);
    expect(await refused({ area: area(2, 0, 1_048_576, 3) }, "unwritable")).toMatch(/D1048577/);
    expect(await refused({ sheet: "Gone" }, "sheet-gone")).toMatch(/no sheet Gone/);
    await book.protectSheet(feet.name);
    expect(await refused({}, "protected")).toMatch(/Feet 'hind' & more is protected/);
    expect(await tables(odd.name)).toEqual([]);
    expect(port.pastChanges()).toEqual([]);
  });

  test("a table on a protected or deleted sheet is not taken back silently", async () => {
    await port.makeTable(list);
    await book.protectSheet(feet.name);
    await refusedAs(port.takeBack(list.id), "protected");
    expect(await tables(feet.name)).toHaveLength(1);
    await book.deleteSheet(feet.name);
    expect(await refusedAs(port.takeBack(list.id), "table-gone")).toMatch(/no table Trimmings/);
    expect(port.pastChanges()).toEqual([{ id: list.id, title: list.title }]);
  });

  test("a range of which one formula fills several cells becomes no table", async () => {
    const area: PlainArea = { firstRow: 0, firstColumn: 0, lastRow: 3, lastColumn: 1 };
    const wanted = { ...list, sheet: filledSheet.name, area };
    expect(await refusedAs(port.makeTable(wanted), "calculated")).toMatch(/B2:B4 on sheet Filled/);
    expect(await tables(filledSheet.name)).toEqual([]);
    expect((await book.cell(filledSheet.name, "B2")).hasFormula).toBe(true);
    expect(await port.makeTable({ ...wanted, area: { ...area, lastColumn: 0 } })).toBe("Trimmings");
  });

  test("whichever step of taking a table back fails, there is a table or none, and it can be taken back again", async () => {
    await port.makeTable(list);
    const from = book.steps();
    await port.takeBack(list.id);
    const steps = book.steps() - from;
    for (let after = 0; after < steps; after++) {
      const trial = await host.open(startSheets);
      const user = trial.user();
      await user.makeTable(list);
      trial.failSteps(after, 1);
      const outcome = await outcomeOf(user.takeBack(list.id));
      trial.failSteps(0, 0);
      const found = async () => (await user.readSheet(feet.name)).tables.length;
      if (outcome === "failed") expect(await found()).toBe(1);
      if (outcome !== "done") await user.takeBack(list.id);
      expect(await found()).toBe(0);
      expect(user.pastChanges()).toEqual([]);
    }
  });

  test("whichever step fails, there is a table or none, and trying again makes it whole", async () => {
    const from = book.steps();
    await port.makeTable(list);
    const steps = book.steps() - from;
    for (let after = 0; after < steps; after++) {
      const trial = await host.open(startSheets);
      const user = trial.user();
      trial.failSteps(after, 1);
      const outcome = await outcomeOf(user.makeTable(list));
      trial.failSteps(0, 0);
      const found = (await user.readSheet(feet.name)).tables.map(({ name, area }) => ({ name, area }));
      const made = [{ name: "Trimmings", area: listArea }];
      if (outcome === "failed") expect(found).toEqual([]);
      else if (outcome === "done") expect(found).toEqual(made);
      else expect([[], made]).toContainEqual(found);
      // A second try that is refused knows no more of the first than was known before.
      trial.failSteps(after % 3, 1);
      const again = await outcomeOf(user.makeTable(list));
      trial.failSteps(0, 0);
      if (!["done", "uncertain"].includes(again)) expect((await user.readSheet(feet.name)).tables).toEqual([]);
      expect(await user.makeTable(list)).toBe("Trimmings");
      expect((await user.readSheet(feet.name)).tables.map(({ name }) => name)).toEqual(["Trimmings"]);
      await user.takeBack(list.id);
      expect((await user.readSheet(feet.name)).tables).toEqual([]);
    }
  });
}
