import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { nodeFileStore } from "../../src/entries/node-file-store";
import { FileChanged, FileGone } from "../../src/workbook/file/store";
import { FileHost } from "../../src/workbook/file/table-host";
import { openTables } from "../../src/workbook/saving/open-tables";
import { type TablePort } from "../../src/workbook/table-port";
import { MemoryStore } from "../fakes/file/memory-store";
import { startFile } from "../fakes/file/start-file";
import { finding, MARCH_1, saveOf, startTables, typedRows } from "./contract/start";
import { schemaErrors, testWithValidator } from "./validator";

const IDS = ["RECHECK.DATE"];

/** Everything that the port can do to a file. */
async function workOn(port: TablePort): Promise<void> {
  const save = saveOf(
    { append: "Findings", rows: [finding("007", "=SU", { Note: "two\nlines" }), finding(104)] },
    { append: "Scores", rows: [{ Date: { day: MARCH_1 }, Cow: 1, Score: 0 }] },
  );
  await port.save(save);
  const back = saveOf({ append: "Findings", rows: [finding(105)] });
  await port.save(back);
  await port.save(saveOf({ append: "Findings", rows: [finding(106)] }));
  await port.takeBack(back.id);
  await port.createTable({
    name: "Rules",
    sheet: 'New & "odd"',
    columns: [
      { heading: "A\nB" },
      { heading: "Look", formula: 'HERD.RECHECK.DATE("DD",1)' },
      { heading: "From", numberFormat: "0.0" },
    ],
    rows: [{ "A\nB": "x", From: 1 }],
  });
  await port.createTable({ name: "More", sheet: "Plan", address: "H2", columns: [{ heading: "One" }], rows: [] });
  await port.writeBlock({
    sheet: "Plan",
    address: "H20",
    cells: [["=text", { day: MARCH_1 }, { formula: "HERD.RECHECK.DATE(1,2)", numberFormat: "0" }]],
  });
}

testWithValidator("a file stays valid by the Open XML SDK whatever is done to it", async () => {
  const store = new MemoryStore(startFile(startTables));
  expect(schemaErrors(store.bytes!)).toEqual([]);
  await workOn(openTables(new FileHost(store, { ids: IDS })));
  expect(schemaErrors(store.bytes!)).toEqual([]);
});

describe("a file that was worked on", () => {
  const store = new MemoryStore(startFile(startTables));
  const start = unzipSync(store.bytes!);
  let parts: Record<string, Uint8Array>;
  const part = (path: string): string => strFromU8(parts[path]!);
  beforeAll(async () => {
    await workOn(openTables(new FileHost(store, { ids: IDS })));
    parts = unzipSync(store.bytes!);
  });

  test("keeps every part in which nothing changed", () => {
    expect(part("xl/tables/table2.xml")).toBe(strFromU8(start["xl/tables/table2.xml"]!));
    expect(Object.keys(start).filter((path) => parts[path] === undefined)).toEqual([]);
  });

  test("marks text that looks like something else, so that editing the cell leaves it text", () => {
    const cell = /<c r="C7"[^>]*>/.exec(part("xl/worksheets/sheet1.xml"))![0];
    const style = Number(/ s="(\d+)"/.exec(cell)![1]);
    const styles = [...part("xl/styles.xml").matchAll(/<xf [^>]*?(\/>|>.*?<\/xf>)/g)].map(([xf]) => xf).slice(1);
    expect(styles[style]).toMatch(/ quotePrefix="1"/);
    expect(/<c r="C8"[^>]*>/.exec(part("xl/worksheets/sheet1.xml"))![0]).not.toMatch(/ s=/);
  });

  test("asks Excel to compute its formulas when it is opened", () => {
    expect(part("xl/workbook.xml")).toMatch(/<calcPr fullCalcOnLoad="1"\/>/);
  });

  test("stores calls of our functions as add-in functions, with the table's name in references to its own row", () => {
    expect(part("xl/tables/table4.xml")).toMatch(/_xldudf_HERD_RECHECK_DATE\("DD",1\)<\/calculatedColumnFormula>/);
    expect(part("xl/worksheets/sheet1.xml")).toMatch(/<c r="F7"><f>Findings\[\[#This Row\],\[Date\]\]\+28<\/f><\/c>/);
  });
});

test("formulas are computed before the file is put in its place, where something can compute them", async () => {
  const store = new MemoryStore(startFile(startTables));
  const marker = startFile([startTables[1]!]);
  const port = openTables(new FileHost(store, { ids: IDS, recompute: () => Promise.resolve(marker) }));
  await port.save(saveOf({ append: "Findings", rows: [finding(1)] }));
  expect(store.bytes).toBe(marker);
});

describe("a file on disk", () => {
  let folder: string;
  let path: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "tables-"));
    path = join(folder, "herd.xlsx");
    writeFileSync(path, startFile(startTables));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  test("is replaced whole", async () => {
    const port = openTables(new FileHost(nodeFileStore(path), { ids: IDS }));
    await port.save(saveOf({ append: "Findings", rows: [finding(103)] }));
    const again = openTables(new FileHost(nodeFileStore(path), { ids: IDS }));
    expect((await typedRows(again, "Findings")).length).toBe(4);
  });

  test("is not replaced where someone else has changed or deleted it", async () => {
    const store = nodeFileStore(path);
    const { version } = await store.read();
    writeFileSync(path, "something else");
    await expect(store.replace(new Uint8Array([1]), version)).rejects.toThrow(FileChanged);
    expect(readFileSync(path, "utf8")).toBe("something else");
    rmSync(path);
    await expect(store.replace(new Uint8Array([1]), version)).rejects.toThrow(FileGone);
    await expect(store.read()).rejects.toThrow(FileGone);
  });

  test("is left alone while Excel has it open", async () => {
    writeFileSync(join(folder, "~$herd.xlsx"), "");
    const port = openTables(new FileHost(nodeFileStore(path), { ids: IDS }));
    const error = await port
      .save(saveOf({ append: "Findings", rows: [finding(103)] }))
      .catch((reason: unknown) => reason);
    expect(error).toMatchObject({ kind: "failed", message: expect.stringMatching(/open in Excel/) as string });
  });

  test("tells of changes by others", async () => {
    const heard: string[] = [];
    const store = nodeFileStore(path);
    const unwatch = store.watch((version) => heard.push(version));
    await new Promise((resolve) => setTimeout(resolve, 50));
    writeFileSync(path, startFile([startTables[0]!]));
    for (let left = 40; left > 0 && heard.length === 0; left--) await new Promise((resolve) => setTimeout(resolve, 50));
    unwatch();
    expect(heard).toContain((await store.read()).version);
  });
});
