import { cellNumber } from "../../xlsx/address";
import type { EditedCell, EditedSheet } from "../../xlsx/save-edits";
import type { CellContent, CellModel, SheetModel, TableModel } from "../../xlsx/model";
import type { PlainCell } from "../port";

/** What is put into a cell: a formula as typed, or a value. */
export interface CellInput {
  readonly formula?: string;
  readonly value: CellContent;
}

/** The cells of a sheet while it is edited. */
export class SheetCells {
  private readonly cells = new Map<number, CellModel>();
  private readonly extents = new Map<string, TableModel["area"]>();
  /** Whether anything was put in. */
  isEdited = false;

  constructor(private readonly sheet: SheetModel) {
    for (const cell of sheet.cells) this.cells.set(cellNumber(cell.row, cell.column), cell);
    for (const { name, area, hasTotals } of sheet.tables) {
      this.extents.set(name, hasTotals ? { ...area, lastRow: area.lastRow - 1 } : area);
    }
  }

  at(row: number, column: number): CellModel | undefined {
    return this.cells.get(cellNumber(row, column));
  }

  /** The value of a cell as the port gives it. */
  plain(row: number, column: number): PlainCell {
    const value = this.at(row, column)?.value ?? null;
    if (typeof value === "object" && value !== null) return value.error;
    return value === "" ? null : value;
  }

  isUsed(row: number, column: number): boolean {
    const cell = this.at(row, column);
    return cell !== undefined && (cell.formula !== undefined || (cell.value !== null && cell.value !== ""));
  }

  /** Puts something into a cell. One that has no style yet takes that of a model cell. */
  put(row: number, column: number, { formula, value }: CellInput, like?: CellModel): void {
    this.isEdited = true;
    const style = this.at(row, column)?.style ?? like?.style ?? 0;
    const cell = { row, column, value, style };
    this.cells.set(cellNumber(row, column), formula === undefined ? cell : { ...cell, formula });
  }

  extent(table: string): TableModel["area"] {
    return this.extents.get(table)!;
  }

  resize(table: string, lastRow: number): void {
    this.isEdited = true;
    this.extents.set(table, { ...this.extent(table), lastRow });
  }

  edited(): EditedSheet {
    const cells = [...this.cells.values()];
    const { name } = this.sheet;
    return {
      name,
      contents: cells.flatMap(contentOf),
      tables: [...this.extents].map(([table, area]) => ({ name: table, area })),
      fresh: {
        name,
        cells: cells.filter(({ value, formula, spilled }) => value !== null && (formula !== undefined || spilled)),
        spills: cells.flatMap(({ row, column, array }) =>
          array === undefined ? [] : [{ row, column, area: array.area }],
        ),
      },
    };
  }
}

function contentOf({ row, column, value, formula, spilled, style }: CellModel): EditedCell[] {
  if (spilled === true) return [];
  if (formula !== undefined) return [{ row, column, style, formula, value: null }];
  return value === null || value === "" ? [] : [{ row, column, style, value }];
}
