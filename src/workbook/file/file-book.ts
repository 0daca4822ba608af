import type { SheetModel, TableModel, WorkbookModel } from "../../xlsx/model";
import type { WorkbookPackage } from "../../xlsx/package";
import type { Protection } from "../../xlsx/protection";
import type { EditedSheet } from "../../xlsx/save-edits";
import type { PlainCell } from "../port";
import type { KnownTable } from "../saving/edit-plan";
import { filledRowCount } from "../saving/row-match";
import type { TableContent } from "../table-port";
import { SheetCells } from "./sheet-cells";

/** A workbook file as it was read, with the edits that are under way. */
export class FileBook {
  private readonly sheets = new Map<string, SheetCells>();

  constructor(
    readonly file: WorkbookPackage,
    readonly model: WorkbookModel,
    readonly protection: Protection,
  ) {}

  get tables(): FileTable[] {
    return this.model.sheets.flatMap((sheet) =>
      sheet.tables.filter(({ hasHeadings }) => hasHeadings).map((table) => new FileTable(this, sheet, table)),
    );
  }

  cells(sheet: SheetModel): SheetCells {
    const known = this.sheets.get(sheet.name) ?? new SheetCells(sheet);
    this.sheets.set(sheet.name, known);
    return known;
  }

  get editedSheets(): EditedSheet[] {
    return [...this.sheets.values()].filter(({ isEdited }) => isEdited).map((cells) => cells.edited());
  }

  isProtected(sheet: string): boolean {
    return this.protection.sheets.has(sheet);
  }

  isFiltered(table: string): boolean {
    return this.protection.filteredTables.has(table);
  }
}

/** A table of the file. Rows are counted from 0 below the headings. */
export class FileTable implements KnownTable {
  readonly cells: SheetCells;
  readonly firstRow: number;
  readonly firstColumn: number;
  /** Rows between headings and totals, blank ones at the end too. */
  readonly bodyRows: number;
  readonly rows: readonly (readonly PlainCell[])[];
  readonly info: KnownTable["info"];
  /** Formulas that fill the calculated columns; undefined for typed columns. */
  readonly fills: readonly (string | undefined)[];

  constructor(
    book: FileBook,
    readonly sheet: SheetModel,
    readonly table: TableModel,
  ) {
    const { area, columns } = table;
    this.cells = book.cells(sheet);
    this.firstRow = area.firstRow + 1;
    this.firstColumn = area.firstColumn;
    const { lastRow } = this.cells.extent(table.name);
    this.bodyRows = lastRow - area.firstRow;
    const width = columns.length;
    const typed = Array.from({ length: this.bodyRows }, (_, row) =>
      Array.from({ length: width }, (__, column) =>
        this.formulaAt(row, column) === undefined ? this.plain(row, column) : null,
      ),
    );
    const rowCount = filledRowCount(typed);
    const lastFilled = Math.max(0, rowCount - 1);
    this.fills = columns.map(
      ({ formula }, column) => formula ?? this.formulaAt(lastFilled, column) ?? this.formulaAt(0, column),
    );
    this.rows = typed
      .slice(0, rowCount)
      .map((cells, row) => cells.map((cell, column) => (cell === null ? this.plain(row, column) : cell)));
    this.info = {
      name: table.name,
      sheet: sheet.name,
      columns: columns.map(({ name }, column) => ({ heading: name, calculated: this.fills[column] !== undefined })),
      rowCount,
      protected: book.isProtected(sheet.name),
      filtered: book.isFiltered(table.name),
    };
  }

  get content(): TableContent {
    return { ...this.info, rows: this.rows };
  }

  private plain(row: number, column: number): PlainCell {
    return this.cells.plain(this.firstRow + row, this.firstColumn + column);
  }

  private formulaAt(row: number, column: number): string | undefined {
    return this.cells.at(this.firstRow + row, this.firstColumn + column)?.formula;
  }
}
