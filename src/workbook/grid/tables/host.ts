import { type ICommandInfo, ICommandService, type IDisposable, type IExecutionOptions } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import {
  AddSheetTableMutation,
  DeleteSheetTableMutation,
  SetSheetTableMutation,
  TableManager,
} from "@univerjs/sheets-table";
import type { Unwatch } from "../../port";
import { planEdits } from "../../saving/edit-plan";
import type { BegunBlock, StandingCell, WrittenBlock } from "../../saving/written-block";
import { tableGone, workbookClosed } from "../../table-error";
import type { AppliedEdit, Edit, RowCounts, TableHost } from "../../table-host";
import type { CellBlock, NewTable, TableContent, TableInfo, WorkbookChange } from "../../table-port";
import { blockCells, removalOf } from "./blocks";
import { editMutations } from "./edit-mutations";
import { knownTables } from "./known-table";
import { foundBefore } from "./looks";
import { blockMutations, tableMutations } from "./make";
import { inSequence, run } from "./mutations";
import type { OpenGrid } from "./open-grid";

type Listener = (change: WorkbookChange) => void;

/** The tables of the workbook open in the grid. One host serves all workbooks opened after each other. */
export class GridTableHost implements TableHost {
  private grid: OpenGrid | undefined;
  private watch: IDisposable | undefined;
  private readonly listeners = new Set<Listener>();

  /** Turns to another grid; `undefined` while none is open. */
  turnTo(grid: OpenGrid | undefined): void {
    this.watch?.dispose();
    this.grid = grid;
    this.watch = grid?.injector
      .get(ICommandService)
      .onCommandExecuted((command, options) => this.hear(command, options));
    this.tell({ source: "local" });
  }

  async listTables(): Promise<readonly TableInfo[]> {
    return knownTables(await this.open()).map(({ info }) => info);
  }

  async readTable(name: string): Promise<TableContent> {
    const table = knownTables(await this.open()).find(({ info }) => info.name === name);
    if (table === undefined) throw tableGone(name);
    return table.content;
  }

  async applyEdits(edits: readonly Edit[], begin: (rowCounts: RowCounts) => void): Promise<readonly AppliedEdit[]> {
    const grid = await this.open();
    const tables = knownTables(grid);
    const plan = planEdits(edits, tables);
    const parts = plan.tables.map((part) =>
      editMutations(
        grid,
        tables.find(({ info }) => info.name === part.info.name)!,
        part,
      ),
    );
    begin(Object.fromEntries(plan.tables.map(({ info }) => [info.name, info.rowCount])));
    // Nothing else happens in the page between the check and the last mutation.
    run(grid, {
      redos: parts.flatMap(({ redos }) => redos),
      undos: [...parts].reverse().flatMap(({ undos }) => undos),
    });
    return plan.applied();
  }

  async createTable(table: NewTable): Promise<void> {
    const grid = await this.open();
    run(grid, inSequence(tableMutations(grid, table)));
  }

  async writeBlock(block: CellBlock, begin: (begun: BegunBlock) => void): Promise<WrittenBlock> {
    const grid = await this.open();
    const { sheet, address, charts = [] } = block;
    const madeSheet = !grid.workbook.getSheetBySheetName(sheet);
    const before = foundBefore(grid, block);
    const chartsLeftOut = charts.map(({ title }) => title);
    const begun: BegunBlock = { ...before, madeSheet, charts: [], chartsLeftOut };
    const mutations = inSequence(blockMutations(grid, block, before.widened));
    begin(begun);
    run(grid, mutations);
    return { sheet, address, cells: blockCells(grid, block) ?? [], ...begun };
  }

  async readBlock(block: CellBlock): Promise<readonly (readonly StandingCell[])[] | undefined> {
    return blockCells(await this.open(), block);
  }

  async removeBlock(block: WrittenBlock): Promise<void> {
    const grid = await this.open();
    run(grid, inSequence(removalOf(grid, block)));
  }

  watchChanges(listener: Listener): Unwatch {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  private open(): Promise<OpenGrid> {
    return this.grid === undefined ? Promise.reject(workbookClosed()) : Promise.resolve(this.grid);
  }

  /** Results of formulas are no change of what is in the workbook. */
  private hear({ id, params }: ICommandInfo, options: IExecutionOptions | undefined): void {
    if (!HEARD.has(id) || options?.["fromFormula"] === true || this.grid === undefined) return;
    const { subUnitId, cellValue } = params as { subUnitId?: string; cellValue?: Record<number, unknown> };
    const known = subUnitId !== undefined && cellValue !== undefined;
    this.tell({ source: "local", ...(known ? tableNameOf(this.grid, subUnitId, cellValue) : {}) });
  }

  private tell(change: WorkbookChange): void {
    for (const listener of [...this.listeners]) listener(change);
  }
}

const HEARD = new Set([
  SetRangeValuesMutation.id,
  SetSheetTableMutation.id,
  AddSheetTableMutation.id,
  DeleteSheetTableMutation.id,
]);

/** The table in which cells were written, if they lie in just one. */
function tableNameOf(
  { workbook, injector }: OpenGrid,
  sheetId: string,
  cells: Readonly<Record<number, unknown>>,
): { readonly table?: string } {
  const rows = Object.keys(cells).map(Number);
  const tables = injector.get(TableManager).getTablesInfoBySubunitId(workbook.getUnitId(), sheetId);
  const met = tables.filter(({ range }) => rows.some((row) => row >= range.startRow && row <= range.endRow));
  return met.length === 1 ? { table: met[0]!.name } : {};
}
