import { memoryLog } from "../../../src/workbook/saving/save-log";
import { rowAsRead, type WorkbookChange } from "../../../src/workbook/table-port";
import { finding, findings, MARCH_1, outcomeOf, saveOf, startTables, typedRows, wholeBook } from "./start";
import type { TestHost } from "./test-book";

/** A save as the pane makes it: findings, a treatment and the outcome of an older one. */
async function dayOfWork(port: Awaited<ReturnType<typeof openStart>>["port"]): Promise<ReturnType<typeof saveOf>> {
  const plan = await port.readTable("Care");
  return saveOf(
    { append: "Findings", rows: [finding(103), finding(103, "SU", { Treatment: "trim", Note: "left hind" })] },
    { append: "Care", rows: [{ Cow: 103, What: "block off", When: MARCH_1 + 33 }] },
    { update: rowAsRead(plan, 0), set: { Done: "healed" } },
  );
}

const AFTER_WORK = {
  Findings: [
    [MARCH_1, 101, "DD", "topical", null],
    [MARCH_1, 102, "SU", "trim, block", "hind, outer"],
    [MARCH_1 + 1, "B7", "none", null, null],
    [MARCH_1 + 5, 103, "DD", null, null],
    [MARCH_1 + 5, 103, "SU", "trim", "left hind"],
  ],
  Care: [
    [101, "bandage off", MARCH_1 + 3, "healed"],
    [102, "block off", MARCH_1 + 28, null],
    [103, "block off", MARCH_1 + 33, null],
  ],
  Scores: [],
};

async function openStart(host: TestHost) {
  const book = await host.open(startTables);
  return { book, port: book.user() };
}

export function savingContract(host: TestHost): void {
  test("tables are listed with their sheets, columns and rows", async () => {
    const { port } = await openStart(host);
    const tables = await port.listTables();
    expect(tables.map(({ name, sheet, rowCount }) => [name, sheet, rowCount])).toEqual([
      ["Findings", "Findings", 3],
      ["Care", "Plan", 2],
      ["Scores", "Walk", 0],
    ]);
    expect(tables[0]?.columns.map(({ heading, calculated }) => [heading, calculated])).toEqual([
      ["Date", false],
      ["Cow", false],
      ["Lesion", false],
      ["Treatment", false],
      ["Note", false],
      ["Due", true],
    ]);
  });

  test("a table is read with its blanks, text and numbers", async () => {
    const { port } = await openStart(host);
    expect(await typedRows(port, "Findings")).toEqual(findings.rows);
    expect(await typedRows(port, "Scores")).toEqual([]);
  });

  test("one save writes into several tables", async () => {
    const { port } = await openStart(host);
    await port.save(await dayOfWork(port));
    expect(await wholeBook(port)).toEqual(AFTER_WORK);
  });

  test("the calculated column fills itself in new rows, with what stands above", async () => {
    const { book, port } = await openStart(host);
    await port.save(saveOf({ append: "Findings", rows: [finding(103), finding(104)] }));
    for (const row of [2, 3, 4]) expect((await book.cell("Findings", row, "Due")).hasFormula).toBe(true);
    for (const row of [3, 4]) expect((await book.cell("Findings", row, "Cow")).hasFormula).toBe(false);
  });

  test("the first row of a table without rows takes the place of its blank row", async () => {
    const { book, port } = await openStart(host);
    await port.save(saveOf({ append: "Scores", rows: [{ Date: { day: MARCH_1 }, Cow: 101, Score: 0 }] }));
    expect(await typedRows(port, "Scores")).toEqual([[MARCH_1, 101, 0]]);
    expect((await book.cell("Scores", 0, "Score")).value).toBe(0);
    await port.save(saveOf({ append: "Scores", rows: [{ Cow: 102, Score: 2 }] }));
    expect(await typedRows(port, "Scores")).toEqual([
      [MARCH_1, 101, 0],
      [null, 102, 2],
    ]);
  });

  test("blank rows at the end of a table are filled before it grows", async () => {
    const blank = [null, null, null, null];
    const book = await host.open([
      findings,
      { ...startTables[1]!, rows: [[101, "block off", MARCH_1, null], blank, blank] },
    ]);
    const port = book.user();
    await port.save(saveOf({ append: "Care", rows: ["a", "b", "c"].map((What) => ({ Cow: 1, What })) }));
    expect(await typedRows(port, "Care")).toEqual([
      [101, "block off", MARCH_1, null],
      [1, "a", null, null],
      [1, "b", null, null],
      [1, "c", null, null],
    ]);
  });

  test("the same save handed over twice, even at once, is written once", async () => {
    const { port } = await openStart(host);
    const save = await dayOfWork(port);
    await Promise.all([port.save(save), port.save(save)]);
    await port.save(save);
    expect(await wholeBook(port)).toEqual(AFTER_WORK);
  });

  test("a save is remembered by its log after the port was opened anew", async () => {
    const { book } = await openStart(host);
    const log = memoryLog();
    const port = book.user(log);
    const save = await dayOfWork(port);
    await port.save(save);
    const later = book.user(log);
    await later.save(save);
    expect(await wholeBook(later)).toEqual(AFTER_WORK);
    expect(later.pastSaves()).toEqual([{ id: save.id, title: save.title }]);
  });

  test("an update finds its row where others have moved it", async () => {
    const { book, port } = await openStart(host);
    const plan = await port.readTable("Care");
    await book.other.insertRow("Care", 0, [99, "score again", MARCH_1, null]);
    await port.save(saveOf({ update: rowAsRead(plan, 1), set: { Done: "worse" } }));
    expect(await typedRows(port, "Care")).toEqual([
      [99, "score again", MARCH_1, null],
      [101, "bandage off", MARCH_1 + 3, null],
      [102, "block off", MARCH_1 + 28, "worse"],
    ]);
  });

  test("whichever step fails, all of a save stands or none of it, and saving again ends it", async () => {
    const { book, port } = await openStart(host);
    const before = book.steps();
    await port.save(await dayOfWork(port));
    const steps = book.steps() - before;
    expect(steps).toBeGreaterThan(1);
    for (let after = 0; after <= steps; after++) {
      for (const times of [1, 3, Infinity]) {
        const { book: trial } = await openStart(host);
        const user = trial.user();
        const untouched = await wholeBook(user);
        const save = await dayOfWork(user);
        trial.failSteps(after, times);
        const outcome = await outcomeOf(user.save(save));
        trial.failSteps(0, 0);
        const now = await wholeBook(user);
        if (outcome === "done") expect(now).toEqual(AFTER_WORK);
        else {
          expect(["failed", "closed", "uncertain"]).toContain(outcome);
          if (outcome !== "uncertain") expect(now).toEqual(untouched);
          // A second try that is refused knows no more of the first than was known before.
          trial.failSteps(after % 3, 1);
          const again = await outcomeOf(user.save(save));
          trial.failSteps(0, 0);
          if (!["done", "uncertain"].includes(again)) expect(await wholeBook(user)).toEqual(untouched);
          await user.save(save);
        }
        expect([after, times, await wholeBook(user)]).toEqual([after, times, AFTER_WORK]);
      }
    }
  });

  test("others hear of a save as a remote change, the user as a local one", async () => {
    const { book, port } = await openStart(host);
    const own: WorkbookChange[] = [];
    const others: WorkbookChange[] = [];
    const unwatch = port.watchChanges((change) => own.push(change));
    book.user().watchChanges((change) => others.push(change));
    await port.listTables();
    await port.save(saveOf({ append: "Care", rows: [{ Cow: 1, What: "look" }] }));
    await port.listTables();
    expect(new Set(own.map(({ source }) => source))).toEqual(new Set(["local"]));
    expect(new Set(others.map(({ source }) => source))).toEqual(new Set([host.oneUser === true ? "local" : "remote"]));
    const heard = own.length;
    unwatch();
    await port.save(saveOf({ append: "Care", rows: [{ Cow: 2, What: "look" }] }));
    await port.listTables();
    expect(own.length).toBe(heard);
  });
}
