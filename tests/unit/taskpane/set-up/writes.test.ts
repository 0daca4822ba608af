import { TableError } from "../../../../src/workbook/table-error";
import { MemoryBook } from "../../../../src/workbook/memory/book";
import type { PlainBook, PlainSheet } from "../../../../src/workbook/plain-book";
import { isToBeKept } from "../../../../src/taskpane/screens/set-up/summaries";
import { badBooks } from "./bad-books";
import { Driver } from "./driver";
import { memoryBook, portsOn } from "./memory-book";
import { sampleBook, TODAY } from "./own-book";

async function opened(book: MemoryBook): Promise<Driver> {
  const driver = new Driver(portsOn(book), TODAY);
  await driver.settle();
  return driver;
}

/** The sample is large, and the machine may be at other work. */
jest.setTimeout(60_000);

const own = sampleBook("own-headings.xlsx");

test("while something is written, nothing else is", async () => {
  const driver = await opened(memoryBook(own));
  driver.send({ type: "keep lists pressed", id: "set-up a" });
  driver.send({ type: "keep words pressed", id: "set-up b" });
  driver.send({ type: "list read as", list: driver.list("Walking").id, table: "" });
  expect(driver.state.work?.task.id).toBe("set-up a");
  expect(driver.list("Walking").readAs).toBe("Scores");
  await driver.settle();
  expect((await driver.ports.tables.listTables()).map(({ name }) => name)).toEqual(["HerdList", "Mapping"]);
});

test("an answer that gets lost is asked for again under the same id, and nothing is written twice", async () => {
  const book = memoryBook(own);
  const driver = await opened(book);
  await driver.press({ type: "keep lists pressed", id: "set-up first" });
  await driver.press({ type: "check pressed" });
  const check = driver.state.check;
  if (check.kind !== "checked") throw new Error("not checked");
  const doubt = check.checked.groups.find((group) => group.check === "zero count")!.doubts[0]!;
  let lost = true;
  book.beforeStep = (step) => {
    if (step !== "answer" || !lost) return Promise.resolve();
    lost = false;
    return Promise.reject(new Error("the line broke"));
  };
  await driver.press({ type: "repair pressed", doubt, id: "set-up repair" });
  expect(driver.state.work).toMatchObject({ brokenOff: true });
  await driver.press({ type: "write tried again" });
  expect(driver.state.work).toBeUndefined();
  expect(driver.state.notice?.kind).toBe("done");
  expect(driver.ports.book.pastChanges()).toHaveLength(1);
});

test("a protected sheet is named, and nothing is written", async () => {
  const book = memoryBook(own);
  const { state } = book;
  book.replace({ ...state, sheets: state.sheets.map((sheet) => ({ ...sheet, protected: true })) }, undefined, []);
  const driver = await opened(book);
  await driver.press({ type: "make table pressed", list: driver.list("Walking").id, id: "set-up t" });
  expect(driver.state.notice?.kind).toBe("error");
  expect(driver.state.notice?.text).toContain("Sheet Walking is protected");
  expect(driver.list("Walking").source).toBeUndefined();
});

test("a workbook that cannot be read says why, and is read again", async () => {
  const book = memoryBook(own);
  book.beforeStep = () => Promise.reject(new TableError("closed", "The workbook is no longer open."));
  const driver = await opened(book);
  expect(driver.state.reading).toEqual({ kind: "failed", message: "The workbook is no longer open." });
  book.beforeStep = () => Promise.resolve();
  await driver.press({ type: "reading asked" });
  expect(driver.state.reading.kind).toBe("read");
});

test("what was said of a list outlives a reading, as long as its headings are the same", async () => {
  const book = memoryBook(own);
  const driver = await opened(book);
  const list = driver.list("Milk recording").id;
  const { column } = driver.column("Milk recording", "DIM");
  await driver.press({ type: "column read as", list, column, key: "" });
  await driver.press({ type: "reading asked" });
  expect(driver.column("Milk recording", "DIM").key).toBe("");
  const address = "G4";
  await driver.ports.book.changeCells({ id: "x", title: "x", cells: [{ sheet: "Milk recording", address, was: "Butterfat", set: "Fat %" }] }); // oxfmt-ignore
  await driver.press({ type: "reading asked" });
  expect(driver.column("Milk recording", "DIM").key).toBe("daysInMilk");
});

test("headings that moved are found again and said; the mapping is kept anew", async () => {
  const book = memoryBook(own);
  const driver = await opened(book);
  await driver.press({ type: "keep lists pressed", id: "set-up 1" });
  await driver.ports.book.changeCells({ id: "x", title: "x", cells: [{ sheet: "Walking", address: "C4", was: "Mobility 0-3", set: "Mobility score" }] }); // oxfmt-ignore
  await driver.press({ type: "reading asked" });
  const { reading } = driver.state;
  expect(reading.kind === "read" && reading.notes).toEqual([
    'Scores, Score: the heading "Mobility 0-3" is now "Mobility score".',
  ]);
  await driver.press({ type: "keep lists pressed", id: "set-up 2" });
  const after = driver.state.reading;
  expect(after.kind === "read" && after.notes).toEqual([]);
});

test("formulas with #NAME? are entered again; where the functions are not loaded, that is said", async () => {
  const book = memoryBook(own);
  const { state } = book;
  const broken = { value: "#NAME?", formula: "HERD.CELL.SCORE(400)" };
  book.replace({ ...state, sheets: [...state.sheets, { name: "Sums", protected: false, cells: { A1: broken, A2: broken } }] }, undefined, []); // oxfmt-ignore
  book.functions = "no";
  const driver = await opened(book);
  await driver.press({ type: "formulas asked" });
  expect(driver.state.formulas).toMatchObject({ kind: "looked", loaded: "no" });
  await driver.press({ type: "reenter pressed", id: "set-up 1" });
  expect(driver.state.notice?.text).toBe("0 formulas of 2 work again. The others still do not know their function.");
  book.functions = "yes";
  await driver.press({ type: "formulas asked" });
  await driver.press({ type: "reenter pressed", id: "set-up 2" });
  expect(driver.state.notice?.text).toBe("2 formulas entered again: all of them work.");
  expect(driver.state.formulas).toMatchObject({ kind: "looked", broken: [] });
});

test.each([
  ["empty", /No cell of the workbook holds anything/],
  ["pictures", /holds pictures only/],
  ["fifty", /50 sheets/],
])("a workbook that is %s gets a plain sentence and no list to keep", async (name, sentence) => {
  const driver = await opened(memoryBook(badBooks[name]!()));
  const { reading } = driver.state;
  expect(reading.kind === "read" && reading.problems.join(" ")).toMatch(sentence);
  await driver.press({ type: "keep lists pressed", id: "set-up 1" });
  expect(driver.state.notice?.text).toBe("Nothing to keep: no list is read.");
  await driver.press({ type: "check pressed" });
  expect(driver.state.check.kind).toBe("checked");
});

/** Five cows of which nothing tells the unit of the milk. */
function unsureBook(): PlainBook {
  const rows = [["Cow", "Test date", "Milk", "Cell count"], ...[101, 102, 103, 104, 105, 106].map((cow) => [cow, 46_100, 20 + (cow % 7), 90 + cow])]; // oxfmt-ignore
  const milk: PlainSheet = { name: "Milk", rows, tables: [], formulas: [], merges: [], days: [{ firstRow: 1, lastRow: 6, firstColumn: 1, lastColumn: 1 }] }; // oxfmt-ignore
  return { sheets: [milk] };
}

test("a unit that the numbers cannot tell has to be said before anything is kept", async () => {
  const driver = await opened(memoryBook(unsureBook()));
  expect(driver.column("Milk", "Milk")).toMatchObject({ key: "milkKg", unit: undefined });
  await driver.press({ type: "keep lists pressed", id: "set-up 1" });
  expect(driver.state.notice?.text).toBe('Not kept yet. Milk: Say how "Milk" (column C) is written.');
  await driver.press({ type: "unit chosen", list: driver.list("Milk").id, column: 2, unit: "litres" });
  await driver.press({ type: "keep lists pressed", id: "set-up 2" });
  expect(driver.column("Milk", "Milk")).toMatchObject({ unit: "litres", certainty: 1 });
});

test("our own tables need nothing, and no sheet is written for them", async () => {
  const driver = await opened(memoryBook(sampleBook("herd-workbook.xlsx")));
  const read = driver.state.lists.filter(({ readAs }) => readAs !== "");
  expect(read.map(({ source, own: isOurs }) => [source, isOurs])).toEqual([
    ["Cows", true],
    ["Findings", true],
    ["Scores", true],
    ["Tests", true],
  ]);
  await driver.press({ type: "keep lists pressed", id: "set-up 1" });
  expect(driver.state.notice?.text).toBe("Nothing to keep: no list is read.");
});

test("rows of the Mapping sheet that do not count are told by their cell, and keeping writes the sheet without them", async () => {
  const driver = await opened(memoryBook(own));
  await driver.press({ type: "keep lists pressed", id: "set-up 1" });
  expect(isToBeKept(driver.state)).toBe(false);
  const change = { sheet: "Mapping", address: "B3", was: "Born", set: "Birth" };
  await driver.ports.book.changeCells({ id: "x", title: "x", cells: [change] });
  await driver.press({ type: "reading asked" });
  expect(driver.state.reading).toMatchObject({
    refused: ['Mapping, B3: Value must be a heading of Cows; got "Birth".'],
  });
  expect(isToBeKept(driver.state)).toBe(true);
  await driver.press({ type: "keep lists pressed", id: "set-up 2" });
  expect(driver.state.reading).toMatchObject({ refused: [] });
  expect(isToBeKept(driver.state)).toBe(false);
});
