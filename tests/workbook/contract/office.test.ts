import { cellPosition, type CellPosition } from "../../../src/workbook/cell-address";
import { OfficeHost } from "../../../src/workbook/office/tables/host";
import type { PlainCell } from "../../../src/workbook/port";
import { openTables } from "../../../src/workbook/saving/open-tables";
import type { CellBlock, TablePort } from "../../../src/workbook/table-port";
import {
  type FakeDocument,
  type FakeSheet,
  type FakeTable,
  type Habits,
  USUAL_HABITS,
} from "../../fakes/office/document";
import { columnOf, startDocument, tableOf } from "../../fakes/office/start-document";
import { deleteTableRow, insertTableRows } from "../../fakes/office/table-rows";
import { fakeRun } from "../../fakes/office/workbook";
import { tablePortContract } from "./contract";
import type { OtherUser, RawCell, RawLook, TestBook, TestHost } from "./test-book";

const documents: FakeDocument[] = [];
afterEach(() => {
  for (const document of documents.splice(0)) expect(document.misuses).toEqual([]);
});

function otherUser(document: FakeDocument): OtherUser {
  const changed = (table: FakeTable): void => document.emit({ type: "changed", table }, "other");
  const put = (sheet: FakeSheet, row: number, column: number, value: PlainCell): void =>
    sheet.put(row, column, { value: value ?? "", numberFormat: sheet.cell(row, column).numberFormat });
  const findSheet = (name: string): FakeSheet => document.sheets.find((sheet) => sheet.name === name)!;
  return {
    setCell: async (name, row, heading, value) => {
      const table = tableOf(document, name);
      put(table.sheet, table.row + 1 + row, columnOf(table, heading), value);
      changed(table);
    },
    deleteRow: async (name, row) => deleteTableRow(document, tableOf(document, name), row),
    insertRow: async (name, row, cells) => {
      const table = tableOf(document, name);
      insertTableRows(document, table, row, 1);
      cells.forEach((value, at) => put(table.sheet, table.row + 1 + row, table.column + at, value));
    },
    renameTable: async (from, to) => {
      tableOf(document, from).name = to;
    },
    deleteTable: async (name) => {
      document.tables.splice(document.tables.indexOf(tableOf(document, name)), 1);
    },
    renameColumn: async (name, from, to) => {
      const table = tableOf(document, name);
      put(table.sheet, table.row, columnOf(table, from), to);
    },
    protectSheet: async (name) => {
      findSheet(name).protected = true;
    },
    filter: async (name) => {
      tableOf(document, name).filtered = true;
    },
    typeAt: async (name, address, value) => {
      const { row, column } = cellPosition(address);
      put(findSheet(name), row, column, value);
    },
    enterBlankFormula: async (name, address) => {
      const { row, column } = cellPosition(address);
      findSheet(name).put(row, column, { value: "", formula: '=IF(TRUE,"","")', numberFormat: "General" });
    },
    merge: async (name, area) => {
      const [first, last] = area.split(":").map(cellPosition) as [CellPosition, CellPosition];
      const size = { rows: last.row - first.row + 1, columns: last.column - first.column + 1 };
      findSheet(name).merges.push({ ...first, ...size });
    },
    renameSheet: async (from, to) => {
      findSheet(from).name = to;
    },
    deleteSheet: async (name) => document.removeSheet(findSheet(name)),
    typeBelow: async (name, down) => {
      const { sheet, row, column, bodyRows } = tableOf(document, name);
      put(sheet, row + bodyRows + down, column, "total");
    },
  };
}

function rawCell(sheet: FakeSheet | undefined, row: number, column: number): RawCell {
  const { value, formula, numberFormat } = sheet?.cell(row, column) ?? { value: "", numberFormat: "General" };
  const width = sheet?.widths.get(column) ?? USUAL_WIDTH;
  const look = lookOf(sheet?.looks.get(`${row},${column}`));
  return { value: value === "" ? null : value, hasFormula: formula !== undefined, numberFormat, look, width };
}

const USUAL_WIDTH = 48;

function lookOf(set: Readonly<Record<string, unknown>> = {}): RawLook {
  const names = {
    "font/bold": "bold",
    "font/italic": "italic",
    "font/size": "size",
    "font/color": "colour",
    "fill/color": "fill",
    "borders/EdgeBottom/color": "lineBelow",
  };
  const look = Object.entries(names).flatMap(([name, own]) => (set[name] === undefined ? [] : [[own, set[name]]]));
  return Object.fromEntries([...look, ...(set["horizontalAlignment"] === "Right" ? [["right", true]] : [])]) as RawLook;
}

function officeHost(name: string, habits: Habits): TestHost {
  return {
    name,
    mayLeaveBlankRows: habits.growth !== "all",
    open: async (tables): Promise<TestBook> => {
      const document = startDocument(tables, habits);
      documents.push(document);
      return {
        user: (log) => openTables(new OfficeHost(fakeRun(document, {})), log),
        other: otherUser(document),
        cell: async (table, row, heading) => {
          const known = tableOf(document, table);
          return rawCell(known.sheet, known.row + 1 + row, columnOf(known, heading));
        },
        bodyRows: async (table) => tableOf(document, table).bodyRows,
        sheetCell: async (sheet, address) => {
          const { row, column } = cellPosition(address);
          return rawCell(
            document.sheets.find((known) => known.name === sheet),
            row,
            column,
          );
        },
        sheetNames: async () => document.sheets.map(({ name: known }) => known),
        steps: document.faults.taken,
        failSteps: document.faults.fail,
        setTurn: (turn) => {
          document.turn = turn;
        },
        close: async () => {
          document.open = false;
        },
      };
    },
  };
}

tablePortContract(officeHost("Excel", USUAL_HABITS), { runs: 60 });
tablePortContract(
  officeHost("an Excel that does little by itself", {
    ...USUAL_HABITS,
    growth: "none",
    fillsDown: false,
  }),
  { runs: 60 },
);
tablePortContract(officeHost("an Excel that takes in only one row", { ...USUAL_HABITS, growth: "first" }), {
  runs: 30,
});

const area = (firstRow: number, column: number) => ({
  firstRow,
  firstColumn: column,
  lastRow: firstRow + 1,
  lastColumn: column,
});

const charted: CellBlock = {
  id: "chart",
  title: "By month",
  sheet: "By month",
  address: "B2",
  cells: [
    ["Month", "New", "Again"],
    ["May", 3, 1],
    ["June", 4, 2],
  ],
  charts: [
    {
      type: "stacked columns",
      title: "Lesions",
      altText: "Lesions of each month",
      categories: area(1, 0),
      series: [
        { name: "New", values: area(1, 1) },
        { name: "Again", values: area(1, 2) },
      ],
      place: { firstRow: 4, firstColumn: 0, lastRow: 12, lastColumn: 4 },
    },
  ],
};

test("charts of a block follow its cells and go with it", async () => {
  const document = startDocument([], USUAL_HABITS);
  documents.push(document);
  const port = openTables(new OfficeHost(fakeRun(document, {})));
  await port.writeBlock(charted);
  const [sheet] = document.sheets;
  const cells = (column: number) => ({ row: 2, column, rows: 2, columns: 1 });
  expect(sheet?.charts).toEqual([
    {
      name: "Lesions (By month B2, 1)",
      type: "ColumnStacked",
      title: "Lesions",
      over: [
        { row: 5, column: 1, rows: 1, columns: 1 },
        { row: 13, column: 5, rows: 1, columns: 1 },
      ],
      series: [
        { name: "New", values: cells(2), categories: cells(1) },
        { name: "Again", values: cells(3), categories: cells(1) },
      ],
    },
  ]);
  sheet?.charts.push({ name: "own", type: "Line", title: "", over: [], series: [] });
  await port.takeBack("chart");
  expect(document.sheets).toHaveLength(1);
  expect(sheet?.charts.map(({ name }) => name)).toEqual(["own"]);
});

test("charts of a block that broke off go when it is taken back", async () => {
  const steps = await stepsOf(async () => undefined);
  for (let after = 0; after < steps; after++) {
    await stepsOf(async (document, port) => {
      document.faults.fail(after, 3);
      await port.writeBlock(charted).catch(() => undefined);
      document.faults.fail(0, 0);
      for (const { id } of port.pastSaves()) await port.takeBack(id);
      const named = document.sheets.flatMap(({ charts }) => charts.filter(({ name }) => name.startsWith("Lesions")));
      expect([after, named]).toEqual([after, []]);
    });
  }
});

/** Steps that writing takes where nothing fails. */
async function stepsOf(work: (document: FakeDocument, port: TablePort) => Promise<void>): Promise<number> {
  const document = startDocument([], USUAL_HABITS);
  documents.push(document);
  const port = openTables(new OfficeHost(fakeRun(document, {})));
  await work(document, port);
  const from = document.faults.taken();
  await port.writeBlock(charted);
  return document.faults.taken() - from;
}
