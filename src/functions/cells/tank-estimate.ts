import { tankCount, tankTotals } from "../../core/cells/tank";
import { normanMillerRoss2009 } from "../../core/reference/norman-miller-ross-2009";
import { unavailable } from "../../core/shared/domain-error";
import { numbersOf } from "../columns";
import { defineFunction } from "../define";
import { figure } from "../figure";
import {
  cappedIn,
  columnInThousands,
  countText,
  countsParameter,
  dayMilksParameter,
  inUnit,
  remarkOnCapped,
  remarkOnTank,
  unitParameter,
  WITHHELD_MILK,
} from "./kinds";

export const tankEstimate = defineFunction({
  id: "TANK.ESTIMATE",
  group: "Cell counts",
  summary: "Cell count of the tank as the cows' tests foretell it: their counts weighted by their milk.",
  parameters: { counts: countsParameter, milk: dayMilksParameter, unit: unitParameter },
  result: { shape: "scalar", type: "number", unit: "as the counts", format: "#,##0" },
  sources: [normanMillerRoss2009],
  limits: [
    "Cows with both a count and milk. Blank the milk of cows whose milk is kept out of the tank.",
    "The tank itself differs: cows not sampled, part-day samples, another day, several milkings, counts at the laboratory's cap.",
  ],
  cautions: [WITHHELD_MILK],
  examples: [
    {
      arguments: [
        [[100], [500]],
        [[30], [10]],
      ],
      result: 200,
      origin: "hand",
      where: "(100 × 30 + 500 × 10) / (30 + 10)",
    },
    {
      arguments: [
        [[38], [95], [210], [50], [25], [200], [400], [1600], [0], [null]],
        [[24], [26.5], [22], [34], [36], [30], [28], [25], [31], [33]],
      ],
      result: 300.88,
      decimals: 2,
      origin: "hand",
      where: "sum of count × milk 67,849.5 / milk of the eight cows with a count 225.5",
    },
  ],
  compute({ counts, milk, unit }, remarks) {
    const thousands = columnInThousands(counts, unit);
    const totals = tankTotals(thousands, numbersOf(milk));
    if (totals.cows === 0) throw unavailable("counts and milk hold no row with both: enter at least one cow");
    remarkOnTank(totals, remarks);
    remarkOnCapped(cappedIn(thousands), remarks);
    return inUnit(tankCount(totals), unit);
  },
  steps({ counts, milk, unit }, estimate) {
    const totals = tankTotals(columnInThousands(counts, unit), numbersOf(milk));
    const { cows, withoutCount, withoutMilk } = totals;
    return [
      {
        label: "Cows used",
        working: `${withoutCount} left out without a count, ${withoutMilk} without milk`,
        value: String(cows),
      },
      { label: "Milk", working: "sum of their milk", value: figure(totals.milk) },
      { label: "Cells", working: "sum of count × milk", value: figure(inUnit(totals.cells, unit)) },
      { label: "Tank", working: "cells / milk", value: countText(estimate as number, unit) },
    ];
  },
});
