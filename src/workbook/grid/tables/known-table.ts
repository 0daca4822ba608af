import type { Worksheet } from "@univerjs/core";
import { FormulaDataModel, LexerTreeBuilder } from "@univerjs/engine-formula";
import { TableManager } from "@univerjs/sheets-table";
import type { PlainCell } from "../../port";
import type { KnownTable } from "../../saving/edit-plan";
import type { TableContent } from "../../table-port";
import { hasFormula, shownValue } from "./cells";
import type { OpenGrid } from "./open-grid";

type GridTable = ReturnType<TableManager["getTablesBySubunitId"]>[number];

/** All tables of the workbook, sheet by sheet. */
export function knownTables(grid: OpenGrid): SheetTable[] {
  const { workbook, injector } = grid;
  const tables = injector.get(TableManager);
  return workbook.getSheets().flatMap((sheet) =>
    tables
      .getTablesBySubunitId(workbook.getUnitId(), sheet.getSheetId())
      .map((table) => new SheetTable(grid, sheet, table))
      // A table that was just made comes last in its sheet, wherever it stands.
      .sort((a, b) => a.firstRow - b.firstRow || a.firstColumn - b.firstColumn),
  );
}

/** A table of the grid. Rows are counted from 0 below the headings. Its cells are read when they are asked for. */
export class SheetTable implements KnownTable {
  readonly id: string;
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly bodyRows: number;
  readonly info: KnownTable["info"];
  private readonly width: number;
  private known: readonly (readonly PlainCell[])[] | undefined;

  constructor(
    private readonly grid: OpenGrid,
    readonly sheet: Worksheet,
    private readonly table: GridTable,
  ) {
    const { startRow, startColumn, endRow, endColumn } = table.getRangeInfo();
    this.id = table.getId();
    this.firstRow = startRow + 1;
    this.firstColumn = startColumn;
    this.bodyRows = endRow - startRow;
    this.width = endColumn - startColumn + 1;
    const rowCount = this.countRows();
    const patterns = [Math.max(0, rowCount - 1), 0];
    const sheetName = sheet.getName();
    // There is no such set before a filter was first set.
    const hidden: ReadonlySet<number> | undefined = table.getTableFilters().getFilterOutRows();
    this.info = {
      name: table.getDisplayName(),
      sheet: sheetName,
      columns: Array.from({ length: this.width }, (_, column) => ({
        heading: this.heading(column),
        calculated:
          Boolean(table.getTableColumnByIndex(column)?.formula) ||
          patterns.some((row) => hasFormula(this.cell(row, column))),
      })),
      rowCount,
      protected: grid.protectedSheets.has(sheetName),
      filtered: hidden !== undefined && hidden.size > 0,
    };
  }

  get rows(): readonly (readonly PlainCell[])[] {
    this.known ??= Array.from({ length: this.info.rowCount }, (_, row) =>
      Array.from({ length: this.width }, (__, column) => shownValue(this.cell(row, column))),
    );
    return this.known;
  }

  get content(): TableContent {
    return { ...this.info, rows: this.rows };
  }

  cell(row: number, column: number) {
    return this.sheet.getCellRaw(this.firstRow + row, this.firstColumn + column);
  }

  /** Number format of a cell. */
  numberFormat(row: number, column: number): string | undefined {
    const cell = this.cell(row, column);
    return this.grid.workbook.getStyles().getStyleByCell(cell)?.n?.pattern;
  }

  /** The formula that fills a calculated column at a row; undefined in a typed column. */
  formulaFor(row: number, column: number): string | undefined {
    if (this.info.columns[column]?.calculated !== true) return undefined;
    for (const from of [Math.max(0, this.info.rowCount - 1), 0]) {
      const found = this.formulaAt(from, column);
      if (found !== undefined) {
        return this.grid.injector.get(LexerTreeBuilder).moveFormulaRefOffset(found, 0, row - from);
      }
    }
    return this.table.getTableColumnByIndex(column)?.formula || undefined;
  }

  formulaAt(row: number, column: number): string | undefined {
    const { workbook, injector } = this.grid;
    const [at, unitId] = [this.firstRow + row, workbook.getUnitId()];
    if (!hasFormula(this.cell(row, column))) return undefined;
    const formulas = injector.get(FormulaDataModel);
    return formulas.getFormulaStringByCell(at, this.firstColumn + column, this.sheet.getSheetId(), unitId) ?? undefined;
  }

  /** Rows down to the last one in which something was typed. */
  private countRows(): number {
    for (let row = this.bodyRows - 1; row >= 0; row--) {
      for (let column = 0; column < this.width; column++) {
        const cell = this.cell(row, column);
        if (!hasFormula(cell) && shownValue(cell) !== null) return row + 1;
      }
    }
    return 0;
  }

  private heading(column: number): string {
    const shown = shownValue(this.cell(-1, column));
    return shown === null ? this.table.getColumnNameByIndex(column) : String(shown);
  }
}
