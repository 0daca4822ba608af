import { cellAddress, cellPosition, type CellPosition } from "../cell-address";
import { isDateFormat, ISO_DATE } from "../number-format";
import { areaText } from "../plain-book";
import { areaFrom, meets } from "../plain-room";
import type { Unwatch } from "../port";
import { planEdits, type RowWrite, type TablePlan } from "../saving/edit-plan";
import { plainValue } from "../saving/row-match";
import { contentOf as writtenInto, isWritten, styleOf } from "../saving/block-cells";
import {
  type BegunBlock,
  formatsBefore,
  meantCells,
  type StandingCell,
  standingCells,
  type WrittenBlock,
} from "../saving/written-block";
import {
  cellsMerged,
  cellsOccupied,
  nameTaken,
  sheetProtected,
  TableError,
  tableFull,
  tableGone,
} from "../table-error";
import type { AppliedEdit, Edit, RowCounts, TableHost } from "../table-host";
import {
  type BlockCell,
  type CellBlock,
  isDay,
  type NewTable,
  type TableContent,
  type TableInfo,
  type WorkbookChange,
} from "../table-port";
import { standingCell, widenedBy, withoutBlock, withWidths } from "./blocks";
import { type BookState, contentOf, infoOf, type MemoryBook, type MemoryCell, type MemoryTable } from "./book";
import { sheetOf, withCells } from "./cells";

/** One user's view of a workbook in memory. */
export class MemoryHost implements TableHost {
  constructor(private readonly book: MemoryBook) {}

  async listTables(): Promise<readonly TableInfo[]> {
    await this.book.beforeStep("list");
    const { state } = this.book;
    return state.tables.map((table) => infoOf(table, state));
  }

  async readTable(name: string): Promise<TableContent> {
    await this.book.beforeStep("read");
    return contentOf(this.book.table(name), this.book.state);
  }

  async applyEdits(edits: readonly Edit[], begin: (rowCounts: RowCounts) => void): Promise<readonly AppliedEdit[]> {
    await this.book.beforeStep("check");
    this.plan(edits);
    await this.book.beforeStep("write");
    // Others may have written while this user waited: only what is checked and put in place in one go is safe.
    const { state } = this.book;
    const plan = this.plan(edits);
    begin(Object.fromEntries(plan.tables.map(({ info }) => [info.name, info.rowCount])));
    const tables = state.tables.map((table) => {
      const own = plan.tables.find(({ info }) => info.name === table.name);
      return own === undefined ? table : edited(table, own, state, this.book.rowLimit);
    });
    this.book.replace(
      { ...state, tables },
      this,
      plan.tables.map(({ info }) => info.name),
    );
    await this.answer();
    return plan.applied();
  }

  async createTable({ name, sheet, address = "A1", columns, rows }: NewTable): Promise<void> {
    await this.book.beforeStep("write");
    const { state } = this.book;
    if (state.tables.some((table) => table.name === name)) throw nameTaken(name);
    const at = cellPosition(address);
    const table: MemoryTable = {
      name,
      sheet,
      at,
      columns: columns.map(({ heading, formula, numberFormat }) => ({
        heading,
        // Nothing computes here: the column shows its formula.
        ...(formula === undefined ? {} : { calculate: () => `=${formula}` }),
        ...(numberFormat === undefined ? {} : { numberFormat }),
      })),
      rows: rows.map((row) => columns.map(({ heading }) => plainValue(row[heading] ?? null))),
      filtered: false,
    };
    const withSheet = stateWithSheet(state, sheet);
    refuseOccupied(withSheet, sheet, at, rows.length + 1, columns.length);
    this.book.replace({ ...withSheet, tables: [...withSheet.tables, table] }, this, [name]);
    await this.answer();
  }

  async writeBlock(block: CellBlock, begin: (begun: BegunBlock) => void): Promise<WrittenBlock> {
    const { sheet, address, cells, room = { rows: 1, columns: 1 }, charts = [] } = block;
    await this.book.beforeStep("write");
    const madeSheet = !this.book.state.sheets.some(({ name }) => name === sheet);
    const at = cellPosition(address);
    const state = stateWithSheet(this.book.state, sheet);
    const width = Math.max(...cells.map((row) => row.length));
    refuseOccupied(state, sheet, at, Math.max(room.rows, cells.length), Math.max(room.columns, width));
    const written = cells.flatMap((row, down) =>
      row.flatMap((cell, right) =>
        isWritten(cell)
          ? [[cellAddress({ row: at.row + down, column: at.column + right }), memoryCell(cell)] as const]
          : [],
      ),
    );
    const { cells: present, ...own } = state.sheets.find(({ name }) => name === sheet)!;
    const widened = widenedBy(block, { ...own, cells: present });
    const before = formatsBefore(block, (place) => present[cellAddress(place)]?.numberFormat);
    const filled = withCells(state, sheet, { ...present, ...Object.fromEntries(written) });
    const wide = withWidths(filled, sheet, (widths) => {
      for (const { column, set } of widened) widths.set(column, set);
    });
    const chartsLeftOut = charts.map(({ title }) => title);
    const begun: BegunBlock = { formatsBefore: before, widened, madeSheet, charts: [], chartsLeftOut };
    begin(begun);
    this.book.replace(wide, this, [undefined]);
    await this.answer();
    return { sheet, address, cells: meantCells(block), ...begun };
  }

  async readBlock(block: CellBlock): Promise<readonly (readonly StandingCell[])[] | undefined> {
    await this.book.beforeStep("read");
    const sheet = this.book.state.sheets.find(({ name }) => name === block.sheet);
    return sheet && standingCells(block, (at) => standingCell(sheet, at));
  }

  async removeBlock(block: WrittenBlock): Promise<void> {
    await this.book.beforeStep("write");
    this.book.replace(withoutBlock(this.book.state, block), this, [undefined]);
    await this.answer();
  }

  watchChanges(listener: (change: WorkbookChange) => void): Unwatch {
    return this.book.watch(listener, this);
  }

  private plan(edits: readonly Edit[]): ReturnType<typeof planEdits> {
    const { state } = this.book;
    return planEdits(
      edits,
      state.tables.map((table) => ({ info: infoOf(table, state), rows: table.rows })),
    );
  }

  /** An answer that gets lost on its way leaves its asker without knowing what was done. */
  private async answer(): Promise<void> {
    try {
      await this.book.beforeStep("answer");
    } catch (error) {
      throw new TableError("uncertain", "The answer got lost.", { cause: error });
    }
  }
}

function edited(table: MemoryTable, plan: TablePlan, state: BookState, rowLimit: number): MemoryTable {
  const width = table.columns.length;
  const rows = table.rows.map((row) => [...row]);
  const put = ({ index, cells }: RowWrite): void => {
    const old = rows[index] ?? [];
    rows[index] = Array.from({ length: width }, (_, column) => {
      const value = cells[column];
      return value === undefined ? (old[column] ?? null) : plainValue(value);
    });
  };
  plan.set.forEach(put);
  plan.append.forEach(put);
  const grown = rows.length - table.rows.length;
  const below = table.at.row + 1 + table.rows.length;
  if (grown > 0) {
    const full = tableFull(table.name, table.sheet);
    if (below + grown > rowLimit) throw full;
    if (usedCell(state, table.sheet, { row: below, column: table.at.column }, grown, width) !== undefined) throw full;
  }
  const removed = new Set(plan.remove);
  const columns = table.columns.map((column, index) => {
    const dated = [...plan.set, ...plan.append].some(({ cells }) => isDay(cells[index]));
    return dated && !isDateFormat(column.numberFormat) ? { ...column, numberFormat: ISO_DATE } : column;
  });
  return { ...table, columns, rows: rows.filter((_, index) => !removed.has(index)) };
}

function stateWithSheet(state: BookState, name: string): BookState {
  const sheet = state.sheets.find((known) => known.name === name);
  if (sheet?.protected === true) throw sheetProtected(name);
  if (sheet !== undefined) return state;
  return { ...state, sheets: [...state.sheets, { name, protected: false, cells: {} }] };
}

function refuseOccupied(state: BookState, sheet: string, at: CellPosition, rows: number, columns: number): void {
  const used = usedCell(state, sheet, at, rows, columns);
  if (used !== undefined) throw cellsOccupied(sheet, cellAddress(used));
  const area = areaFrom(at, rows, columns);
  const merge = sheetOf(state, sheet).merges?.find(meets(area));
  if (merge !== undefined) throw cellsMerged(sheet, areaText(merge));
}

/** The first cell of a block that holds something or lies in a table. */
function usedCell(
  { sheets, tables }: BookState,
  sheetName: string,
  at: CellPosition,
  rows: number,
  columns: number,
): CellPosition | undefined {
  const sheet = sheets.find(({ name }) => name === sheetName);
  if (sheet === undefined) throw tableGone(sheetName);
  const inside = ({ row, column }: CellPosition): boolean =>
    row >= at.row && row < at.row + rows && column >= at.column && column < at.column + columns;
  const isUsed = ({ value, formula }: MemoryCell): boolean => value !== null || formula !== undefined;
  const used = Object.keys(sheet.cells).filter((address) => isUsed(sheet.cells[address]!));
  const loose = used.map(cellPosition).find(inside);
  if (loose !== undefined) return loose;
  const met = tables.find(
    (table) =>
      table.sheet === sheetName &&
      table.at.row < at.row + rows &&
      table.at.row + table.rows.length >= at.row &&
      table.at.column < at.column + columns &&
      table.at.column + table.columns.length > at.column,
  );
  if (met === undefined) return undefined;
  return { row: Math.max(met.at.row, at.row), column: Math.max(met.at.column, at.column) };
}

function memoryCell(cell: BlockCell): MemoryCell {
  const content = writtenInto(cell);
  if (typeof content === "object" && content !== null && "formula" in content) {
    return { value: null, ...content, ...styleOf(cell) };
  }
  return { value: plainValue(content), ...styleOf(cell) };
}
