/** The two scales of mobility scores, which are never mixed. */
export type Scale = "0-3" | "1-5";

/** How the formulas of a workbook name its data. */
export interface References {
  /** Such as "Findings[Cow]". Throws MissingData where no formula can name it. */
  column(table: string, key: string): string;
  /**
   * The same where a function takes nothing but cells as they stand: COUNTIFS and its like. Throws MissingData also
   * where the farm's words or units would have to be translated.
   */
  range(table: string, key: string): string;
  /** The same, one range for each list in which the table stands. */
  ranges(table: string, key: string): readonly string[];
  /** A settings table without its headings: "Targets". Throws MissingData where there is none. */
  settings(table: string): string;
  /** The day that the workbook counts from: "AsOf" where it has that name, else "TODAY()". */
  readonly asOf: string;
  readonly scale: Scale;
  /** What a reader of the written block must know, such as that a plain range does not grow. Plain sentences. */
  readonly notes: readonly string[];
}

/** What the formulas of one block can name: the data, and its own cells. */
export interface Names extends Omit<References, "notes"> {
  /** Where the value of an input stands: "$B$4". */
  input(name: string): string;
  /** Where a figure, or a cell of a series, stands. */
  part(id: string): string;
}
