/**
 * A workbook as plain values, free of any library's types. Rows and columns are counted from 0. Formulas are as
 * typed, without the leading "=".
 */
export interface WorkbookModel {
  readonly sheets: readonly SheetModel[];
  readonly names: readonly DefinedNameModel[];
  /** Styles by number, as cells name them. Style 0 is the workbook's default. */
  readonly styles: readonly CellStyle[];
  /** Index of the sheet that is open. */
  readonly activeSheet: number;
  /** Days are counted from 1904-01-01 instead of 1900-01-01. */
  readonly from1904: boolean;
}

export interface SheetModel {
  readonly name: string;
  readonly state: "visible" | "hidden" | "veryHidden";
  /** Cells that hold something or carry a style, row by row. */
  readonly cells: readonly CellModel[];
  readonly columns: readonly ColumnModel[];
  readonly rows: readonly RowModel[];
  /** Width of other columns, in characters. */
  readonly defaultColumnWidth?: number;
  /** Height of other rows, in points. */
  readonly defaultRowHeight?: number;
  /** Rows and columns that stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly merges: readonly Area[];
  readonly tables: readonly TableModel[];
  readonly validations: readonly ValidationModel[];
  readonly conditionalFormats: readonly ConditionalFormatModel[];
  readonly tabColour?: string;
  readonly showGridLines: boolean;
  readonly zoom?: number;
}

/** A block of cells, its last row and column included. */
export interface Area {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

/** An error value such as #N/A. */
export interface CellError {
  readonly error: string;
}

export type CellContent = number | string | boolean | CellError | null;

export interface CellModel {
  readonly row: number;
  readonly column: number;
  /** What it holds; for a formula the value saved with it, null where none was saved. */
  readonly value: CellContent;
  readonly formula?: string;
  /** Present on the cell that holds a formula filling several cells: which cells it filled when saved. */
  readonly array?: ArrayExtent;
  /** The value was put here by an array formula in another cell. */
  readonly spilled?: true;
  readonly style: number;
}

export interface ArrayExtent {
  /** `fixed` is an array formula of the old kind, whose cells do not grow or shrink with the result. */
  readonly kind: "dynamic" | "fixed";
  readonly area: Area;
}

export interface ColumnModel {
  readonly first: number;
  readonly last: number;
  /** Width in characters. */
  readonly width?: number;
  readonly hidden: boolean;
  readonly style: number;
}

export interface RowModel {
  readonly row: number;
  /** Height in points. */
  readonly height?: number;
  readonly hidden: boolean;
}

export interface TableModel {
  readonly name: string;
  /** Headings, rows and totals row. */
  readonly area: Area;
  readonly hasHeadings: boolean;
  readonly hasTotals: boolean;
  readonly columns: readonly TableColumnModel[];
  /** Name of the table style, such as TableStyleMedium2. */
  readonly styleName?: string;
  readonly stripes: boolean;
  readonly filter: boolean;
}

export interface TableColumnModel {
  readonly name: string;
  /** The formula that fills the column, as typed. */
  readonly formula?: string;
}

export interface DefinedNameModel {
  readonly name: string;
  /** A reference or a formula, as typed. */
  readonly formula: string;
  /** Index of the sheet it is known in; absent where the whole workbook knows it. */
  readonly sheet?: number;
  readonly hidden: boolean;
}

export interface ValidationModel {
  readonly areas: readonly Area[];
  readonly type: "list" | "whole" | "decimal" | "date" | "time" | "textLength" | "custom";
  readonly operator: string;
  /** One formula, or two for a span. A list written out is text in quotes: "a,b,c". */
  readonly formulas: readonly string[];
  readonly allowBlank: boolean;
  readonly errorStyle: "stop" | "warning" | "information";
  readonly error?: string;
  readonly errorTitle?: string;
  readonly prompt?: string;
  readonly promptTitle?: string;
}

export interface ConditionalFormatModel {
  readonly areas: readonly Area[];
  readonly priority: number;
  readonly stopIfTrue: boolean;
  readonly rule: ConditionalRule;
}

export type ConditionalRule =
  /** Shown where the formula, written for the first cell of the first area, is true. */
  | { readonly type: "formula"; readonly formula: string; readonly style: CellStyle }
  | {
      readonly type: "compare";
      readonly operator: string;
      readonly formulas: readonly string[];
      readonly style: CellStyle;
    }
  | { readonly type: "colourScale"; readonly stops: readonly ScaleStop[] };

export interface ScaleStop {
  readonly at: "min" | "max" | "num" | "percent" | "percentile" | "formula";
  readonly value?: string;
  readonly colour: string;
}

/** Colours are #rrggbb. */
export interface CellStyle {
  readonly font?: string;
  /** Points. */
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly colour?: string;
  readonly fill?: string;
  readonly borders?: Readonly<Partial<Record<"top" | "right" | "bottom" | "left", BorderModel>>>;
  readonly horizontal?: string;
  readonly vertical?: string;
  readonly wrap?: boolean;
  readonly indent?: number;
  /** Absent where it is General. */
  readonly numberFormat?: string;
}

export interface BorderModel {
  readonly style: string;
  readonly colour: string;
}
