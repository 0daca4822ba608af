import type { AppliedCell, BookHost, CellEdit, TableRange } from "../book-host";
import type { BrokenFormula, FunctionsAnswer } from "../book-port";
import { cellAddress, cellPosition } from "../cell-address";
import { callsHerd, NAME_ERROR } from "../herd-formula";
import { formatFor, GENERAL_FORMAT } from "../number-format";
import { areaText, holds, type PlainBook, type PlainSheet } from "../plain-book";
import { meets } from "../plain-room";
import type { CellPlace } from "../port";
import { plainValue } from "../saving/row-match";
import {
  cellCalculated,
  cellChanged,
  cellsMerged,
  cellsOccupied,
  nameTaken,
  sheetHidden,
  sheetProtected,
  TableError,
} from "../table-error";
import type { BookState, MemoryBook, MemoryCell, MemorySheet, MemoryTable } from "./book";
import { type MemoryPlace, placeOf, sheetOf, withCells } from "./cells";
import { areaOf, plainSheet } from "./plain-view";

/** One user's view of the sheets and cells of a workbook in memory. Formulas in it have the results they were given. */
export class MemoryBookHost implements BookHost {
  constructor(private readonly book: MemoryBook) {}

  async readBook(): Promise<PlainBook> {
    await this.book.beforeStep("read");
    const { state } = this.book;
    return { sheets: state.sheets.map((sheet) => plainSheet(sheet, state)), from1904: false };
  }

  async readSheet(name: string): Promise<PlainSheet> {
    await this.book.beforeStep("read");
    return plainSheet(this.sheet(name), this.book.state);
  }

  async show(place: CellPlace): Promise<void> {
    await this.book.beforeStep("show");
    if (this.sheet(place.sheet).hidden === true) throw sheetHidden(place.sheet);
    this.book.shown = place;
  }

  async editCells(edits: readonly CellEdit[]): Promise<readonly AppliedCell[]> {
    await this.book.beforeStep("write");
    let { state } = this.book;
    const applied: AppliedCell[] = [];
    for (const edit of edits) {
      const { sheet, address, was: before, set } = edit;
      const place = checkedPlace(edit, state);
      const own = place.numberFormat;
      const numberFormat = edit.numberFormat ?? formatFor(set, own) ?? own;
      state = place.put(plainValue(set), numberFormat);
      const formatBefore = own ?? GENERAL_FORMAT;
      const kept = numberFormat === own ? {} : { formatBefore };
      applied.push({ sheet, address, before, after: plainValue(set), ...kept });
    }
    this.book.replace(state, this, [undefined]);
    await this.answer();
    return applied;
  }

  async takenNames(): Promise<readonly string[]> {
    await this.book.beforeStep("list");
    return this.book.state.tables.map(({ name }) => name);
  }

  async makeTable({ sheet: sheetName, area, name }: TableRange): Promise<void> {
    await this.book.beforeStep("write");
    const { state } = this.book;
    if (state.tables.some((table) => table.name.toLowerCase() === name.toLowerCase())) throw nameTaken(name);
    const sheet = this.sheet(sheetName);
    if (sheet.protected) throw sheetProtected(sheetName);
    const met = state.tables.find((table) => table.sheet === sheetName && meets(area)(areaOf(table)));
    if (met !== undefined) throw cellsOccupied(sheetName, areaText(areaOf(met)));
    const cellAt = (row: number, column: number): MemoryCell | undefined => sheet.cells[cellAddress({ row, column })];
    const columns = Array.from(
      { length: area.lastColumn - area.firstColumn + 1 },
      (_, right) => right + area.firstColumn,
    );
    const table: MemoryTable = {
      name,
      sheet: sheetName,
      at: { row: area.firstRow, column: area.firstColumn },
      columns: columns.map((column) => {
        const numberFormat = cellAt(area.firstRow + 1, column)?.numberFormat;
        const heading = String(cellAt(area.firstRow, column)?.value ?? "");
        return { heading, ...(numberFormat === undefined ? {} : { numberFormat }) };
      }),
      rows: Array.from({ length: area.lastRow - area.firstRow }, (_, index) =>
        columns.map((column) => cellAt(area.firstRow + 1 + index, column)?.value ?? null),
      ),
      filtered: false,
    };
    const left = Object.entries(sheet.cells).filter(([address]) => {
      const { row, column } = cellPosition(address);
      return !holds(area, row, column);
    });
    const cleared = withCells(state, sheetName, Object.fromEntries(left));
    this.book.replace({ ...cleared, tables: [...cleared.tables, table] }, this, [name]);
    await this.answer();
  }

  async unmakeTable(name: string): Promise<void> {
    await this.book.beforeStep("write");
    const { state } = this.book;
    const table = this.book.table(name);
    const sheet = this.sheet(table.sheet);
    if (sheet.protected) throw sheetProtected(sheet.name);
    const { at, columns, rows } = table;
    const cells: Record<string, MemoryCell> = { ...sheet.cells };
    [columns.map(({ heading }) => heading), ...rows].forEach((line, down) =>
      line.forEach((value, right) => {
        if (value === null) return;
        const numberFormat = down === 0 ? undefined : columns[right]?.numberFormat;
        cells[cellAddress({ row: at.row + down, column: at.column + right })] = {
          value,
          ...(numberFormat === undefined ? {} : { numberFormat }),
        };
      }),
    );
    const tables = state.tables.filter((known) => known !== table);
    this.book.replace({ ...withCells(state, sheet.name, cells), tables }, this, [undefined]);
    await this.answer();
  }

  async brokenFormulas(): Promise<readonly BrokenFormula[]> {
    await this.book.beforeStep("read");
    return this.book.state.sheets.flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([address, { value, formula }]) =>
        value === NAME_ERROR && formula !== undefined && callsHerd(formula)
          ? [{ sheet: name, address, formula: `=${formula}` }]
          : [],
      ),
    );
  }

  async reenter(cells: readonly CellPlace[]): Promise<readonly BrokenFormula[]> {
    const isWanted = (broken: BrokenFormula): boolean =>
      cells.some(({ sheet, address }) => sheet === broken.sheet && address === broken.address);
    const broken = (await this.brokenFormulas()).filter(isWanted);
    const guarded = broken.find(({ sheet }) => this.sheet(sheet).protected);
    if (guarded !== undefined) throw sheetProtected(guarded.sheet);
    if (this.book.functions === "yes") {
      let { state } = this.book;
      for (const { sheet, address, formula } of broken) {
        const entered = { ...this.sheet(sheet).cells[address], value: null, formula: formula.slice(1) };
        state = withCells(state, sheet, { ...sheetOf(state, sheet).cells, [address]: entered });
      }
      this.book.replace(state, this, [undefined]);
    }
    return (await this.brokenFormulas()).filter(isWanted);
  }

  async functionsLoaded(): Promise<FunctionsAnswer> {
    await this.book.beforeStep("read");
    return this.book.functions;
  }

  private sheet(name: string): MemorySheet {
    return sheetOf(this.book.state, name);
  }

  private async answer(): Promise<void> {
    try {
      await this.book.beforeStep("answer");
    } catch (error) {
      throw new TableError("uncertain", "The answer got lost.", { cause: error });
    }
  }
}

/** The cell of an edit in a state, once it is sure that it may be changed. */
function checkedPlace({ sheet: name, address, was }: CellEdit, state: BookState): MemoryPlace {
  const sheet = sheetOf(state, name);
  if (sheet.protected) throw sheetProtected(name);
  const at = cellPosition(address);
  const merge = sheet.merges?.find((area) => holds(area, at.row, at.column));
  const isHidden = merge !== undefined && (merge.firstRow !== at.row || merge.firstColumn !== at.column);
  if (isHidden) throw cellsMerged(name, areaText(merge));
  const place = placeOf(state, sheet, address);
  if (place.hasFormula) throw cellCalculated(name, address);
  if (place.value !== was) throw cellChanged(name, address, was, place.value);
  return place;
}
