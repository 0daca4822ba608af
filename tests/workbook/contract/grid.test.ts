import { ICommandService, type IStyleData } from "@univerjs/core";
import {
  AddWorksheetMergeMutation,
  InsertSheetMutation,
  RemoveSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetNameMutation,
} from "@univerjs/sheets";
import { AddSheetTableMutation, SetSheetTableMutation, TableManager } from "@univerjs/sheets-table";
import { type OpenEngine, openEngine } from "../../../src/engine/open-engine";
import { toSnapshot } from "../../../src/engine/snapshot";
import { cellPosition, type CellPosition } from "../../../src/workbook/cell-address";
import {
  type Cells,
  formulaCell,
  hasFormula,
  put as putCell,
  shownValue,
  valueCell,
} from "../../../src/workbook/grid/tables/cells";
import { GridTableHost } from "../../../src/workbook/grid/tables/host";
import type { PlainCell } from "../../../src/workbook/port";
import { openTables } from "../../../src/workbook/saving/open-tables";
import type { TableHost } from "../../../src/workbook/table-host";
import { readWorkbook } from "../../../src/xlsx/read";
import { startFile } from "../../fakes/file/start-file";
import { type Faults, faults } from "../../fakes/faults";
import { tablePortContract } from "./contract";
import { refusedAs, startTables } from "./start";
import type { OtherUser, RawCell, RawLook, StartTable, TestBook } from "./test-book";

const engines: OpenEngine[] = [];
afterEach(async () => {
  for (const engine of engines.splice(0)) {
    // An engine that is closed while it computes never ends.
    await engine.settled();
    engine.close();
  }
}, 60_000);

let opened = 0;

function otherUser({ workbook, injector }: OpenEngine, protectedSheets: Set<string>): OtherUser {
  const tables = injector.get(TableManager);
  const unitId = workbook.getUnitId();
  const find = (name: string) => {
    for (const sheet of workbook.getSheets()) {
      const table = tables
        .getTablesBySubunitId(unitId, sheet.getSheetId())
        .find((known) => known.getDisplayName() === name);
      if (table !== undefined) return { sheet, table, ...table.getRangeInfo() };
    }
    throw new Error(`no table ${name}`);
  };
  const putAll = (
    sheetId: string,
    cells: readonly (readonly [row: number, column: number, value: PlainCell])[],
  ): void => {
    const cellValue: Cells = {};
    for (const [row, column, value] of cells) putCell(cellValue, row, column, valueCell(value));
    const params = { unitId, subUnitId: sheetId, cellValue };
    injector.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, params);
  };
  const put = (sheetId: string, row: number, column: number, value: PlainCell): void =>
    putAll(sheetId, [[row, column, value]]);
  const resize = (name: string, by: number): void => {
    const { sheet, table, startRow, startColumn, endRow, endColumn } = find(name);
    const newRange = { startRow, startColumn, endColumn, endRow: endRow + by };
    const params = {
      unitId,
      subUnitId: sheet.getSheetId(),
      tableId: table.getId(),
      config: { updateRange: { newRange } },
    };
    injector.get(ICommandService).syncExecuteCommand(SetSheetTableMutation.id, params);
  };
  const columnOf = (name: string, heading: string): number => {
    const { sheet, startRow, startColumn, endColumn } = find(name);
    for (let column = startColumn; column <= endColumn; column++) {
      if (shownValue(sheet.getCellRaw(startRow, column)) === heading) return column;
    }
    throw new Error(`no column ${heading}`);
  };
  const setRows = (name: string, change: (rows: PlainCell[][]) => PlainCell[][]): void => {
    const { sheet, startRow, startColumn, endRow, endColumn } = find(name);
    const all = Array.from({ length: endColumn - startColumn + 1 }, (_, at) => startColumn + at);
    const typed = all.filter((column) => !hasFormula(sheet.getCellRaw(startRow + 1, column)));
    const rows = Array.from({ length: endRow - startRow }, (_, down) =>
      typed.map((column) => shownValue(sheet.getCellRaw(startRow + 1 + down, column))),
    );
    const next = change(rows);
    resize(name, next.length - rows.length);
    const length = Math.max(rows.length, next.length);
    putAll(
      sheet.getSheetId(),
      Array.from({ length }, (_, down) => down).flatMap((down) =>
        (next[down] === undefined ? all : typed).map(
          (column) => [startRow + 1 + down, column, next[down]?.[typed.indexOf(column)] ?? null] as const,
        ),
      ),
    );
  };
  const idOf = (name: string) => ({ unitId, subUnitId: workbook.getSheetBySheetName(name)!.getSheetId() });
  const command = (id: string, params: object): void => {
    if (!injector.get(ICommandService).syncExecuteCommand(id, params)) throw new Error(`the grid refused ${id}`);
  };
  return {
    setCell: async (name, row, heading, value) => {
      const { sheet, startRow } = find(name);
      put(sheet.getSheetId(), startRow + 1 + row, columnOf(name, heading), value);
    },
    deleteRow: async (name, row) => setRows(name, (rows) => rows.filter((_, at) => at !== row)),
    insertRow: async (name, row, cells) =>
      setRows(name, (rows) => [...rows.slice(0, row), [...cells], ...rows.slice(row)]),
    renameTable: async (from, to) => tables.setTableByConfig(unitId, find(from).table.getId(), { name: to }),
    deleteTable: async (name) => tables.deleteTable(unitId, find(name).table.getId()),
    renameColumn: async (name, from, to) => {
      const { sheet, startRow } = find(name);
      put(sheet.getSheetId(), startRow, columnOf(name, from), to);
    },
    protectSheet: async (name) => {
      protectedSheets.add(name);
    },
    filter: async (name) => {
      const { sheet, table, startRow } = find(name);
      table
        .getTableFilters()
        .getFilterOutRows()
        .add(startRow + 1);
      if (table.getTableFilters().getFilterOutRows().size === 0) throw new Error(`no filter on ${sheet.getName()}`);
    },
    typeAt: async (name, address, value) => {
      const { row, column } = cellPosition(address);
      put(workbook.getSheetBySheetName(name)!.getSheetId(), row, column, value);
    },
    enterBlankFormula: async (name, address) => {
      const { row, column } = cellPosition(address);
      const cellValue: Cells = {};
      putCell(cellValue, row, column, formulaCell('=IF(TRUE,"","")'));
      command(SetRangeValuesMutation.id, { ...idOf(name), cellValue });
    },
    merge: async (name, area) => {
      const [first, last] = area.split(":").map(cellPosition) as [CellPosition, CellPosition];
      const range = { startRow: first.row, startColumn: first.column, endRow: last.row, endColumn: last.column };
      command(AddWorksheetMergeMutation.id, { ...idOf(name), ranges: [range] });
    },
    renameSheet: async (from, to) => command(SetWorksheetNameMutation.id, { ...idOf(from), name: to }),
    deleteSheet: async (name) => command(RemoveSheetMutation.id, { ...idOf(name), subUnitName: name }),
    typeBelow: async (name, down) => {
      const { sheet, startColumn, endRow } = find(name);
      put(sheet.getSheetId(), endRow + down, startColumn, "total");
    },
  };
}

/** Makes the grid refuse mutations, and lets others come in before each call of the host. */
function watched(engine: OpenEngine, steps: Faults): void {
  engine.injector.get(ICommandService).beforeCommandExecuted(({ id }, options) => {
    if (armed && WRITING.has(id) && options?.["fromFormula"] !== true) steps.step();
  });
}

/** Whether a host is at work. */
let armed = false;
const WRITING = new Set([
  SetRangeValuesMutation.id,
  SetSheetTableMutation.id,
  InsertSheetMutation.id,
  RemoveSheetMutation.id,
  AddSheetTableMutation.id,
]);

function rawCell({ workbook }: OpenEngine, sheetName: string, row: number, column: number): RawCell {
  const cell = workbook.getSheetBySheetName(sheetName)?.getCellRaw(row, column);
  const style = workbook.getStyles().getStyleByCell(cell);
  const numberFormat = style?.n?.pattern;
  const width = workbook.getSheetBySheetName(sheetName)?.getColumnWidth(column);
  return {
    value: shownValue(cell),
    hasFormula: hasFormula(cell),
    ...(numberFormat === undefined ? {} : { numberFormat }),
    look: lookOf(style ?? {}),
    ...(width === undefined ? {} : { width }),
  };
}

/** The grid's code for text on the right. */
const RIGHT = 3;

function lookOf({ bl, it, fs, cl, bg, ht, bd }: IStyleData): RawLook {
  return {
    ...(bl === 1 ? { bold: true } : {}),
    ...(it === 1 ? { italic: true } : {}),
    ...(fs === undefined ? {} : { size: fs }),
    ...(cl?.rgb == null ? {} : { colour: cl.rgb }),
    ...(bg?.rgb == null ? {} : { fill: bg.rgb }),
    ...(ht === RIGHT ? { right: true } : {}),
    ...(bd?.b?.cl.rgb == null ? {} : { lineBelow: bd.b.cl.rgb }),
  };
}

function openBook(start: readonly StartTable[]): Promise<TestBook> {
  const id = `book-${opened++}`;
  const engine = openEngine(toSnapshot(readWorkbook(startFile(start), []), { id }), []);
  engines.push(engine);
  const protectedSheets = new Set<string>();
  const steps = faults();
  watched(engine, steps);
  let turn = (): Promise<void> => Promise.resolve();
  const hosts: GridTableHost[] = [];
  const { workbook, injector } = engine;
  const tables = injector.get(TableManager);
  return Promise.resolve({
    user: (log) => {
      const host = new GridTableHost();
      host.turnTo({ workbook, injector, protectedSheets });
      hosts.push(host);
      const working = async <T>(work: () => Promise<T>): Promise<T> => {
        await turn();
        armed = true;
        return work().finally(() => {
          armed = false;
        });
      };
      const watchedHost: TableHost = {
        listTables: () => host.listTables(),
        readTable: (name) => host.readTable(name),
        applyEdits: (edits, begin) => working(() => host.applyEdits(edits, begin)),
        createTable: (table) => working(() => host.createTable(table)),
        writeBlock: (block, begin) => working(() => host.writeBlock(block, begin)),
        readBlock: (block) => host.readBlock(block),
        removeBlock: (block) => working(() => host.removeBlock(block)),
        watchChanges: (listener) => host.watchChanges(listener),
      };
      return openTables(watchedHost, log);
    },
    other: otherUser(engine, protectedSheets),
    cell: async (name, row, heading) => {
      for (const sheet of workbook.getSheets()) {
        const table = tables
          .getTablesBySubunitId(workbook.getUnitId(), sheet.getSheetId())
          .find((known) => known.getDisplayName() === name);
        if (table === undefined) continue;
        const { startRow, startColumn, endColumn } = table.getRangeInfo();
        for (let column = startColumn; column <= endColumn; column++) {
          if (shownValue(sheet.getCellRaw(startRow, column)) === heading) {
            return rawCell(engine, sheet.getName(), startRow + 1 + row, column);
          }
        }
      }
      throw new Error(`no column ${heading} in ${name}`);
    },
    bodyRows: async (name) => {
      const info = tables.getTableList(workbook.getUnitId()).find((known) => known.name === name)!;
      return info.range.endRow - info.range.startRow;
    },
    sheetCell: async (sheet, address) => {
      const { row, column } = cellPosition(address);
      return rawCell(engine, sheet, row, column);
    },
    sheetNames: async () => workbook.getSheets().map((sheet) => sheet.getName()),
    steps: steps.taken,
    failSteps: steps.fail,
    setTurn: (next) => {
      turn = next;
    },
    close: async () => {
      for (const host of hosts) host.turnTo(undefined);
    },
  });
}

tablePortContract({ name: "the grid", oneUser: true, open: openBook }, { runs: 10 });

test("neither a block nor a table is written over cells that a formula fills from elsewhere", async () => {
  const book = await openBook(startTables);
  const engine = engines.at(-1)!;
  const { workbook, injector } = engine;
  const cellValue: Cells = {};
  putCell(cellValue, 19, 7, formulaCell("=B3:B4*2"));
  const subUnitId = workbook.getSheetBySheetName("Plan")!.getSheetId();
  const params = { unitId: workbook.getUnitId(), subUnitId, cellValue };
  injector.get(ICommandService).syncExecuteCommand(SetRangeValuesMutation.id, params);
  // The engine gathers changes for less than this before it computes.
  await new Promise((resolve) => setTimeout(resolve, 150));
  await engine.settled();
  const port = book.user();
  const place = { sheet: "Plan", address: "G21" };
  expect(await refusedAs(port.writeBlock({ ...place, cells: [[1, 2]] }), "occupied")).toMatch(/H21/);
  const columns = [{ heading: "Cow" }, { heading: "Note" }];
  expect(await refusedAs(port.createTable({ name: "T", ...place, columns, rows: [] }), "occupied")).toMatch(/H21/);
});
