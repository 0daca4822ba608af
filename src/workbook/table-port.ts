import type { DaySerial } from "../core/shared/days";
import type { Look } from "./look";
import type { PlainArea } from "./plain-book";
import type { PlainCell, Unwatch } from "./port";

/** A day to be written into a cell, shown as a date. Reading gives it back as its serial number. */
export interface Day {
  readonly day: DaySerial;
}

/** Whether a value to be written is a day. */
export function isDay(value: unknown): value is Day {
  return typeof value === "object" && value !== null && "day" in value;
}

/** What is written into a cell. null leaves it, or makes it, blank. Text never becomes a formula, number or date. */
export type TypedValue = PlainCell | Day;

/** Values by heading. Columns that are not named stay blank in a new row and untouched in an old one. */
export type NewRow = Readonly<Record<string, TypedValue>>;

export interface ColumnInfo {
  readonly heading: string;
  /** The column fills itself by a formula. It is read but never written: the host fills it down. */
  readonly calculated: boolean;
  /** New rows hold nothing in it, since the list of the farm that they go into has no such column. */
  readonly oldRowsOnly?: true;
}

export interface TableInfo {
  readonly name: string;
  readonly sheet: string;
  readonly columns: readonly ColumnInfo[];
  /** Rows down to the last one in which something was typed; blank rows at the end are not counted. */
  readonly rowCount: number;
  /** Whether the sheet is protected; absent where the host cannot tell. */
  readonly protected?: boolean;
  /** Whether a filter hides rows; absent where the host cannot tell. Hidden rows are read like any other. */
  readonly filtered?: boolean;
}

export interface TableContent extends TableInfo {
  /** `rowCount` rows, their cells in the order of `columns`. */
  readonly rows: readonly (readonly PlainCell[])[];
}

/** A row as it was read: what was typed in it, by heading, and where it stood, counted from 0. */
export interface RowAsRead {
  readonly table: string;
  readonly index: number;
  readonly cells: Readonly<Record<string, PlainCell>>;
}

/** The row of a table as an update needs it. */
export function rowAsRead({ name, columns, rows }: TableContent, index: number): RowAsRead {
  const cells: Record<string, PlainCell> = {};
  columns.forEach(({ heading, calculated }, column) => {
    if (!calculated) cells[heading] = rows[index]?.[column] ?? null;
  });
  return { table: name, index, cells };
}

/** A part of a save: new rows at the end of a table, or cells of a row that must still hold what was read. */
export type Change =
  | { readonly append: string; readonly rows: readonly NewRow[] }
  | { readonly update: RowAsRead; readonly set: NewRow };

/** What is written together, in any number of tables, or not at all. */
export interface Save {
  /** Chosen by who saves. The same id is written once, however often it is handed over, also after a crash. */
  readonly id: string;
  /** How the list of saves calls it: "Cow 123, 2 findings". */
  readonly title: string;
  readonly changes: readonly Change[];
}

/** A save that can be taken back. */
export interface PastSave {
  readonly id: string;
  readonly title: string;
}

/** A table that is to be made, on a new sheet or on free cells of one that is there. */
export interface NewTable {
  readonly name: string;
  readonly sheet: string;
  /** Cell of the first heading; A1 unless given. */
  readonly address?: string;
  readonly columns: readonly NewColumn[];
  readonly rows: readonly NewRow[];
}

export interface NewColumn {
  readonly heading: string;
  /** Formula that fills the column, as typed, without "=". */
  readonly formula?: string;
  readonly numberFormat?: string;
}

/** How a cell of a block is shown. */
export interface BlockStyle {
  readonly numberFormat?: string;
  readonly look?: Look;
  readonly alignRight?: true;
}

/** A formula as typed, in English and without "=". */
export interface FormulaCell extends BlockStyle {
  readonly formula: string;
}

/** A value with a look of its own. null leaves the cell to the formula that fills it from elsewhere. */
export interface StyledCell extends BlockStyle {
  readonly value: TypedValue;
}

export type BlockCell = TypedValue | FormulaCell | StyledCell;

/** Cells of a block, counted from its first one. The last row and column are included. */
export type BlockArea = PlainArea;

/** A chart of a block's own cells. Only Excel draws it, and it then follows the cells. */
export interface BlockChart {
  readonly type: "lines" | "columns" | "stacked columns" | "bars";
  readonly title: string;
  /** What the chart shows, for someone who cannot see it. */
  readonly altText: string;
  readonly categories: BlockArea;
  readonly series: readonly { readonly name: string; readonly values: BlockArea }[];
  /** The cells it lies over. They need not be in the block. */
  readonly place: BlockArea;
}

/** What came of a block that was written. */
export interface BlockResult {
  /** Titles of the charts that this host cannot draw: they need Excel. */
  readonly chartsLeftOut: readonly string[];
}

/** Cells to be written where nothing stands. */
export interface CellBlock {
  /** Chosen by who writes. With it the block is written once, however often it is handed over, and can be taken back. */
  readonly id?: string;
  /** How the list of saves calls it: "Lesions by month". */
  readonly title?: string;
  readonly charts?: readonly BlockChart[];
  /** Made if it is not there. */
  readonly sheet: string;
  /** First cell, such as "B3". */
  readonly address: string;
  readonly cells: readonly (readonly BlockCell[])[];
  /** How many rows and columns must be free, where formulas spill beyond the block. */
  readonly room?: { readonly rows: number; readonly columns: number };
  /** In characters, from the first column of the block on. Columns that are narrower are made so wide. */
  readonly columnWidths?: readonly number[];
}

/** Something in the workbook changed. `local` is this user, the pane included; `remote` someone else. */
export interface WorkbookChange {
  /** The table concerned; absent where tables came, went, or the host cannot tell. */
  readonly table?: string;
  readonly source: "local" | "remote";
}

/**
 * The tables of a workbook, whatever host it is open in. Everything that crosses is plain data. Every method rejects
 * with a TableError; what it refuses leaves the workbook as it was, save for kind "uncertain".
 */
export interface TablePort {
  listTables(): Promise<readonly TableInfo[]>;

  readTable(name: string): Promise<TableContent>;

  /** Writes all changes or none. */
  save(save: Save): Promise<void>;

  /** The saves, and blocks with an id, that can be taken back, the latest first. */
  pastSaves(): readonly PastSave[];

  /**
   * Takes a save or a block back whole; refused where someone changed one of its rows or cells meanwhile. Cells of a
   * block are plain again, with the number format that they had, and columns as wide as they were. A sheet that was
   * made for a block goes with it, unless something else stands on it by now. Where the sheet was renamed or deleted it
   * rejects with "sheet-gone".
   */
  takeBack(id: string): Promise<void>;

  createTable(table: NewTable): Promise<void>;

  writeBlock(block: CellBlock): Promise<BlockResult>;

  watchChanges(listener: (change: WorkbookChange) => void): Unwatch;
}
