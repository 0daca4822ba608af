import { LOSS_BASE_THOUSAND, DAILY_MODELS } from "../../../src/core/cells/loss-models";
import { MILK_KG_PER_LITRE } from "../../../src/core/shared/milk-units";
import { LOSS_DAYS } from "../cell-sheet";
import type { ColumnOfCells, MilkTest } from "../herd-data";
import type { Figures } from "../sheet";

/** The limit: what is left when nobody reads cells, checks them or leaves one out. */

const [MODEL] = DAILY_MODELS;

/** A column as it would have to stand in memory for that. */
function typed(column: ColumnOfCells): Float64Array {
  return Float64Array.from(column, (cell) => (cell === null ? NaN : (cell as number)));
}

/** The herd's loss with a logarithm a cow. */
export function herdLossLoop(test: MilkTest): () => number {
  const [counts, lactations] = [typed(test.counts), typed(test.lactations)];
  return () => {
    let kgPerDay = 0;
    for (let row = 0; row < counts.length; row++) {
      const count = counts[row]!;
      if (count > LOSS_BASE_THOUSAND)
        kgPerDay += Math.log2(count / LOSS_BASE_THOUSAND) * (lactations[row] === 1 ? MODEL.first : MODEL.later);
    }
    return (kgPerDay * LOSS_DAYS) / MILK_KG_PER_LITRE;
  };
}

/** Products below this are far from the largest number there is. */
const LARGE_PRODUCT = 1e250;

/** The same with one logarithm for many cows, as the function itself computes it. */
export function herdLossLoopOfProducts(test: MilkTest): () => number {
  const [counts, lactations] = [typed(test.counts), typed(test.lactations)];
  return () => {
    let [first, later, firstProduct, laterProduct] = [0, 0, 1, 1];
    for (let row = 0; row < counts.length; row++) {
      const count = counts[row]!;
      if (!(count > LOSS_BASE_THOUSAND)) continue;
      if (lactations[row] === 1) {
        firstProduct *= count / LOSS_BASE_THOUSAND;
        if (firstProduct < LARGE_PRODUCT) continue;
        first += Math.log2(firstProduct);
        firstProduct = 1;
      } else {
        laterProduct *= count / LOSS_BASE_THOUSAND;
        if (laterProduct < LARGE_PRODUCT) continue;
        later += Math.log2(laterProduct);
        laterProduct = 1;
      }
    }
    first += Math.log2(firstProduct);
    later += Math.log2(laterProduct);
    return ((first * MODEL.first + later * MODEL.later) * LOSS_DAYS) / MILK_KG_PER_LITRE;
  };
}

/** The sums that HERD.CELL.SUMMARY is made of, in one pass. */
export function summaryLoop(test: MilkTest): () => Figures {
  const [counts, lactations, milk] = [typed(test.counts), typed(test.lactations), typed(test.milk)];
  return () => {
    let [counted, sum, logs, cells, litres, high, first, later, lost] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
    for (let row = 0; row < counts.length; row++) {
      const count = counts[row]!;
      if (Number.isNaN(count)) continue;
      const isFirst = lactations[row] === 1;
      counted++;
      sum += count;
      logs += Math.log2(count);
      if (count >= 200) high++;
      if (isFirst) first++;
      else later++;
      if (count > LOSS_BASE_THOUSAND)
        lost += Math.log2(count / LOSS_BASE_THOUSAND) * (isFirst ? MODEL.first : MODEL.later);
      const yielded = milk[row]!;
      if (Number.isNaN(yielded)) continue;
      cells += count * yielded;
      litres += yielded;
    }
    return {
      "cows with a count": counted,
      "mean count": sum / counted,
      "geometric mean": 2 ** (logs / counted),
      "tank estimate": cells / litres,
      "high cows": high,
      "first lactation": first,
      "later lactations": later,
      "milk lost, central": (lost * LOSS_DAYS) / MILK_KG_PER_LITRE,
    };
  };
}
