import { tankTotals } from "../../core/cells/tank";
import { normanMillerRoss2009 } from "../../core/reference/norman-miller-ross-2009";
import { unavailable } from "../../core/shared/domain-error";
import { numbersOf } from "../columns";
import { defineFunction } from "../define";
import { figure } from "../figure";
import {
  cappedIn,
  columnInThousands,
  countsParameter,
  dayMilksParameter,
  inUnit,
  remarkOnCapped,
  remarkOnTank,
  unitParameter,
  WITHHELD_MILK,
} from "./kinds";

export const tankShares = defineFunction({
  id: "TANK.SHARES",
  group: "Cell counts",
  summary: "Each cow's share of the cells in the tank: her count times her milk, over that of all cows.",
  parameters: { counts: countsParameter, milk: dayMilksParameter, unit: unitParameter },
  result: { shape: "column", type: "number", unit: "share", format: "0.0%" },
  sources: [normanMillerRoss2009],
  limits: ["Rows without a count or without milk stay blank; the shares of the others add up to 1."],
  cautions: [WITHHELD_MILK],
  examples: [
    {
      arguments: [
        [[100], [500], [null]],
        [[30], [10], [20]],
      ],
      result: [[0.375], [0.625], [""]],
      origin: "hand",
      where: "3,000 and 5,000 of 8,000",
    },
    {
      arguments: [
        [[38], [95], [210], [50], [25], [200], [400], [1600]],
        [[24], [26.5], [22], [34], [36], [30], [28], [25]],
      ],
      result: [[0.013], [0.037], [0.068], [0.025], [0.013], [0.088], [0.165], [0.59]],
      decimals: 3,
      origin: "hand",
      where: "count × milk over 67,849.5",
    },
  ],
  compute({ counts, milk, unit }, remarks) {
    const thousands = columnInThousands(counts, unit);
    const yields = numbersOf(milk);
    const totals = tankTotals(thousands, yields);
    if (totals.cows === 0) throw unavailable("counts and milk hold no row with both: enter at least one cow");
    remarkOnTank(totals, remarks);
    remarkOnCapped(cappedIn(thousands), remarks);
    return Array.from(thousands, (count, row) => {
      const share = (count * yields[row]!) / totals.cells;
      return [Number.isNaN(share) ? "" : share];
    });
  },
  steps({ counts, milk, unit }, shares) {
    const totals = tankTotals(columnInThousands(counts, unit), numbersOf(milk));
    const largest = (shares as readonly (readonly [number | ""])[]).reduce(
      (best, [share], row) => (share !== "" && share > best.share ? { share, row } : best),
      { share: 0, row: 0 },
    );
    return [
      {
        label: "Cows used",
        working: `${totals.withoutCount} left out without a count, ${totals.withoutMilk} without milk`,
        value: String(totals.cows),
      },
      { label: "Cells of all", working: "sum of count × milk", value: figure(inUnit(totals.cells, unit)) },
      {
        label: "Largest share",
        working: `row ${largest.row + 1}: her count × milk / all`,
        value: `${figure(largest.share * 100, 1)} %`,
      },
    ];
  },
});
