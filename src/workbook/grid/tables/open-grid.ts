import type { Injector, Workbook } from "@univerjs/core";

/** What the tables need of a workbook open in the grid. */
export interface OpenGrid {
  readonly workbook: Workbook;
  readonly injector: Injector;
  /** Names of the sheets that the file protects; the grid itself knows no such protection. */
  readonly protectedSheets: ReadonlySet<string>;
  /** Names of the sheets that have a filter of their own in the file, outside tables. */
  readonly filteredSheets?: ReadonlySet<string>;
}
