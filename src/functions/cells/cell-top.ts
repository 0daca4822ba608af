import { tankCountWithout, tankTotals } from "../../core/cells/tank";
import { largestLosses } from "../../core/cells/top-cows";
import { normanMillerRoss2009 } from "../../core/reference/norman-miller-ross-2009";
import { DomainError, shown } from "../../core/shared/domain-error";
import { milkFromKg, type MilkUnit } from "../../core/shared/milk-units";
import { NO_WORD } from "../../core/shared/words";
import type { CellValue } from "../cell";
import { cows } from "../claws/kinds";
import { type Column, numbersOf, rowName, wholeNumbersOf, wordsOf } from "../columns";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";
import {
  columnInThousands,
  countsParameter,
  type CountUnit,
  dayMilksParameter,
  inUnit,
  lactationsParameter,
  milkPriceParameter,
  milkUnitParameter,
  NO_DIAGNOSIS,
  unitParameter,
  WITHHELD_MILK,
} from "./kinds";
import {
  DAILY_SOURCES,
  dailyModelNamed,
  dailyModelParameter,
  LOSS_LIMITS,
  readHerd,
  remarkOnHerd,
} from "./kinds-of-loss";

const listLength = number({ min: 1, max: 1000, whole: true, reason: "a list that someone reads", zeroIsBlank: true });

/** Days that the money of a cow is shown over. */
const MONTH_DAYS = 30;

const COLUMNS = [
  { heading: "cow", type: "text" },
  { heading: "count", type: "number", format: "#,##0" },
  { heading: "loss a day", type: "number", unit: "milkUnit", format: "0.00" },
  { heading: "money in 30 days", type: "number", format: "0.00" },
  { heading: "share of the loss", type: "number", format: "0%" },
  { heading: "share of the tank's cells", type: "number", format: "0%" },
  { heading: "tank without her", type: "number", format: "#,##0" },
] as const;
const HEADINGS = COLUMNS.map(({ heading }) => heading);

interface Given {
  readonly cows: Column<string>;
  readonly counts: Column<number>;
  readonly lactations: Column<number>;
  readonly milk: Column<number>;
  readonly number: number;
  readonly milkPrice: number;
  readonly model: string;
  readonly unit: CountUnit;
  readonly milkUnit: MilkUnit;
}

export const cellTop = defineFunction({
  id: "CELL.TOP",
  group: "Cell counts",
  summary: "The cows that lose most milk to their cell counts, with the money and what each does to the tank.",
  parameters: {
    cows: required(cows, "Cows of one test day"),
    counts: countsParameter,
    lactations: lactationsParameter,
    milk: dayMilksParameter,
    number: required(listLength, "How many cows to list"),
    milkPrice: milkPriceParameter,
    model: dailyModelParameter,
    unit: unitParameter,
    milkUnit: milkUnitParameter,
  },
  result: { shape: "table", columns: COLUMNS },
  sources: [...DAILY_SOURCES, normanMillerRoss2009],
  limits: [
    "Sorted by milk lost, equal losses in the order of the rows; cows at or below 50 thousand are not listed.",
    "The last two columns stay blank for a cow without milk: the tank is reckoned from cows with count and milk.",
    "One row a cow: a list of several test days is refused.",
    ...LOSS_LIMITS,
  ],
  cautions: [NO_DIAGNOSIS, WITHHELD_MILK],
  examples: [
    {
      arguments: [
        [["A1"], ["A2"], ["A3"]],
        [[100], [400], [50]],
        [[1], [2], [3]],
        [[30], [10], [20]],
        2,
        0.5,
        "Hortet-Seegers 1998",
        null,
        "kg",
      ],
      result: [[...HEADINGS], ["A2", 400, 1.8, 27, 0.8182, 0.5, 80], ["A1", 100, 0.4, 6, 0.1818, 0.375, 166.6667]],
      decimals: 4,
      origin: "hand",
      where:
        "3 × 0.6 and 1 × 0.4 kg a day; × 30 × 0.5; cells 3,000 + 4,000 + 1,000 of 60 milk: without A2 4,000 / 50, without A1 5,000 / 30",
    },
    {
      arguments: [[["A1"], ["A2"]], [[40], [null]], [[1], [2]], [[30], [10]], 5, 0.5],
      result: [[...HEADINGS]],
      origin: "hand",
      where: "no cow above 50 thousand",
    },
  ],
  compute(given, remarks) {
    const { herd, listed } = read(given);
    remarkOnHerd(herd, 1, remarks);
    if (listed.length === 0) remarks.add("no cow is above 50 thousand cells/mL");
    return [[...HEADINGS], ...listed];
  },
  steps(given, result) {
    const { herd, total } = read(given);
    const [, ...rows] = result as readonly (readonly CellValue[])[];
    const listed = rows.reduce((sum, row) => sum + (row[2] as number), 0);
    return [
      {
        label: "Cows with a count",
        working: `${herd.withoutCount} left out: no count`,
        value: String(herd.first.cows + herd.later.cows + herd.unknown.cows),
      },
      { label: "Loss of the herd a day", working: given.model, value: `${figure(total)} ${given.milkUnit}` },
      {
        label: `Loss of the ${rows.length} listed`,
        working: "doublings above 50 thousand × slope, cow by cow",
        value: `${figure(listed)} ${given.milkUnit}`,
      },
      {
        label: "Money",
        working: `loss × ${MONTH_DAYS} days × ${given.milkPrice}`,
        value: `${figure(listed * MONTH_DAYS * given.milkPrice)} for the listed`,
      },
    ];
  },
});

function read(given: Given) {
  const { counts, lactations, milk, unit, milkUnit } = given;
  const model = dailyModelNamed(given.model, milkUnit);
  const herd = readHerd(counts, lactations, unit, model);
  const [thousands, yields] = [columnInThousands(counts, unit), numbersOf(milk)];
  refuseUnclearCows(given.cows, counts, thousands);
  const { most, totalKg } = largestLosses(thousands, wholeNumbersOf(lactations), model, given.number);
  const tank = tankTotals(thousands, yields);
  const listed = most.map(({ row, lossKgPerDay }): CellValue[] => {
    const loss = milkFromKg(lossKgPerDay, milkUnit);
    const [count, yielded] = [thousands[row]!, yields[row]!];
    const inTank = !Number.isNaN(yielded);
    const without = inTank ? tankCountWithout(tank, count, yielded) : undefined;
    return [
      given.cows.at(row)!,
      inUnit(count, unit),
      loss,
      loss * MONTH_DAYS * given.milkPrice,
      lossKgPerDay / totalKg,
      inTank ? (count * yielded) / tank.cells : "",
      without === undefined ? "" : inUnit(without, unit),
    ];
  });
  return { herd, listed, total: milkFromKg(totalKg, milkUnit) };
}

/** A list by cow needs every counted row to name its cow, and each cow once. */
function refuseUnclearCows(cows: Column<string>, counts: Column<number>, thousands: Float64Array): void {
  const { places, count } = wordsOf(cows);
  /** For each cow whether a row above is hers. */
  const isMet = new Uint8Array(count + 1);
  for (let row = 0; row < places.length; row++) {
    if (Number.isNaN(thousands[row]!)) continue;
    const place = places[row]!;
    if (place === NO_WORD) {
      throw new DomainError(
        "invalid",
        `${rowName(cows.argument, row)} must name the cow, since ${rowName(counts.argument, row)} holds a count; got a blank`,
      );
    }
    if (isMet[place] === 1) {
      const first = places.findIndex((other, above) => other === place && !Number.isNaN(thousands[above]!));
      throw new DomainError(
        "invalid",
        `cows must name each cow once (one test day); got ${shown(cows.at(row))} in rows ${first + 1} and ${row + 1}`,
      );
    }
    isMet[place] = 1;
  }
}
