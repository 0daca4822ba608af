import { openPlainBook } from "../../../../src/entries/open-plain-book";
import { drawUpPreview, readOldBook } from "../../../../src/taskpane/screens/set-up/copy-effects";
import { Driver } from "./driver";
import { memoryBook, portsOn } from "./memory-book";
import { sampleBook, TODAY } from "./own-book";

/** The samples are large, and the machine may be at other work. */
jest.setTimeout(60_000);

const own = sampleBook("own-headings.xlsx");

/** A book with Evenfoot's own tables, without any row. */
async function template(): Promise<Driver> {
  const herd = sampleBook("herd-workbook.xlsx");
  const sheets = herd.sheets
    .filter(({ tables }) => tables.some(({ name }) => ["Cows", "Findings", "Scores", "Tests"].includes(name)))
    .map((sheet) => {
      const [table] = sheet.tables;
      const { area } = table!;
      const rows = sheet.rows.slice(0, area.firstRow + 1);
      return { ...sheet, rows, tables: [{ ...table!, area: { ...area, lastRow: area.firstRow + 1 } }], formulas: [] };
    });
  const driver = new Driver(portsOn(memoryBook({ sheets })), TODAY);
  await driver.settle();
  return driver;
}

async function withOldBook(): Promise<Driver> {
  const driver = await template();
  driver.send({ type: "old book chosen", name: "old.xlsx", turn: 1 });
  driver.send(await readOldBook(() => Promise.resolve(own), "old.xlsx", driver.state.words.known, 1));
  return driver;
}

async function preview(driver: Driver, turn: number): Promise<void> {
  driver.send({ type: "preview pressed", turn });
  const { copy, words } = driver.state;
  if (copy.kind !== "opened") throw new Error("no old book is open");
  driver.send(await drawUpPreview(driver.ports, copy.old, words.known, TODAY, turn));
}

function shown(driver: Driver) {
  const { copy } = driver.state;
  if (copy.kind !== "opened" || copy.preview.kind !== "shown") throw new Error("no preview is shown");
  return copy.preview.preview;
}

test("every row of an old book comes over, is here already, or stays behind with a reason", async () => {
  const driver = await withOldBook();
  await preview(driver, 2);
  const { counts, left, notRead } = shown(driver);
  expect(counts.map(({ table }) => table)).toEqual(["Cows", "Findings", "Scores", "Tests"]);
  for (const { rows, over, double, doubtful } of counts) expect(over + double + doubtful).toBe(rows);
  expect(left).toHaveLength(counts.reduce((sum, { double, doubtful }) => sum + double + doubtful, 0));
  for (const { why } of left) expect(why).toMatch(/\.$/);
  expect(notRead).toEqual(["Butterfat on Milk recording"]);
});

test("a word without a code keeps its row behind until it is said", async () => {
  const driver = await withOldBook();
  await preview(driver, 2);
  const behind = () => shown(driver).left.filter(({ why }) => why.includes('"bad un"')).length;
  expect(behind()).toBe(1);
  driver.send({ type: "old code chosen", word: "bad un", code: "SU" });
  expect(driver.state.copy).toMatchObject({ preview: { kind: "not yet" } });
  await preview(driver, 3);
  expect(behind()).toBe(0);
});

test("the copy is written once, shows as here already the next time, and is taken back whole", async () => {
  const driver = await withOldBook();
  await preview(driver, 2);
  const over = shown(driver).counts.map(({ over }) => over);
  await driver.press({ type: "copy pressed", id: driver.newId() });
  expect(driver.state.notice).toMatchObject({ kind: "done" });
  expect((await driver.ports.tables.readTable("Findings")).rowCount).toBe(over[1]);
  await preview(driver, 3);
  expect(shown(driver).counts.map(({ over }) => over)).toEqual([0, 0, 0, 0]);
  const [copied] = driver.ports.tables.pastSaves();
  await driver.press({ type: "take back pressed", id: copied!.id });
  expect((await driver.ports.tables.readTable("Findings")).rowCount).toBe(0);
  await preview(driver, 4);
  expect(shown(driver).counts.map(({ over }) => over)).toEqual(over);
});

test("what is changed while a preview is drawn up makes it void", async () => {
  const driver = await withOldBook();
  driver.send({ type: "preview pressed", turn: 2 });
  driver.send({ type: "old code chosen", word: "bad un", code: "SU" });
  driver.send({ type: "preview failed", turn: 2, message: "late" });
  expect(driver.state.copy).toMatchObject({ preview: { kind: "not yet" } });
});

/** The first bytes of an old Office file. Source: [MS-CFB], 2.2. */
const COMPOUND_FILE = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

test.each([
  [
    "an .xls with the ending .xlsx",
    new Uint8Array([...COMPOUND_FILE, ...new Uint8Array(600)]),
    /old \.xls workbook.*save it as \.xlsx\.$/,
  ],
  ["an empty file", new Uint8Array(0), /The file is empty\.$/],
  ["a text", new TextEncoder().encode("Cow;Date;Lesion"), /not an \.xlsx workbook\.$/],
])("%s gets a plain sentence", async (_, bytes, sentence) => {
  const driver = await template();
  driver.send({ type: "old book chosen", name: "old.xlsx", turn: 1 });
  driver.send(await readOldBook(() => openPlainBook(new Blob([bytes])), "old.xlsx", [], 1));
  expect(driver.state.copy).toMatchObject({ kind: "failed", message: expect.stringMatching(sentence) as string });
});
