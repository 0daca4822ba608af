import { tankCount, tankCountWithout, tankTotals, type TankTotals } from "../../core/cells/tank";
import { normanMillerRoss2009 } from "../../core/reference/norman-miller-ross-2009";
import { DomainError, shown, unavailable } from "../../core/shared/domain-error";
import { cow, cows } from "../claws/kinds";
import { type Column, numbersOf } from "../columns";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import {
  cappedIn,
  columnInThousands,
  countText,
  countsParameter,
  type CountUnit,
  dayMilksParameter,
  inUnit,
  remarkOnCapped,
  remarkOnTank,
  unitParameter,
  WITHHELD_MILK,
} from "./kinds";

interface Given {
  readonly cows: Column<string>;
  readonly counts: Column<number>;
  readonly milk: Column<number>;
  readonly cow: string;
  readonly unit: CountUnit;
}

export const tankWithout = defineFunction({
  id: "TANK.WITHOUT",
  group: "Cell counts",
  summary: "Cell count of the tank as the cows' tests foretell it, without one cow's milk.",
  parameters: {
    cows: required(cows, "Cows of one test day"),
    counts: countsParameter,
    milk: dayMilksParameter,
    cow: required(cow, "The cow to leave out"),
    unit: unitParameter,
  },
  result: { shape: "scalar", type: "number", unit: "as the counts", format: "#,##0" },
  sources: [normanMillerRoss2009],
  limits: [
    "Cows with both a count and milk; what the tank holds of other cows is not known.",
    "One row a cow: a list of several test days is refused.",
  ],
  cautions: [WITHHELD_MILK],
  examples: [
    {
      arguments: [[["A1"], ["A2"]], [[100], [500]], [[30], [10]], "A2"],
      result: 100,
      origin: "hand",
      where: "only A1 is left",
    },
    {
      arguments: [
        [["A1"], ["A2"], ["A3"], ["B1"], ["B2"], ["B3"], ["B4"], ["B5"], ["B6"], ["B7"]],
        [[38], [95], [210], [50], [25], [200], [400], [1600], [0], [null]],
        [[24], [26.5], [22], [34], [36], [30], [28], [25], [31], [33]],
        "B5",
      ],
      result: 138.9,
      decimals: 2,
      origin: "hand",
      where: "(67,849.5 - 1,600 × 25) / (225.5 - 25)",
    },
  ],
  compute(given, remarks) {
    const { totals, row, thousands, yields } = read(given);
    remarkOnTank(totals, remarks);
    remarkOnCapped(cappedIn(thousands), remarks);
    const without = tankCountWithout(totals, thousands[row]!, yields[row]!);
    if (without === undefined) throw unavailable(`no other cow than ${shown(given.cow)} has a count and milk`);
    return inUnit(without, given.unit);
  },
  steps(given, result) {
    const { totals, row, thousands, yields } = read(given);
    const [count, milk] = [inUnit(thousands[row]!, given.unit), yields[row]!];
    const cells = inUnit(totals.cells, given.unit);
    return [
      {
        label: "Tank with all cows",
        working: `${figure(cells)} / ${figure(totals.milk)} of milk`,
        value: countText(inUnit(tankCount(totals), given.unit), given.unit),
      },
      {
        label: `Cow ${given.cow}`,
        working: `${figure(count)} × ${figure(milk)}`,
        value: figure(count * milk),
      },
      {
        label: "Tank without her",
        working: `(${figure(cells)} - ${figure(count * milk)}) / (${figure(totals.milk)} - ${figure(milk)})`,
        value: countText(result as number, given.unit),
      },
    ];
  },
});

function read({ cows, counts, milk, cow, unit }: Given): {
  readonly totals: TankTotals;
  readonly row: number;
  readonly thousands: Float64Array;
  readonly yields: Float64Array;
} {
  const [thousands, yields] = [columnInThousands(counts, unit), numbersOf(milk)];
  const row = cows.values.indexOf(cow);
  if (row < 0) throw unavailable(`cow ${shown(cow)} is not in cows`);
  const again = cows.values.indexOf(cow, row + 1);
  if (again >= 0) {
    throw new DomainError(
      "invalid",
      `cows must name each cow once (one test day); got ${shown(cow)} in rows ${row + 1} and ${again + 1}`,
    );
  }
  if (Number.isNaN(thousands[row]! + yields[row]!)) {
    throw unavailable(`cow ${shown(cow)} has no count or no milk in row ${row + 1}: the tank was reckoned without her`);
  }
  return { totals: tankTotals(thousands, yields), row, thousands, yields };
}
