/**
 * A block is a group of figures and tables of live HERD formulas with the cells they ask for. One definition serves
 * three: the pane computes and draws it, the pane writes it into the sheet, and templates are built from it. So what
 * the pane shows is what the sheet computes.
 *
 * To add one:
 * 1. Write `src/blocks/<screen>/<name>.ts` with one exported `Block`. Its formulas are made of the expressions in
 *    `expression/`: columns, filters, calls of worksheet functions. Arithmetic belongs into a worksheet function, where
 *    it has a source and tests; a block only says what goes in.
 * 2. Put it into the list of its screen, `src/blocks/<screen>/blocks.ts`.
 * The tests then compute it in the pane's way and in a sheet, cell by cell, on the sample and on bad data.
 *
 * A part may refer to inputs, and to figures and series above it. Where nothing can be computed the part carries the
 * sentence of the function that refused; the other parts stand.
 */
import type { ResultColumn } from "../functions/define";
import type { PlainCell } from "../workbook/port";
import type { Expression } from "./expression/expression";

/** The screen of the pane that a block belongs to. */
export type BlockScreen = "herd" | "cells" | "costs" | "report";

export interface Block {
  readonly id: string;
  readonly title: string;
  /** What it is for, in one sentence. */
  readonly about: string;
  readonly screen: BlockScreen;
  readonly inputs: readonly BlockInput[];
  readonly parts: readonly Part[];
  readonly charts: readonly Chart[];
  /** What a reader must know of all its figures, beside the sources of its functions. Plain sentences. */
  readonly notes: readonly string[];
}

/** A cell that the reader may change. */
export interface BlockInput {
  readonly name: string;
  readonly label: string;
  /** What stands in it until someone changes it; a formula goes on with the workbook. */
  readonly usual: Expression;
  readonly format?: string;
}

export type Part = Figure | Table | Series;

/** One value with its label. */
export interface Figure {
  readonly kind: "figure";
  readonly id: string;
  readonly label: string;
  readonly value: Expression;
  readonly format?: string;
  readonly unit?: string;
  /** A sentence beside it. */
  readonly note?: string;
}

/** A formula that fills cells, its headings in the first row. */
export interface Table {
  readonly kind: "table";
  readonly id: string;
  readonly title: string;
  readonly value: Expression;
  /** The worksheet function whose result it is; its columns are the columns of the table. */
  readonly of: string;
  /** Rows that are kept free for it below the headings. */
  readonly rows: number;
  /** Formats of single cells, by the text in the first column, where a column mixes units. */
  readonly formats?: (firstCell: PlainCell, row: readonly PlainCell[]) => string | undefined;
}

/**
 * The last days on which something was done, the latest at the bottom, and figures for each. Where there are fewer
 * days the upper rows stay empty.
 */
export interface Series {
  readonly kind: "series";
  readonly id: string;
  readonly title: string;
  readonly length: number;
  /** Headings and formats: the day's first. */
  readonly columns: readonly SeriesColumn[];
  /** The day of the last row. */
  readonly last: Expression;
  /** The day of the row above. */
  before(day: Expression): Expression;
  /** The figures of a day, in the order of the columns behind the first. */
  figures(day: Expression): readonly Expression[];
}

export type SeriesColumn = Pick<ResultColumn, "heading" | "format" | "unit">;

/** A picture of the columns of a table or series. */
export interface Chart {
  readonly id: string;
  readonly part: string;
  readonly type: "lines" | "columns" | "stacked columns" | "bars";
  readonly title: string;
  /** Column of the categories and columns of the values, counted from 0. */
  readonly categories: number;
  readonly values: readonly number[];
  readonly categoryFormat?: string;
  readonly valueTitle: string;
  readonly valueFormat: string;
  /** How many of the rows, from the first, the picture shows; absent where it shows all. */
  shown?(rows: readonly (readonly PlainCell[])[]): number;
  /** What the picture shows, for who cannot see it; the rows without their headings. */
  describe(rows: readonly (readonly PlainCell[])[]): string;
}
