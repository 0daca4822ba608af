import { type LossModel, slopeFor } from "./loss-models";
import { doublingsAboveBase } from "./milk-loss";

/** A row of the herd and what its cow loses a day. */
export interface RowLoss {
  readonly row: number;
  readonly lossKgPerDay: number;
}

export interface LargestLosses {
  /** The rows that lose most, largest first, equal losses in the order of the rows. */
  readonly most: readonly RowLoss[];
  /** What all rows lose together, kg a day. */
  readonly totalKg: number;
}

/** So many rows at least are kept before they are sorted and cut down to those asked for. */
const FEWEST_KEPT = 64;

/**
 * The `number` rows that lose most, and what all lose; rows that lose nothing are left out. `counts` in thousand
 * cells/mL, NaN for no value; `lactations` from 1, NaN or 0 for no value. Throws where a model must know a lactation
 * that is not there.
 */
export function largestLosses(
  counts: ArrayLike<number>,
  lactations: ArrayLike<number>,
  model: LossModel,
  number: number,
): LargestLosses {
  const mostKept = Math.max(2 * number, FEWEST_KEPT);
  let kept: RowLoss[] = [];
  let least = 0;
  let totalKg = 0;
  for (let row = 0; row < counts.length; row++) {
    const count = counts[row]!;
    if (Number.isNaN(count)) continue;
    const lactation = lactations[row]!;
    const lossKgPerDay = doublingsAboveBase(count) * slopeFor(model, lactation > 0 ? lactation : undefined);
    totalKg += lossKgPerDay;
    // A later row with the least of the losses kept would come after it.
    if (!(lossKgPerDay > least)) continue;
    kept.push({ row, lossKgPerDay });
    if (kept.length < mostKept) continue;
    kept = largest(kept, number);
    least = kept.at(-1)!.lossKgPerDay;
  }
  return { most: largest(kept, number), totalKg };
}

function largest(rows: RowLoss[], number: number): RowLoss[] {
  return rows.sort((a, b) => b.lossKgPerDay - a.lossKgPerDay || a.row - b.row).slice(0, number);
}
