import type { PlainCell } from "../../../../workbook/port";
import type { Spilled } from "../summary";

/** A row of a table of shares: HERD.CELL.CHANGE and HERD.CELL.DRYPERIOD. */
export interface ShareRow {
  readonly name: string;
  readonly cows: number;
  /** Cows at risk; undefined where the row only counts. */
  readonly of: number | undefined;
  /** undefined where no cow was at risk. */
  readonly share: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly note: string;
}

export function shareRows([, ...rows]: Spilled): readonly ShareRow[] {
  return rows.map(([name, cows, of, share, low, high, note]) => ({
    name: String(name),
    cows: Number(cows),
    of: numberOf(of),
    share: numberOf(share),
    low: numberOf(low),
    high: numberOf(high),
    note: String(note),
  }));
}

export function numberOf(cell: PlainCell | undefined): number | undefined {
  return typeof cell === "number" ? cell : undefined;
}

/** How the rows of the two functions are called on the screen. */
export const CHANGE_NAMES: Readonly<Record<string, string>> = {
  new: "New: low before, high now",
  recovered: "Recovered: high before, low now",
  lasting: "Lasting: high both times",
  "first high": "High at their first test",
  "high now": "High now",
  cured: "Cured: dried off high, low after calving",
  "high both times": "High before and after",
  "first calvers high": "First calvers high",
};
