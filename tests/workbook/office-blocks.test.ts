import { OfficeHost } from "../../src/workbook/office/tables/host";
import { openTables } from "../../src/workbook/saving/open-tables";
import type { CellBlock, NewTable, TablePort } from "../../src/workbook/table-port";
import { type FakeDocument, type FakeSheet, USUAL_HABITS } from "../fakes/office/document";
import type { FakeCell } from "../fakes/office/entry";
import { startDocument } from "../fakes/office/start-document";
import { fakeRun } from "../fakes/office/workbook";
import { refusal, refusedAs, startTables } from "./contract/start";

let document: FakeDocument;
let port: TablePort;
let plan: FakeSheet;

beforeEach(open);
afterEach(() => expect(document.misuses).toEqual([]));

function open(): void {
  document = startDocument(startTables, USUAL_HABITS);
  port = openTables(new OfficeHost(fakeRun(document, {})));
  plan = document.findSheet("Plan")!;
}

const block: CellBlock = {
  id: "block",
  title: "Cows",
  sheet: "Plan",
  address: "H20",
  cells: [
    [{ value: "Cows", look: "label" }, "=1+1"],
    [{ formula: "COUNT(Findings[Cow])", numberFormat: "0" }, null],
  ],
  room: { rows: 4, columns: 3 },
};

const table: NewTable = {
  name: "Rules",
  sheet: "Plan",
  address: "H20",
  columns: [{ heading: "Lesion" }, { heading: "Days", numberFormat: "0" }],
  rows: [{ Lesion: "DD", Days: 7 }, { Lesion: "SU" }],
};

const makings: readonly (readonly [string, () => Promise<unknown>])[] = [
  ["a block", () => port.writeBlock(block)],
  ["a table", () => port.createTable(table)],
];

describe.each(makings)("%s", (_, write) => {
  test("is not written over cells that a formula fills from elsewhere, blank ones too", async () => {
    plan.spills.push({ row: 15, column: 8, rows: 6, columns: 1 });
    expect(await refusedAs(write(), "occupied")).toMatch(/H20:[IJ]2\d on sheet Plan are in use/);
    expect(plan.cell(19, 7).value).toBe("");
  });

  test.each<readonly [string, FakeCell]>([
    ["text", { value: "12", numberFormat: "@" }],
    ["a number", { value: 12, numberFormat: "0.0" }],
    ["text that looks like a formula", { value: "=SUM(A1)", numberFormat: "General" }],
    ["a formula that shows a blank", { value: "", formula: "=B2", numberFormat: "General" }],
  ])("gives way to %s that someone puts there meanwhile", async (__, cell) => {
    const places = [
      [19, 7],
      [20, 8],
    ] as const;
    for (const [row, column] of places) {
      for (let at = 1; ; at++) {
        open();
        let turns = 0;
        document.turn = async () => {
          turns += 1;
          if (turns === at) plan.put(row, column, { ...cell });
        };
        const outcome = await write().then(
          () => "written",
          async (error: unknown) => (await refusal(Promise.reject(error as Error))).kind,
        );
        if (turns < at) break;
        const found = plan.cell(row, column);
        const shown = cell.formula === undefined ? found.value : found.formula;
        expect([at, shown]).toEqual([at, cell.formula ?? cell.value]);
        if (outcome === "written") continue;
        expect([outcome, found.numberFormat]).toEqual(["occupied", cell.numberFormat]);
        const others = [...plan.cells].flatMap(([down, cells]) =>
          down < 19 ? [] : [...cells].filter(([right, { value }]) => value !== "" && right !== column),
        );
        expect(others).toEqual([]);
        expect(document.tables).toHaveLength(startTables.length);
      }
    }
  });

  test("that breaks off leaves the looks beside its own cells alone", async () => {
    const looks = { "fill/color": "#FFFF00" };
    const from = document.faults.taken();
    await write();
    const steps = document.faults.taken() - from;
    for (let after = 0; after < steps; after++) {
      open();
      plan.looks.set("22,9", looks);
      plan.put(22, 9, { value: "", numberFormat: "0.000" });
      document.faults.fail(after, 1);
      await write().catch(() => undefined);
      expect([after, plan.looks.get("22,9")]).toEqual([after, looks]);
      expect(plan.cell(22, 9).numberFormat).toBe("0.000");
    }
  });
});

test("a sheet that someone else makes under the same name is theirs", async () => {
  const own = { ...block, sheet: "By month" };
  for (let at = 1; ; at++) {
    open();
    let turns = 0;
    document.turn = async () => {
      turns += 1;
      if (turns === at && document.findSheet("By month") === undefined) {
        document.addSheet("by Month").put(0, 0, { value: "theirs", numberFormat: "General" });
      }
    };
    await port.writeBlock(own);
    if (turns < at) break;
    const theirs = document.sheets.find(({ name }) => name === "by Month");
    if (theirs === undefined) continue;
    await port.takeBack("block");
    expect(theirs.cell(0, 0).value).toBe("theirs");
    expect(document.sheets).toContain(theirs);
  }
});

test("a sheet that cannot be deleted stays, and the block is out", async () => {
  await port.writeBlock({ ...block, sheet: "By month" });
  const remove = jest.spyOn(document, "removeSheet").mockImplementation(() => {
    throw new Error("the workbook is protected");
  });
  await port.takeBack("block");
  expect(remove).toHaveBeenCalled();
  expect(port.pastSaves()).toEqual([]);
  expect(document.findSheet("By month")?.cell(19, 7).value).toBe("");
});
