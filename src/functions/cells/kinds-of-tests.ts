import { USUAL_LIMIT_THOUSAND } from "../../core/cells/high-counts";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import type { CellValue } from "../cell";
import { optional, type ResultColumn } from "../define";
import { cellCount, type CountUnit, inThousands } from "./kinds";

export const limitParameter = optional(
  cellCount,
  "Count from which a cow is high, in the unit of the counts; exactly the limit is high",
  "200 thousand cells/mL",
);

/** The limit in thousand cells/mL. */
export function limitInThousands(limit: number | undefined, unit: CountUnit): number {
  return limit === undefined ? USUAL_LIMIT_THOUSAND : inThousands(limit, unit, "limit");
}

/** Fewer cows than this make a share that says little. Common practice, no source. */
export const FEW_COWS = 10;

const share = (heading: string): ResultColumn => ({ heading, type: "number", unit: "share", format: "0%" });

/** A table of cows, of how many they are, and their share with its limits. */
export const SHARE_COLUMNS: readonly ResultColumn[] = [
  { heading: "figure", type: "text" },
  { heading: "cows", type: "number", format: "0" },
  { heading: "of", type: "number", format: "0" },
  share("share"),
  share("lower limit"),
  share("upper limit"),
  { heading: "note", type: "text" },
];

export const SHARE_HEADINGS = SHARE_COLUMNS.map(({ heading }) => heading);

/** One row of that table: the share of the cows at risk, with its 95 % limits, and whose share it is. */
export function shareRow(figure: string, cows: number, of: number, whose: string): CellValue[] {
  if (of === 0) return [figure, cows, of, "", "", "", `no ${whose}`];
  const { low, high } = wilsonInterval(cows, of, USUAL_LEVEL);
  return [figure, cows, of, cows / of, low, high, `of ${whose}${of < FEW_COWS ? "; few cows" : ""}`];
}

/** A row that only counts cows. */
export function countRow(figure: string, cows: number, note: string): CellValue[] {
  return [figure, cows, "", "", "", "", note];
}
