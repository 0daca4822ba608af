import { ICommandService } from "@univerjs/core";
import { RemoveSheetMutation, SetRangeValuesMutation, SheetsSelectionsService } from "@univerjs/sheets";
import { AddSheetTableMutation, DeleteSheetTableMutation } from "@univerjs/sheets-table";
import { type OpenEngine, openEngine } from "../../../../src/engine/open-engine";
import { toSnapshot } from "../../../../src/engine/snapshot";
import type { BookHost } from "../../../../src/workbook/book-host";
import { cellAddress, cellPosition } from "../../../../src/workbook/cell-address";
import { GridBookHost } from "../../../../src/workbook/grid/book/host";
import { type Cells, hasFormula, put, shownValue, valueCell } from "../../../../src/workbook/grid/tables/cells";
import { openBook } from "../../../../src/workbook/saving/open-book";
import { readWorkbook } from "../../../../src/xlsx/read";
import { faults } from "../../../fakes/faults";
import { bookPortContract } from "./contract";
import { startSheetsFile } from "./start-sheets-file";
import type { StartSheet, TestSheets } from "./test-sheets";

/** The engine gathers changes for less than this before it computes. */
const BEFORE_COMPUTING_MS = 150;

/** Engines of a test, which go on computing what it wrote last while the next one runs. */
interface Done {
  readonly engines: readonly OpenEngine[];
  readonly endedAt: number;
}

let engines: OpenEngine[] = [];
let before: Done | undefined;

/** An engine that is closed while it computes never ends. */
async function close(done: Done | undefined): Promise<void> {
  if (done === undefined) return;
  const wait = done.endedAt + BEFORE_COMPUTING_MS - performance.now();
  if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
  for (const engine of done.engines) {
    await engine.settled();
    engine.close();
  }
}

afterEach(async () => {
  const done = before;
  before = { engines, endedAt: performance.now() };
  engines = [];
  await close(done);
}, 60_000);
afterAll(() => close(before), 60_000);

const WRITING = new Set([SetRangeValuesMutation.id, AddSheetTableMutation.id, DeleteSheetTableMutation.id]);
let opened = 0;

/** The host, which is at work only while one of its writing methods runs. */
function watchedHost(host: GridBookHost, arm: (armed: boolean) => void): BookHost {
  const working = async <T>(work: () => Promise<T>): Promise<T> => {
    arm(true);
    return work().finally(() => arm(false));
  };
  return {
    readBook: () => host.readBook(),
    readSheet: (name) => host.readSheet(name),
    show: (place) => host.show(place),
    editCells: (edits) => working(() => host.editCells(edits)),
    takenNames: () => host.takenNames(),
    makeTable: (table) => working(() => host.makeTable(table)),
    unmakeTable: (name) => working(() => host.unmakeTable(name)),
    brokenFormulas: () => host.brokenFormulas(),
    reenter: (cells) => host.reenter(cells),
    functionsLoaded: () => host.functionsLoaded(),
  };
}

async function open(sheets: readonly StartSheet[]): Promise<TestSheets> {
  const id = `sheets-${opened++}`;
  const model = readWorkbook(await startSheetsFile(sheets), ["CELL.SCORE"]);
  const engine = openEngine(toSnapshot(model, { id }), []);
  engines.push(engine);
  await engine.settled();
  const { workbook, injector } = engine;
  const protectedSheets = new Set<string>();
  const steps = faults();
  let armed = false;
  const commands = injector.get(ICommandService);
  commands.beforeCommandExecuted(({ id: command }, options) => {
    if (armed && WRITING.has(command) && options?.["fromFormula"] !== true) steps.step();
  });
  const hosts: GridBookHost[] = [];
  return {
    user: (log) => {
      const host = new GridBookHost();
      host.turnTo({ workbook, injector, protectedSheets });
      hosts.push(host);
      return openBook(
        watchedHost(host, (at) => {
          armed = at;
        }),
        log,
      );
    },
    type: async (sheet, address, value) => {
      const { row, column } = cellPosition(address);
      const cellValue: Cells = {};
      put(cellValue, row, column, valueCell(value));
      const subUnitId = workbook.getSheetBySheetName(sheet)!.getSheetId();
      commands.syncExecuteCommand(SetRangeValuesMutation.id, { unitId: workbook.getUnitId(), subUnitId, cellValue });
    },
    protectSheet: async (sheet) => {
      protectedSheets.add(sheet);
    },
    deleteSheet: async (sheet) => {
      const subUnitId = workbook.getSheetBySheetName(sheet)!.getSheetId();
      commands.syncExecuteCommand(RemoveSheetMutation.id, {
        unitId: workbook.getUnitId(),
        subUnitId,
        subUnitName: sheet,
      });
    },
    cell: async (sheet, address) => {
      const { row, column } = cellPosition(address);
      const cell = workbook.getSheetBySheetName(sheet)?.getCellRaw(row, column);
      const numberFormat = workbook.getStyles().getStyleByCell(cell)?.n?.pattern;
      return {
        value: shownValue(cell),
        hasFormula: hasFormula(cell),
        ...(numberFormat === undefined ? {} : { numberFormat }),
      };
    },
    shown: () => {
      const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
      if (range === undefined) return undefined;
      const first = cellAddress({ row: range.startRow, column: range.startColumn });
      const last = cellAddress({ row: range.endRow, column: range.endColumn });
      return `${workbook.getActiveSheet().getName()}!${first === last ? first : `${first}:${last}`}`;
    },
    steps: steps.taken,
    failSteps: steps.fail,
    close: async () => {
      for (const host of hosts) host.turnTo(undefined);
    },
  };
}

bookPortContract({ name: "the grid", shows: true, computes: true, open });
