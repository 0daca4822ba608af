import type { CellContent, CellStyle } from "./model";

/** A workbook to be written, free of any library's types. Addresses are A1; formulas are as typed, without "=". */
export interface NewWorkbook {
  readonly title: string;
  readonly description: string;
  readonly author: string;
  /** Serial of the day that the file gives as the day of its making, so that the bytes never depend on the clock. */
  readonly made: number;
  /** Colours #rrggbb of the theme, used by charts and table styles. */
  readonly accents: readonly string[];
  readonly names: readonly NewName[];
  readonly sheets: readonly NewSheet[];
}

export interface NewName {
  readonly name: string;
  /** The cells it stands for, with their sheet: Start!$C$5. */
  readonly refersTo: string;
}

export interface NewSheet {
  readonly name: string;
  readonly tabColour: string;
  /** Widths of the columns from A on, in characters. */
  readonly widths: readonly number[];
  /** Heights in points of rows that are not as high as usual. */
  readonly heights?: Readonly<Record<number, number>>;
  readonly showGridLines: boolean;
  /** Rows and columns that stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly cells: readonly NewCell[];
  readonly merges: readonly string[];
  readonly tables: readonly NewTable[];
  readonly validations: readonly NewValidation[];
  readonly highlights: readonly NewHighlight[];
  readonly charts: readonly NewChart[];
  readonly print: NewPrint;
}

/** A formula; where `fills` is set its result may fill cells below and to the right. */
export interface NewFormula {
  readonly formula: string;
  readonly fills?: true;
}

/** Text that leads to a cell of the workbook. */
export interface NewLink {
  readonly text: string;
  /** Such as 'Due'!A1. */
  readonly to: string;
}

export type NewContent = number | string | boolean | null | NewFormula | NewLink;

export interface NewCell {
  readonly at: string;
  readonly holds: NewContent;
  readonly style?: CellStyle;
}

export interface NewTable {
  readonly name: string;
  /** Address of its first heading. */
  readonly at: string;
  /** Name of the table style. */
  readonly styleName: string;
  readonly columns: readonly NewTableColumn[];
  /** Values by column; the value of a calculated column is not looked at. */
  readonly rows: readonly (readonly (number | string | null)[])[];
}

export interface NewTableColumn {
  readonly heading: string;
  readonly headingStyle: CellStyle;
  readonly style: CellStyle;
  readonly formula?: string;
}

export interface NewValidation {
  readonly area: string;
  readonly rule:
    | { readonly type: "list"; readonly source: string }
    | { readonly type: "whole" | "decimal" | "date"; readonly from: number; readonly to: number };
  /** What the cell takes, shown when it is selected; and what is said when something else is typed. */
  readonly prompt?: string;
  readonly refusal: string;
  /** Something else may be typed after a warning. */
  readonly warnOnly?: true;
}

/** Cells are shown in a style while a formula, written for the first cell, is true. */
export interface NewHighlight {
  readonly area: string;
  readonly formula: string;
  readonly style: CellStyle;
}

export interface NewChart {
  readonly type: "stacked columns" | "columns" | "lines";
  readonly title: string;
  /** What the picture shows, for someone who cannot see it. */
  readonly description: string;
  /** Cells it lies over. */
  readonly over: string;
  readonly categories: string;
  readonly categoryFormat?: string;
  /** Only every so many categories carry a label. */
  readonly labelEvery?: number;
  readonly valueTitle: string;
  readonly valueFormat?: string;
  readonly series: readonly NewSeries[];
}

export interface NewSeries {
  /** Cell that holds its name. */
  readonly name: string;
  readonly values: string;
  readonly colour: string;
  /** Lines differ in more than colour. */
  readonly dashed?: true;
}

export interface NewPrint {
  readonly landscape: boolean;
  /** Cells that are printed; absent where all are. */
  readonly area?: string;
  /** Rows repeated on each page, such as 4:4. */
  readonly titleRows?: string;
  readonly footer: string;
  /** Pages down that it is shrunk to; absent where it may run on. */
  readonly pagesDown?: number;
}

/** Values computed for the formulas of a workbook, sheet by sheet and address by address. */
export interface ComputedValues {
  value(sheet: string, address: string): CellContent | undefined;
  /** The cells that a filling formula filled, such as A5:C9, its own included. */
  filled(sheet: string, address: string): string | undefined;
}
