import type { ComputedRows } from "../rows";

/** What the view of a table is given. */
export interface RowsViewProps {
  readonly part: ComputedRows;
}
