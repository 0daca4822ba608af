import { ICommandService } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SelectRangeCommand, SetWorksheetActiveOperation } from "@univerjs/sheets";
import { computed } from "../../../engine/computed";
import type { AppliedCell, BookHost, CellEdit, TableRange } from "../../book-host";
import type { BrokenFormula, FunctionsAnswer } from "../../book-port";
import { cellAddress, cellPosition } from "../../cell-address";
import { callsHerd, NAME_ERROR } from "../../herd-formula";
import type { PlainBook, PlainSheet } from "../../plain-book";
import type { CellPlace } from "../../port";
import { sheetHidden, sheetProtected, workbookClosed } from "../../table-error";
import { type Cells, formulaCell, hasFormula, put, shownValue } from "../tables/cells";
import { knownTables } from "../tables/known-table";
import { cellsChange, type Change, inSequence, run } from "../tables/mutations";
import type { OpenGrid } from "../tables/open-grid";
import { editChanges, sheetOf } from "./edit-cells";
import { plainRangeChange, tableChange } from "./make-table";
import { plainSheet } from "./read-sheet";

/** The sheets and cells of the workbook open in the grid. One host serves all workbooks opened after each other. */
export class GridBookHost implements BookHost {
  private grid: OpenGrid | undefined;

  /** Turns to another grid; `undefined` while none is open. */
  turnTo(grid: OpenGrid | undefined): void {
    this.grid = grid;
  }

  async readBook(): Promise<PlainBook> {
    const grid = await this.open();
    return { sheets: grid.workbook.getSheets().map((sheet) => plainSheet(grid, sheet)), from1904: false };
  }

  async readSheet(name: string): Promise<PlainSheet> {
    const grid = await this.open();
    return plainSheet(grid, sheetOf(grid, name));
  }

  async show({ sheet: name, address }: CellPlace): Promise<void> {
    const grid = await this.open();
    const sheet = sheetOf(grid, name);
    const [first = "", last = first] = address.split(":");
    const { row: startRow, column: startColumn } = cellPosition(first);
    const { row: endRow, column: endColumn } = cellPosition(last);
    if (sheet.isSheetHidden()) throw sheetHidden(name);
    const commands = grid.injector.get(ICommandService);
    const [unitId, sheetId] = [grid.workbook.getUnitId(), sheet.getSheetId()];
    commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId: sheetId });
    const range = { startRow, startColumn, endRow, endColumn };
    await commands.executeCommand(SelectRangeCommand.id, { unitId, subUnit: sheetId, range, reveal: true });
  }

  async editCells(edits: readonly CellEdit[]): Promise<readonly AppliedCell[]> {
    const grid = await this.open();
    const { changes, applied } = editChanges(grid, edits);
    run(grid, inSequence(changes));
    return applied;
  }

  async takenNames(): Promise<readonly string[]> {
    return knownTables(await this.open()).map(({ info }) => info.name);
  }

  async makeTable(table: TableRange): Promise<void> {
    const grid = await this.open();
    run(grid, inSequence([tableChange(grid, table)]));
  }

  async unmakeTable(name: string): Promise<void> {
    const grid = await this.open();
    run(grid, inSequence([plainRangeChange(grid, name)]));
  }

  async brokenFormulas(): Promise<readonly BrokenFormula[]> {
    const { workbook, injector } = await this.open();
    const formulas = injector.get(FormulaDataModel);
    const broken: BrokenFormula[] = [];
    for (const sheet of workbook.getSheets()) {
      sheet.getCellMatrix().forValue((row, column, cell) => {
        if (!hasFormula(cell) || shownValue(cell) !== NAME_ERROR) return;
        const formula = formulas.getFormulaStringByCell(row, column, sheet.getSheetId(), workbook.getUnitId());
        if (formula == null || !callsHerd(formula)) return;
        broken.push({ sheet: sheet.getName(), address: cellAddress({ row, column }), formula });
      });
    }
    return broken;
  }

  async reenter(cells: readonly CellPlace[]): Promise<readonly BrokenFormula[]> {
    const wanted = new Set(cells.map(placeText));
    const isWanted = (cell: CellPlace): boolean => wanted.has(placeText(cell));
    const grid = await this.open();
    const broken = (await this.brokenFormulas()).filter(isWanted);
    if (broken.length === 0) return [];
    run(grid, inSequence([...new Set(broken.map(({ sheet }) => sheet))].map((sheet) => entered(grid, sheet, broken))));
    await computed(grid.injector);
    return (await this.brokenFormulas()).filter(isWanted);
  }

  /** The grid computes with the functions built into the page. */
  async functionsLoaded(): Promise<FunctionsAnswer> {
    await this.open();
    return "yes";
  }

  private open(): Promise<OpenGrid> {
    return this.grid === undefined ? Promise.reject(workbookClosed()) : Promise.resolve(this.grid);
  }
}

function entered(grid: OpenGrid, name: string, broken: readonly BrokenFormula[]): Change {
  if (grid.protectedSheets.has(name)) throw sheetProtected(name);
  const cells: Cells = {};
  for (const { sheet, address, formula } of broken) {
    const { row, column } = cellPosition(address);
    if (sheet === name) put(cells, row, column, formulaCell(formula));
  }
  return cellsChange(grid, sheetOf(grid, name).getSheetId(), cells);
}

function placeText({ sheet, address }: CellPlace): string {
  return `${sheet}!${address}`;
}
