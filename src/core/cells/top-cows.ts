import { type LossModel, slopeFor } from "./loss-models";
import { doublingsAboveBase } from "./milk-loss";

/** A row of the herd and what its cow loses a day. */
export interface RowLoss {
  readonly row: number;
  readonly lossKgPerDay: number;
}

/**
 * Loss of every row, kg a day; NaN where there is no count. `counts` in thousand cells/mL, NaN for no value;
 * `lactations` from 1, NaN or 0 for no value. Throws where a model must know a lactation that is not there.
 */
export function rowLosses(counts: ArrayLike<number>, lactations: ArrayLike<number>, model: LossModel): Float64Array {
  const losses = new Float64Array(counts.length).fill(NaN);
  for (let row = 0; row < counts.length; row++) {
    if (Number.isNaN(counts[row]!)) continue;
    const lactation = lactations[row]!;
    losses[row] = doublingsAboveBase(counts[row]!) * slopeFor(model, lactation > 0 ? lactation : undefined);
  }
  return losses;
}

/** So many rows at least are kept before they are sorted and cut down to those asked for. */
const FEWEST_KEPT = 64;

/** The rows that lose most, largest first, equal losses in the order of the rows; rows that lose nothing are left out. */
export function rowsThatLoseMost(losses: Float64Array, number: number): RowLoss[] {
  const mostKept = Math.max(2 * number, FEWEST_KEPT);
  let kept: RowLoss[] = [];
  let least = 0;
  for (let row = 0; row < losses.length; row++) {
    const lossKgPerDay = losses[row]!;
    // A later row with the least of the losses kept would come after it; NaN is never larger.
    if (!(lossKgPerDay > least)) continue;
    kept.push({ row, lossKgPerDay });
    if (kept.length < mostKept) continue;
    kept = largest(kept, number);
    least = kept.at(-1)!.lossKgPerDay;
  }
  return largest(kept, number);
}

function largest(rows: RowLoss[], number: number): RowLoss[] {
  return rows.sort((a, b) => b.lossKgPerDay - a.lossKgPerDay || a.row - b.row).slice(0, number);
}
