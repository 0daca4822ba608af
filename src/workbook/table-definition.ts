/** What a column holds. A day is an integer serial; a lesion is a code of the claw disorder key, or "none". */
export type ColumnKind = "cow" | "day" | "whole number" | "number" | "choice" | "lesion" | "text";

/** One column of a table, in plain wording that the sheet and the pane both show. */
export interface ColumnDefinition {
  /** Name of the value in code. */
  readonly key: string;
  /** The heading we write; a farm's own table may carry another. */
  readonly heading: string;
  readonly holds: ColumnKind;
  /** One sentence for someone who fills it in, or who wonders what a calculated column shows. */
  readonly about: string;
  readonly unit?: string;
  /** The words that a "choice" column takes. */
  readonly choices?: readonly string[];
  /** Smallest and largest value that a number column takes. */
  readonly limits?: readonly [number, number];
  /** Words that may stand in a number column in place of a number. */
  readonly words?: readonly string[];
  /** A row without it is of no use. */
  readonly required?: boolean;
  /** Formula of a calculated column, as typed, without "=". Such a column is never filled in by hand. */
  readonly formula?: string;
}

export interface TableDefinition {
  /** Name of the table; its sheet carries the same name. */
  readonly name: string;
  /** What the table is for, in one sentence. */
  readonly about: string;
  readonly columns: readonly ColumnDefinition[];
}

type InputColumn<C> = C extends { formula: string } ? never : C;
type ValueOf<C> = C extends { holds: "choice" | "lesion" | "text" } ? string : number;

/** A row of the table by key: a blank is null. A column of numbers may hold a note ("-", "no sample") instead. */
export type RowOf<T extends TableDefinition> = {
  readonly [C in InputColumn<T["columns"][number]> as C["key"]]:
    | ValueOf<C>
    | (C extends { required: true } ? never : string | null);
};

/** The columns that are filled in by hand or by the pane. */
export function inputColumns(table: TableDefinition): readonly ColumnDefinition[] {
  return table.columns.filter(({ formula }) => formula === undefined);
}

/** The number format of a column's cells; undefined for plain text and numbers. */
export function numberFormatOf({ holds }: ColumnDefinition): string | undefined {
  return holds === "day" ? "yyyy-mm-dd" : undefined;
}
