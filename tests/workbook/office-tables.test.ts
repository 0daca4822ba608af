import { OfficeHost } from "../../src/workbook/office/tables/host";
import { runExcel } from "../../src/workbook/office/tables/run";
import { openTables } from "../../src/workbook/saving/open-tables";
import { rowAsRead, type TablePort } from "../../src/workbook/table-port";
import { type FakeDocument, type FakeTable, type Habits, tableArea, USUAL_HABITS } from "../fakes/office/document";
import { columnOf, startDocument, tableOf } from "../fakes/office/start-document";
import { fakeRun } from "../fakes/office/workbook";
import { care, finding, findings, MARCH_1, refusedAs, saveOf, startTables, typedRows } from "./contract/start";

let document: FakeDocument;
let port: TablePort;

function open(tables = startTables, habits: Habits = USUAL_HABITS): void {
  document = startDocument(tables, habits);
  port = openTables(new OfficeHost(fakeRun(document, {})));
}

beforeEach(() => open());
afterEach(() => expect(document.misuses).toEqual([]));

/** Puts a totals row right below a table's last row. */
function addTotals(name: string): FakeTable {
  const table = tableOf(document, name);
  const { sheet, row, column, bodyRows } = table;
  sheet.put(row + bodyRows + 1, column, { value: "Total", numberFormat: "General" });
  table.totals = true;
  return table;
}

describe("a table with a row of totals", () => {
  test("takes new rows above it, with their formulas", async () => {
    const table = addTotals("Findings");
    await port.save(saveOf({ append: "Findings", rows: [finding("007"), finding(104)] }));
    expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7", "007", 104]);
    expect(table.sheet.cell(table.row + table.bodyRows + 1, table.column).value).toBe("Total");
    for (const down of [4, 5]) {
      expect(table.sheet.cell(table.row + down, columnOf(table, "Due")).formula).toBe("=[@Date]+28");
    }
  });

  test("gives them back", async () => {
    addTotals("Findings");
    const save = saveOf({ append: "Findings", rows: [finding(103)] });
    await port.save(save);
    await port.takeBack(save.id);
    expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7"]);
  });

  test("stays whole whichever step fails", async () => {
    addTotals("Findings");
    const from = document.faults.taken();
    await port.save(saveOf({ append: "Findings", rows: [finding(103)] }));
    const steps = document.faults.taken() - from;
    for (let after = 0; after <= steps; after++) {
      open();
      addTotals("Findings");
      document.faults.fail(after, 1);
      const save = saveOf({ append: "Findings", rows: [finding(103)] });
      const outcome = await port.save(save).then(
        () => "saved",
        () => "failed",
      );
      document.faults.fail(0, 0);
      const cows = (await typedRows(port, "Findings")).map((row) => row[1]);
      expect([after, cows]).toEqual([after, [101, 102, "B7", ...(outcome === "saved" ? [103] : [])]]);
      document.faults.fail(0, 0);
    }
  });
});

describe("a filtered table", () => {
  test("has its last rows emptied when they are taken back, for Excel deletes none under a filter", async () => {
    const table = tableOf(document, "Findings");
    table.filtered = true;
    const save = saveOf({ append: "Findings", rows: [finding(103), finding(104)] });
    await port.save(save);
    await port.takeBack(save.id);
    expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7"]);
    expect(tableArea(table).rows).toBe(6);
    await port.save(saveOf({ append: "Findings", rows: [finding(105)] }));
    expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7", 105]);
    expect(tableArea(table).rows).toBe(6);
  });

  test("keeps rows below which others wrote, and says why", async () => {
    const save = saveOf({ append: "Findings", rows: [finding(103)] });
    await port.save(save);
    await port.save(saveOf({ append: "Findings", rows: [finding(104)] }));
    tableOf(document, "Findings").filtered = true;
    expect(await refusedAs(port.takeBack(save.id), "filtered")).toMatch(/clear the filter/);
    expect((await typedRows(port, "Findings")).length).toBe(5);
  });
});

describe("text in a language that has the word for TRUE", () => {
  beforeEach(() => open(startTables, { ...USUAL_HABITS, trueWords: new Set(["sand", "wahr"]) }));

  test("is put right after Excel took it for TRUE", async () => {
    const save = saveOf(
      { append: "Care", rows: [{ Cow: "Wahr", What: "sand" }] },
      { update: rowAsRead(await port.readTable("Care"), 0), set: { Done: "sand" } },
    );
    await port.save(save);
    expect(await typedRows(port, "Care")).toEqual([
      [101, "bandage off", MARCH_1 + 3, "sand"],
      [102, "block off", MARCH_1 + 28, null],
      ["Wahr", "sand", null, null],
    ]);
    await port.takeBack(save.id);
    expect(await typedRows(port, "Care")).toEqual(care.rows);
  });

  test("is put right in new tables and blocks", async () => {
    await port.createTable({
      name: "Beds",
      sheet: "Beds",
      columns: [{ heading: "Bedding" }],
      rows: [{ Bedding: "sand" }],
    });
    expect(await typedRows(port, "Beds")).toEqual([["sand"]]);
    await port.writeBlock({ sheet: "Beds", address: "D1", cells: [["sand", { formula: "1+1" }]] });
    const beds = document.sheets.find(({ name }) => name === "Beds")!;
    expect([beds.cell(0, 3), beds.cell(0, 4).formula]).toEqual([{ value: "sand", numberFormat: "General" }, "=1+1"]);
  });
});

test("plain words carry no text mark", async () => {
  let handed: unknown[] = [];
  const enter = document.enter.bind(document);
  document.enter = (area, rows) => {
    handed = [...handed, ...rows.flat()];
    enter(area, rows);
  };
  await port.save(saveOf({ append: "Care", rows: [{ Cow: "Bella", What: "block off", Done: "M2" }] }));
  expect(handed).toEqual(["Bella", "block off", null, "'M2"]);
});

test("answers larger than Excel on the web gives are asked for in parts", async () => {
  const note = "a long note ".repeat(120);
  const rows = Array.from({ length: 5_000 }, (_, row) => [MARCH_1, row, "DD", null, note]);
  open([{ ...findings, rows }]);
  const content = await port.readTable("Findings");
  expect(content.rows.map((row) => row[1])).toEqual(rows.map((row) => row[1]));
});

test("a table that shrinks while it is read in parts is read again", async () => {
  const rows = Array.from({ length: 30_000 }, (_, row) => [MARCH_1, row, "DD", null, null]);
  open([{ ...findings, rows }]);
  let batches = 0;
  document.turn = async () => {
    batches += 1;
    if (batches === 4) tableOf(document, "Findings").bodyRows -= 1_000;
  };
  expect((await port.readTable("Findings")).rows.length).toBe(29_000);
});

test("a table that moves between check and writing still gets its row, and nothing else is touched", async () => {
  let batches = 0;
  document.turn = async () => {
    batches += 1;
    if (batches === 4) moveDown(tableOf(document, "Findings"), 2);
  };
  await port.save(saveOf({ append: "Findings", rows: [finding(103)] }));
  document.turn = () => Promise.resolve();
  expect((await typedRows(port, "Findings")).map((row) => row[1])).toEqual([101, 102, "B7", 103]);
});

/** What inserting rows above a table does. */
function moveDown(table: FakeTable, rows: number): void {
  const { sheet } = table;
  for (let row = table.row + table.bodyRows; row >= table.row; row--) {
    for (let column = table.column; column < table.column + table.width; column++) {
      sheet.put(row + rows, column, sheet.cell(row, column));
      sheet.cells.get(row)?.delete(column);
    }
  }
  table.row += rows;
}

test("a save waits for the end of cell editing, and is one step of undo where Excel can", async () => {
  const asked: unknown[] = [];
  let newest = "1.19";
  Object.assign(globalThis, {
    Excel: {
      run: (options: unknown) => {
        asked.push(options);
        return Promise.resolve();
      },
    },
    Office: { context: { requirements: { isSetSupported: (_: string, version: string) => version <= newest } } },
  });
  await runExcel(() => Promise.resolve());
  newest = "1.20";
  await runExcel(() => Promise.resolve());
  expect(asked).toEqual([{ delayForCellEdit: true }, { delayForCellEdit: true, mergeUndoGroup: true }]);
  for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
});

describe("the stand-in itself is strict", () => {
  const misuse = async (work: (context: Excel.RequestContext) => Promise<unknown>): Promise<void> => {
    await expect(fakeRun(document, {})(work)).rejects.toThrow(/misuse/);
    expect(document.misuses.length).toBe(1);
    document.misuses.length = 0;
  };

  test("a property that was not loaded", () =>
    misuse(async (context) => {
      const range = context.workbook.tables.getItem("Care").getDataBodyRange();
      await context.sync();
      return range.values;
    }));

  test("a read before sync", () =>
    misuse((context) => {
      const range = context.workbook.tables.getItem("Care").getDataBodyRange();
      range.load("values");
      return Promise.resolve(range.values);
    }));

  test("a heading written over", () =>
    misuse(async (context) => {
      context.workbook.worksheets.getItem("Plan").getRange("B2").values = [["Animal"]];
      await context.sync();
    }));

  test("commands that are never sent", () =>
    misuse((context) => {
      context.workbook.worksheets.getItem("Plan").getRange("H20").values = [["x"]];
      return Promise.resolve();
    }));
});
