import type { CellBlock, TablePort } from "../../../src/workbook/table-port";
import { memoryLog } from "../../../src/workbook/saving/save-log";
import { MARCH_1, outcomeOf, refusedAs, startTables } from "./start";
import type { TestBook, TestHost } from "./test-book";

const block: CellBlock = {
  id: "block-1",
  title: "Lesions by month",
  sheet: "By month",
  address: "B2",
  cells: [
    ["Month", "=new", null],
    [{ day: MARCH_1 }, { formula: "COUNT(Findings[Cow])" }, null],
    [true, { formula: "SUM(1,2)", numberFormat: "0.00" }, 7],
  ],
  charts: [
    {
      type: "columns",
      title: "New lesions",
      altText: "New lesions of each month",
      categories: { firstRow: 1, firstColumn: 0, lastRow: 2, lastColumn: 0 },
      series: [{ name: "New", values: { firstRow: 1, firstColumn: 1, lastRow: 2, lastColumn: 1 } }],
      place: { firstRow: 4, firstColumn: 0, lastRow: 14, lastColumn: 5 },
    },
  ],
};

const FILLED = ["B2", "C2", "B3", "C3", "B4", "C4", "D4"];

/** Blocks that can be taken back. */
export function blockContract(host: TestHost): void {
  let book: TestBook;
  let port: TablePort;
  beforeEach(async () => {
    book = await host.open(startTables);
    port = book.user();
  });
  const filled = async (sheet: string, of = book): Promise<string[]> => {
    const found: string[] = [];
    for (const address of FILLED) {
      const { value, hasFormula } = await of
        .sheetCell(sheet, address)
        .catch(() => ({ value: null, hasFormula: false }));
      if (value !== null || hasFormula) found.push(address);
    }
    return found;
  };

  test("a block is written once and taken back whole, its new sheet too", async () => {
    const before = (await port.listTables()).length;
    const { chartsLeftOut } = await port.writeBlock(block);
    expect([[], ["New lesions"]]).toContainEqual(chartsLeftOut);
    expect(await port.writeBlock(block)).toEqual({ chartsLeftOut });
    expect(await filled("By month")).toEqual(FILLED);
    expect(port.pastSaves()).toEqual([{ id: "block-1", title: "Lesions by month" }]);
    await port.takeBack("block-1");
    expect(await filled("By month")).toEqual([]);
    expect(port.pastSaves()).toEqual([]);
    await refusedAs(port.takeBack("block-1"), "unknown-save");
    await port.writeBlock({ ...block, id: "block-2" });
    expect(await filled("By month")).toEqual(FILLED);
    expect(await port.listTables()).toHaveLength(before);
  });

  test("taking back leaves what else stands on the sheet", async () => {
    await port.writeBlock({ ...block, sheet: "Plan", address: "B22", charts: [] });
    await port.takeBack("block-1");
    expect((await book.sheetCell("Plan", "B22")).value).toBeNull();
    expect((await book.sheetCell("Plan", "C24")).hasFormula).toBe(false);
    expect((await book.cell("Care", 0, "Cow")).value).toBe(101);
  });

  test("a sheet made for a block stays where something else was written on it", async () => {
    await port.writeBlock(block);
    await port.writeBlock({ sheet: "By month", address: "H2", cells: [["kept"]] });
    await port.takeBack("block-1");
    expect(await filled("By month")).toEqual([]);
    expect((await book.sheetCell("By month", "H2")).value).toBe("kept");
  });

  test("a block is not taken back where one of its cells was changed, nor on a protected sheet", async () => {
    await port.writeBlock(block);
    await refusedAs(book.user().takeBack("block-1"), "unknown-save");
    expect(await filled("By month")).toEqual(FILLED);
    await book.other.typeAt("By month", "B4", 5);
    expect(await refusedAs(port.takeBack("block-1"), "changed")).toMatch(/B4.*TRUE.*5/);
    expect(await filled("By month")).toEqual(FILLED);
    await book.other.typeAt("By month", "B4", true);
    await book.other.protectSheet("By month");
    await refusedAs(port.takeBack("block-1"), "protected");
    expect(await filled("By month")).toEqual(FILLED);
  });

  test("whichever step fails, a block stands whole or not at all, and can be taken back", async () => {
    const from = book.steps();
    await port.writeBlock(block);
    const steps = book.steps() - from;
    for (let after = 0; after < steps; after++) {
      const trial = await host.open(startTables);
      const log = memoryLog();
      trial.failSteps(after, 1);
      const kind = await outcomeOf(trial.user(log).writeBlock(block));
      trial.failSteps(0, 0);
      if (kind === "failed") expect(await filled("By month", trial)).toEqual([]);
      // A second try that is refused knows no more of the first than was known before.
      trial.failSteps(after % 3, 1);
      const again = await outcomeOf(trial.user(log).writeBlock(block));
      trial.failSteps(0, 0);
      if (!["done", "uncertain"].includes(again)) expect(await filled("By month", trial)).toEqual([]);
      await trial.user(log).writeBlock(block);
      expect(await filled("By month", trial)).toEqual(FILLED);
      await trial.user(log).takeBack("block-1");
      expect(await filled("By month", trial)).toEqual([]);
    }
  });

  test("a block on a sheet that was renamed or deleted is not taken back silently", async () => {
    await port.writeBlock(block);
    await book.other.renameSheet("By month", "Months");
    expect(await refusedAs(port.takeBack("block-1"), "sheet-gone")).toMatch(/no sheet By month/);
    expect(await filled("Months")).toEqual(FILLED);
    expect(port.pastSaves().map(({ id }) => id)).toEqual(["block-1"]);
    await book.other.renameSheet("Months", "By month");
    await port.takeBack("block-1");
    expect(await book.sheetNames()).not.toContain("By month");
    await port.writeBlock(block);
    await book.other.deleteSheet("By month");
    await refusedAs(port.takeBack("block-1"), "sheet-gone");
  });

  test("cells of a block that someone emptied do not keep the others from being taken back", async () => {
    await port.writeBlock({ ...block, sheet: "Plan", address: "B22", charts: [] });
    await book.other.typeAt("Plan", "B22", null);
    await port.takeBack("block-1");
    expect((await book.sheetCell("Plan", "C24")).hasFormula).toBe(false);
  });

  test("whichever step of taking a block back fails, it can be taken back again, its sheet too", async () => {
    await port.writeBlock(block);
    const from = book.steps();
    await port.takeBack("block-1");
    const steps = book.steps() - from;
    expect(steps).toBeGreaterThan(0);
    for (let after = 0; after < steps; after++) {
      for (const times of [1, 2]) {
        const trial = await host.open(startTables);
        const user = trial.user();
        await user.writeBlock(block);
        trial.failSteps(after, times);
        const kind = await outcomeOf(user.takeBack("block-1"));
        trial.failSteps(0, 0);
        expect(["done", "failed", "uncertain"]).toContain(kind);
        if (kind === "failed") expect(await filled("By month", trial)).toEqual(FILLED);
        if (kind !== "done" && (await trial.sheetNames()).includes("By month")) await user.takeBack("block-1");
        expect(await filled("By month", trial)).toEqual([]);
      }
    }
  });

  test("whichever step fails, what was begun is taken back, its sheet too", async () => {
    const plain = { ...block, charts: [] };
    const from = book.steps();
    await port.writeBlock(plain);
    const steps = book.steps() - from;
    const before = (await (await host.open(startTables)).sheetNames()).length;
    for (let after = 0; after < steps; after++) {
      const trial = await host.open(startTables);
      const user = trial.user();
      trial.failSteps(after, 2);
      await user.writeBlock(plain).catch(() => undefined);
      trial.failSteps(0, 0);
      for (const { id } of user.pastSaves()) await user.takeBack(id);
      expect(await filled("By month", trial)).toEqual([]);
      expect([after, (await trial.sheetNames()).length]).toEqual([after, before]);
    }
  });
}
