import { rowAsRead, type TablePort } from "../../../src/workbook/table-port";
import { finding, findings, MARCH_1, refusedAs, saveOf, startTables, typedRows, wholeBook } from "./start";
import type { TestBook, TestHost } from "./test-book";

export function refusalContract(host: TestHost): void {
  let book: TestBook;
  let port: TablePort;
  beforeEach(async () => {
    book = await host.open(startTables);
    port = book.user();
  });

  /** A save that others could do, and one that is refused, together: nothing of both may stand. */
  const saveBoth = (...changes: Parameters<typeof saveOf>) =>
    port.save(saveOf({ append: "Scores", rows: [{ Cow: 1, Score: 1 }] }, ...changes));

  test("a deleted table", async () => {
    await book.other.deleteTable("Findings");
    const before = await wholeBook(port);
    expect(await refusedAs(saveBoth({ append: "Findings", rows: [finding(103)] }), "table-gone")).toMatch(/Findings/);
    expect(await wholeBook(port)).toEqual(before);
    await refusedAs(port.readTable("Findings"), "table-gone");
  });

  test("a renamed table, with its likely new name", async () => {
    await book.other.renameTable("Findings", "Feet");
    const before = await wholeBook(port);
    const save = { append: "Findings", rows: [finding(103)] };
    expect(await refusedAs(saveBoth(save), "table-gone")).toMatch(/may now be called Feet/);
    expect(await wholeBook(port)).toEqual(before);
    expect(await typedRows(port, "Feet")).toHaveLength(3);
  });

  test("a table without one of our columns", async () => {
    await book.other.renameColumn("Findings", "Lesion", "Problem");
    const before = await wholeBook(port);
    const message = await refusedAs(saveBoth({ append: "Findings", rows: [finding(103)] }), "column-missing");
    expect(message).toMatch(/Findings.*"Lesion"/);
    expect(await wholeBook(port)).toEqual(before);
  });

  test("a column that fills itself", async () => {
    const row = finding(103, "DD", { Due: { day: MARCH_1 } });
    await refusedAs(saveBoth({ append: "Findings", rows: [row] }), "calculated");
    expect(await typedRows(port, "Scores")).toEqual([]);
  });

  test("a protected sheet", async () => {
    await book.other.protectSheet("Findings");
    const before = await wholeBook(port);
    expect(await refusedAs(saveBoth({ append: "Findings", rows: [finding(103)] }), "protected")).toBe(
      "Sheet Findings is protected: unprotect it under Review, then try again.",
    );
    const row = rowAsRead(await port.readTable("Findings"), 0);
    await refusedAs(saveBoth({ update: row, set: { Note: "seen" } }), "protected");
    expect(await wholeBook(port)).toEqual(before);
    const [table] = await port.listTables();
    expect(table?.protected).not.toBe(false);
  });

  test.each([1, 2])("no room: a cell in use %i rows below the table", async (rows) => {
    await book.other.typeBelow("Findings", rows);
    const before = await wholeBook(port);
    const two = { append: "Findings", rows: [finding(103), finding(104)] };
    expect(await refusedAs(saveBoth(two), "full")).toMatch(/Findings/);
    expect(await wholeBook(port)).toEqual(before);
    expect(port.pastSaves()).toEqual([]);
  });

  test("no room: another table below", async () => {
    const upper = { ...startTables[1]!, rows: [[1, "look", MARCH_1, null]] };
    const lower = { ...startTables[2]!, sheet: upper.sheet, address: "D5" };
    book = await host.open([findings, upper, lower]);
    port = book.user();
    await port.save(saveOf({ append: "Care", rows: [{ Cow: 2 }] }));
    await refusedAs(port.save(saveOf({ append: "Care", rows: [{ Cow: 3 }] })), "full");
    expect((await typedRows(port, "Care")).map(([cow]) => cow)).toEqual([1, 2]);
  });

  test("a row that changed since it was read", async () => {
    const row = rowAsRead(await port.readTable("Care"), 0);
    await book.other.setCell("Care", 0, "What", "bandage kept");
    const before = await wholeBook(port);
    const message = await refusedAs(saveBoth({ update: row, set: { Done: "healed" } }), "changed");
    expect(message).toMatch(/Care.*row 1.*"What".*"bandage off".*"bandage kept"/);
    expect(await wholeBook(port)).toEqual(before);
  });

  test("a change elsewhere in the table, or in a calculated column, is none of the row", async () => {
    const row = rowAsRead(await port.readTable("Findings"), 0);
    await book.other.setCell("Findings", 1, "Note", "seen");
    await port.save(saveOf({ update: row, set: { Note: "done" } }));
    expect((await typedRows(port, "Findings")).map((cells) => cells[4])).toEqual(["done", "seen", null]);
  });

  test("a filtered table takes rows; taking them back works or asks to clear the filter", async () => {
    await book.other.filter("Findings");
    const save = saveOf({ append: "Findings", rows: [finding(103)] });
    await port.save(save);
    await book.user().save(saveOf({ append: "Findings", rows: [finding(104)] }));
    const saved = await typedRows(port, "Findings");
    expect(saved.map((row) => row[1])).toEqual([101, 102, "B7", 103, 104]);
    const outcome = await port.takeBack(save.id).catch((error: unknown) => error);
    if (outcome === undefined) expect((await typedRows(port, "Findings")).map((row) => row[1])).not.toContain(103);
    else {
      await refusedAs(Promise.reject(outcome as Error), "filtered");
      expect(await typedRows(port, "Findings")).toEqual(saved);
    }
    expect((await port.listTables())[0]?.filtered).not.toBe(false);
  });

  test.each([
    ["a number that is none", { Cow: NaN }],
    ["an endless number", { Cow: Infinity }],
    ["half a day", { When: { day: MARCH_1 + 0.5 } }],
    ["a day before days", { When: { day: 0 } }],
    ["text longer than a cell", { What: "x".repeat(32_768) }],
    ["nothing at all", { What: null, Cow: "  " }],
  ])("%s is not written", async (_, row) => {
    await refusedAs(saveBoth({ append: "Care", rows: [row] }), "unwritable");
    expect(await typedRows(port, "Scores")).toEqual([]);
  });

  test("what cannot be read is told as such: nothing was to be saved", async () => {
    for (const read of [() => port.listTables(), () => port.readTable("Care")]) {
      const from = book.steps();
      await read();
      if (book.steps() === from) continue;
      book.failSteps(0, 1);
      const told = await read().catch((error: unknown) => error);
      book.failSteps(0, 0);
      expect((told as Error).message).not.toMatch(/saved|typed/);
    }
  });

  test("a closed workbook", async () => {
    await book.close();
    await refusedAs(port.save(saveOf({ append: "Care", rows: [{ Cow: 1 }] })), "closed");
    await refusedAs(port.readTable("Care"), "closed");
    await refusedAs(port.listTables(), "closed");
  });
}
