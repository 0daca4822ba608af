/** The cows whose milk and count are both known, as the tank would mix them. */
export interface TankTotals {
  readonly cows: number;
  readonly milk: number;
  /** Sum of count × milk. */
  readonly cells: number;
  /** Rows with milk and no count, and with a count and no milk. */
  readonly withoutCount: number;
  readonly withoutMilk: number;
}

/**
 * Adds up milk and cells of the rows that hold both; NaN stands for no value. Any unit of milk serves, as it cancels.
 * Source: Norman, Miller & Ross 2009 (a herd's count is its cows' counts weighted by their milk of the test day).
 */
export function tankTotals(counts: ArrayLike<number>, milk: ArrayLike<number>): TankTotals {
  let cows = 0;
  let totalMilk = 0;
  let cells = 0;
  let withoutCount = 0;
  let withoutMilk = 0;
  for (let row = 0; row < counts.length; row++) {
    const count = counts[row]!;
    const yielded = milk[row]!;
    if (Number.isNaN(count)) {
      if (!Number.isNaN(yielded)) withoutCount++;
    } else if (Number.isNaN(yielded)) {
      withoutMilk++;
    } else {
      cows++;
      totalMilk += yielded;
      cells += count * yielded;
    }
  }
  return { cows, milk: totalMilk, cells, withoutCount, withoutMilk };
}

/** Count of the tank that these cows would fill, in the unit of their counts. At least one cow is needed. */
export function tankCount({ cells, milk }: { readonly cells: number; readonly milk: number }): number {
  return cells / milk;
}

/** The same without one cow's milk; undefined when no other is left. */
export function tankCountWithout(totals: TankTotals, count: number, milk: number): number | undefined {
  if (totals.cows < 2) return undefined;
  return Math.max(0, totals.cells - count * milk) / (totals.milk - milk);
}
