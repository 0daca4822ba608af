import type { DayOrder } from "../text-dates";
import type { HerdTableName } from "./targets";

export type CountUnit = "thousand cells/mL" | "cells/mL";
export type MilkMeasure = "kg" | "litres" | "lb";
export type LengthUnit = "mm" | "cm" | "inches";
export type ScoreScale = "0-3" | "1-5";
/** How the values of a column are written; of a column of dates written as text, the order of day and month. */
export type Unit = CountUnit | MilkMeasure | LengthUnit | ScoreScale | DayOrder;

/** Units that a column with a key may have; the first is that of our own tables. */
export const unitsOf: Readonly<Record<string, readonly Unit[]>> = {
  count: ["thousand cells/mL", "cells/mL"],
  milkKg: ["kg", "litres", "lb"],
  toeMm: ["mm", "cm", "inches"],
  score: ["0-3", "1-5"],
};

export const DAY_ORDERS: readonly DayOrder[] = ["day first", "month first", "year first"];

/** A farm's column and the one of ours that it stands for. */
export interface MappedColumn {
  /** Key of our column. */
  readonly key: string;
  /** Heading as the farm writes it. */
  readonly heading: string;
  /** Column of the sheet when it was last seen, counted from 0. */
  readonly column: number;
  /** Absent where the values need none; a day without one is a real date. */
  readonly unit?: Unit;
}

/** A table or plain range that is read as one of our tables. */
export interface MappedSource {
  readonly table: HerdTableName;
  readonly sheet: string;
  /** Name of the farm's table; undefined for a plain range. */
  readonly source: string | undefined;
  /** Row of the headings when it was last seen, counted from 0. */
  readonly headingRow: number;
  readonly columns: readonly MappedColumn[];
  /** Where all toes were measured from, where no column says it. */
  readonly landmark?: string;
}

/** Which of a workbook's columns are read as which of ours. Plain data. */
export interface Mapping {
  readonly sources: readonly MappedSource[];
}

/** Where a source stands: "the table Kühe" or "the sheet MLP". */
export function placeOf({ sheet, source }: Pick<MappedSource, "sheet" | "source">): string {
  return source === undefined ? `the sheet ${sheet}` : `the table ${source}`;
}
