import type { CellPosition } from "../workbook/cell-address";
import type { Look } from "../workbook/look";
import type { PlainCell } from "../workbook/port";
import type { Chart } from "./block";

/** A cell of a block as it is laid out. */
export interface LaidOutCell {
  /** A formula without "=", or what is written as it stands; both absent where another cell's formula fills it. */
  readonly formula?: string;
  readonly value?: PlainCell;
  readonly numberFormat?: string;
  readonly look: Look;
  /** The formula fills more cells than this one. */
  readonly fills?: true;
  readonly alignRight?: true;
}

/** Rows and columns counted from the first cell of the block, both ends included. */
export interface BlockArea {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

export interface LaidOutChart {
  readonly chart: Chart;
  readonly categories: BlockArea;
  /** Name and values of each series: a heading, the text that it shows, and the cells below it. */
  readonly series: readonly { readonly name: BlockArea; readonly heading: string; readonly values: BlockArea }[];
  /** The cells that the picture covers. */
  readonly over: BlockArea;
  /** The picture in words. */
  readonly description: string;
}

/** A block as cells. Nothing in it depends on a host. */
export interface LaidOutBlock {
  readonly id: string;
  readonly title: string;
  readonly cells: readonly (readonly (LaidOutCell | null)[])[];
  /** Rows and columns that must be free, spills and pictures included. */
  readonly room: { readonly rows: number; readonly columns: number };
  /** In characters. */
  readonly columnWidths: readonly number[];
  readonly charts: readonly LaidOutChart[];
  /** Where each part stands: of a figure its value, of a table its first heading. */
  readonly places: Readonly<Record<string, CellPosition>>;
  readonly inputPlaces: Readonly<Record<string, CellPosition>>;
  /** Parts that no formula can compute here, and why. They stand as a sentence. */
  readonly refusals: readonly string[];
}

export function area(firstRow: number, firstColumn: number, lastRow: number, lastColumn: number): BlockArea {
  return { firstRow, firstColumn, lastRow, lastColumn };
}
