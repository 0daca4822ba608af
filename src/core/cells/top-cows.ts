import { type LossModel, slopeFor } from "./loss-models";
import { doublingsAboveBase } from "./milk-loss";

/** A row of the herd and what its cow loses a day. */
export interface RowLoss {
  readonly row: number;
  readonly lossKgPerDay: number;
}

/**
 * Loss of every row, kg a day; NaN where there is no count. `counts` in thousand cells/mL, NaN for no value.
 * Throws where a model must know a lactation that is not there.
 */
export function rowLosses(counts: ArrayLike<number>, lactations: ArrayLike<number>, model: LossModel): Float64Array {
  const losses = new Float64Array(counts.length).fill(NaN);
  for (let row = 0; row < counts.length; row++) {
    if (Number.isNaN(counts[row]!)) continue;
    const lactation = lactations[row]!;
    losses[row] = doublingsAboveBase(counts[row]!) * slopeFor(model, Number.isNaN(lactation) ? undefined : lactation);
  }
  return losses;
}

/** The rows that lose most, largest first, equal losses in the order of the rows; rows that lose nothing are left out. */
export function rowsThatLoseMost(losses: Float64Array, number: number): RowLoss[] {
  const losing = losses.filter((loss) => loss > 0).sort();
  const least = losing[Math.max(0, losing.length - number)] ?? Infinity;
  const rows: RowLoss[] = [];
  losses.forEach((lossKgPerDay, row) => {
    if (lossKgPerDay >= least) rows.push({ row, lossKgPerDay });
  });
  return rows.sort((a, b) => b.lossKgPerDay - a.lossKgPerDay || a.row - b.row).slice(0, number);
}
