import type { CellBlock, NewTable, TablePort } from "../../../src/workbook/table-port";
import { finding, MARCH_1, refusal, refusedAs, saveOf, startTables, typedRows, wholeBook } from "./start";
import type { TestBook, TestHost } from "./test-book";

const rules: NewTable = {
  name: "Rules",
  sheet: "Rules",
  columns: [
    { heading: "Lesion" },
    { heading: "First look", numberFormat: "0" },
    { heading: "From", numberFormat: "dd/mm/yyyy" },
    { heading: "Twice", formula: "[@[First look]]*2" },
  ],
  rows: [
    { Lesion: "DD", "First look": 7, From: { day: MARCH_1 } },
    { Lesion: "=SU", "First look": 28 },
  ],
};

const block: CellBlock = {
  sheet: "Herd",
  address: "B2",
  cells: [
    ["Cows", "=1+1", { day: MARCH_1 }],
    [{ formula: "COUNT(Findings[Cow])" }, { formula: "SUM(1,2)", numberFormat: "0.00" }, null],
  ],
};

export function makingContract(host: TestHost): void {
  let book: TestBook;
  let port: TablePort;
  beforeEach(async () => {
    book = await host.open(startTables);
    port = book.user();
  });

  test("a table is made on a new sheet with its rows, formats and formulas", async () => {
    await port.createTable(rules);
    const table = (await port.listTables()).find(({ name }) => name === "Rules");
    expect(table).toMatchObject({ sheet: "Rules", rowCount: 2 });
    expect(table?.columns.map(({ heading, calculated }) => [heading, calculated])).toEqual([
      ["Lesion", false],
      ["First look", false],
      ["From", false],
      ["Twice", true],
    ]);
    expect(await typedRows(port, "Rules")).toEqual([
      ["DD", 7, MARCH_1],
      ["=SU", 28, null],
    ]);
    expect((await book.cell("Rules", 1, "Twice")).hasFormula).toBe(true);
    expect((await book.cell("Rules", 1, "Lesion")).hasFormula).toBe(false);
    expect((await book.cell("Rules", 0, "From")).numberFormat).toBe("dd/mm/yyyy");
    await port.save(saveOf({ append: "Rules", rows: [{ Lesion: "WL", From: { day: MARCH_1 } }] }));
    expect((await book.cell("Rules", 2, "Twice")).hasFormula).toBe(true);
    expect((await book.cell("Rules", 2, "From")).numberFormat).toBe("dd/mm/yyyy");
  });

  test("a table without rows is made and takes its first row", async () => {
    await port.createTable({ ...rules, rows: [] });
    expect(await typedRows(port, "Rules")).toEqual([]);
    await port.save(saveOf({ append: "Rules", rows: [{ Lesion: "WL" }] }));
    expect(await typedRows(port, "Rules")).toEqual([["WL", null, null]]);
  });

  test("a table is not made twice, nor over cells in use, nor on a protected sheet", async () => {
    await port.createTable(rules);
    const before = await wholeBook(port);
    await refusedAs(port.createTable(rules), "name-taken");
    await refusedAs(port.createTable({ ...rules, name: "More", address: "D3" }), "occupied");
    await book.other.protectSheet("Rules");
    await refusedAs(port.createTable({ ...rules, name: "More", address: "M3" }), "protected");
    expect(await wholeBook(port)).toEqual(before);
  });

  test("formulas are written as formulas and labels as text", async () => {
    await port.writeBlock(block);
    const cells = await Promise.all(["B2", "C2", "D2", "B3", "C3", "D3"].map((at) => book.sheetCell("Herd", at)));
    expect(cells.map(({ hasFormula }) => hasFormula)).toEqual([false, false, false, true, true, false]);
    expect(cells.slice(0, 3).map(({ value }) => value)).toEqual(["Cows", "=1+1", MARCH_1]);
    expect(cells[2]?.numberFormat).toBe("yyyy-mm-dd");
    expect(cells[4]?.numberFormat).toBe("0.00");
    expect(cells[5]?.value).toBeNull();
  });

  test("a block is never written over cells in use, nor where it would spill into them", async () => {
    await port.writeBlock(block);
    const lower = { ...block, address: "B5", cells: [[{ formula: "1+1" }]] };
    expect(await refusedAs(port.writeBlock({ ...block, address: "A3" }), "occupied")).toMatch(/B3/);
    await refusedAs(port.writeBlock({ ...lower, address: "B1", room: { rows: 3, columns: 1 } }), "occupied");
    await refusedAs(
      port.writeBlock({ ...lower, sheet: "Plan", address: "A1", room: { rows: 2, columns: 2 } }),
      "occupied",
    );
    await port.writeBlock({ ...lower, room: { rows: 3, columns: 1 } });
    expect((await book.sheetCell("Herd", "B5")).hasFormula).toBe(true);
    expect((await book.sheetCell("Herd", "A3")).value).toBeNull();
  });

  test("neither a block nor a table is written over a formula that shows a blank", async () => {
    await book.other.enterBlankFormula("Plan", "I23");
    expect(await refusedAs(port.writeBlock({ ...block, sheet: "Plan", address: "H22" }), "occupied")).toMatch(/I23/);
    const room = { rows: 3, columns: 3 };
    await refusedAs(port.writeBlock({ sheet: "Plan", address: "H22", cells: [[1]], room }), "occupied");
    expect(await refusedAs(port.createTable({ ...rules, sheet: "Plan", address: "H22" }), "occupied")).toMatch(/I23/);
    expect(await book.sheetCell("Plan", "I23")).toMatchObject({ value: null, hasFormula: true });
    expect((await book.sheetCell("Plan", "H22")).value).toBeNull();
  });

  test("neither a block nor a table is written over merged cells", async () => {
    await book.other.merge("Plan", "I23:J23");
    const refused = async (work: Promise<unknown>) => expect(await refusedAs(work, "merged")).toMatch(/I23:J23/);
    await refused(port.writeBlock({ ...block, sheet: "Plan", address: "H22" }));
    await refused(port.writeBlock({ sheet: "Plan", address: "H22", cells: [[1]], room: { rows: 2, columns: 2 } }));
    await refused(port.createTable({ ...rules, sheet: "Plan", address: "H22" }));
    expect((await book.sheetCell("Plan", "H22")).value).toBeNull();
  });

  test("a block is not written on a protected sheet", async () => {
    await book.other.protectSheet("Plan");
    await refusedAs(port.writeBlock({ ...block, sheet: "Plan", address: "H20" }), "protected");
    expect((await book.sheetCell("Plan", "H20")).value).toBeNull();
  });

  test.each(["A0", "a1", "B", "12", "A1:B2", ""])("%j is no address", async (address) => {
    await refusedAs(port.writeBlock({ ...block, address }), "unwritable");
  });

  test("whichever step fails, a table or block is made whole or not at all", async () => {
    for (const make of [(user: TablePort) => user.createTable(rules), (user: TablePort) => user.writeBlock(block)]) {
      const from = book.steps();
      await make(port);
      const steps = book.steps() - from;
      for (let after = 0; after < steps; after++) {
        const trial = await host.open(startTables);
        const user = trial.user();
        const before = await wholeBook(user);
        trial.failSteps(after, 1);
        const { kind } = await make(user).then(
          () => ({ kind: "made" }),
          (error: unknown) => refusal(Promise.reject(error as Error)),
        );
        trial.failSteps(0, 0);
        if (kind === "failed") {
          expect(await wholeBook(user)).toEqual(before);
          await make(user);
        }
        await user.save(saveOf({ append: "Findings", rows: [finding(1)] }));
      }
    }
  });
}
