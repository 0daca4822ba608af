import { herdLossKgPerDay } from "../../core/cells/herd-doublings";
import { type HerdSummary, herdSummary } from "../../core/cells/herd-summary";
import { DAILY_MODELS, HIGHEST_DAILY, LOWEST_DAILY, type LossModel } from "../../core/cells/loss-models";
import { scoreOfCount } from "../../core/cells/score";
import { tankCount } from "../../core/cells/tank";
import { dohooLeslie1991 } from "../../core/reference/dohoo-leslie-1991";
import { normanMillerRoss2009 } from "../../core/reference/norman-miller-ross-2009";
import { milkFromKg, type MilkUnit } from "../../core/shared/milk-units";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import type { CellValue } from "../cell";
import { type Column, numbersOf, wholeNumbersOf } from "../columns";
import { defineFunction } from "../define";
import { counted, figure } from "../figure";
import {
  columnInThousands,
  countOfScoreText,
  countsParameter,
  countText,
  type CountUnit,
  dayMilksParameter,
  daysParameter,
  inUnit,
  lactationsParameter,
  milkPriceParameter,
  milkUnitParameter,
  noCount,
  unitParameter,
} from "./kinds";
import {
  aUnitOf,
  DAILY_SOURCES,
  DAYS_IN_MILK_A_YEAR,
  LOSS_LIMITS,
  remarkOnHerd,
  withoutLactation,
} from "./kinds-of-loss";

interface Given {
  readonly counts: Column<number>;
  readonly lactations: Column<number>;
  readonly milk: Column<number>;
  readonly days: number;
  readonly milkPrice: number;
  readonly unit: CountUnit;
  readonly milkUnit: MilkUnit;
}

type Row = readonly [figure: string, value: CellValue, unit: string, note: string];

const HEADINGS = ["figure", "value", "unit", "note"] as const;

/** Fewer animals than this make a share that says little. Common practice, no source. */
const FEW = 10;

export const cellSummary = defineFunction({
  id: "CELL.SUMMARY",
  group: "Cell counts",
  summary:
    "A test day of the herd: cows, averages, tank, high cows, milk and money lost, low to high between published models.",
  parameters: {
    counts: countsParameter,
    lactations: lactationsParameter,
    milk: dayMilksParameter,
    days: daysParameter,
    milkPrice: milkPriceParameter,
    unit: unitParameter,
    milkUnit: milkUnitParameter,
  },
  result: {
    shape: "table",
    columns: [
      { heading: "figure", type: "text" },
      { heading: "value", type: "number", format: "#,##0.00" },
      { heading: "unit", type: "text" },
      { heading: "note", type: "text" },
    ],
  },
  sources: [...DAILY_SOURCES, normanMillerRoss2009, dohooLeslie1991],
  limits: [
    "Low and high are the lowest and the highest of the published models here, not limits of confidence.",
    "Loss and money stay blank while a cow with a count has no lactation number: a total without her would be too low.",
    "Gross: feed not eaten, bonus and penalty of the tank, withheld milk, treatment and culling are not in the money.",
    ...LOSS_LIMITS,
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[200], [200], [null]], [[1], [2], [3]], [[20], [30], [25]], 305, 0.5, null, "kg"],
      result: [
        [...HEADINGS],
        ["cows listed", 3, "cows", ""],
        ["cows with a count", 2, "cows", ""],
        ["left out", 1, "cows", "no count"],
        ["counts at the cap", 0, "cows", ""],
        ["mean count", 200, "thousand", "arithmetic mean of the cows"],
        ["geometric mean", 200, "thousand", "the usual cow"],
        ["mean score", 4, "score", ""],
        ["tank estimate", 200, "thousand", "2 cows, weighted by milk; 1 cow with milk has no count"],
        ["high cows", 2, "cows", "200 thousand or more"],
        ["share high", 1, "share", "95 % limits 0.34 to 1; few cows"],
        ["first lactation", 1, "cows", ""],
        ["later lactations", 1, "cows", ""],
        ["days", 305, "days", ""],
        ["milk lost, low", 400, "kg", "Hortet-Seegers 1998, lactation figure / 305 days"],
        ["milk lost, central", 622.56, "kg", "US extension table"],
        ["milk lost, high", 1012.6, "kg", "Luo 2022"],
        ["of it first lactation", 207.52, "kg", "of the central figure"],
        ["of it later lactations", 415.04, "kg", "of the central figure"],
        ["central, a cow and day", 1.02, "kg", "of the cows with a count"],
        ["money lost, low", 200, "money", "at 0.5 a kg, before feed saved"],
        ["money lost, central", 311.28, "money", "at 0.5 a kg, before feed saved"],
        ["money lost, high", 506.3, "money", "at 0.5 a kg, before feed saved"],
      ],
      decimals: 2,
      origin: "hand",
      where:
        "2 doublings each: low 2 × 80 + 2 × 120; central (1.5 + 3) lb × 0.45359237 × 305; high 4 × 0.830 × 305; Wilson limits of 2 of 2: 1 / (1 + 1.96² / 2)",
    },
    {
      arguments: [[[100]], [[null]], [[null]], 100, 1],
      result: [
        [...HEADINGS],
        ["cows listed", 1, "cows", ""],
        ["cows with a count", 1, "cows", ""],
        ["left out", 0, "cows", "no count"],
        ["counts at the cap", 0, "cows", ""],
        ["mean count", 100, "thousand", "arithmetic mean of the cows"],
        ["geometric mean", 100, "thousand", "the usual cow"],
        ["mean score", 3, "score", ""],
        ["tank estimate", "", "thousand", "no cow with count and milk"],
        ["high cows", 0, "cows", "200 thousand or more"],
        ["share high", 0, "share", "95 % limits 0 to 0.79; few cows"],
        ["first lactation", 0, "cows", ""],
        ["later lactations", 0, "cows", ""],
        ["days", 100, "days", ""],
        ...[
          "milk lost, low",
          "milk lost, central",
          "milk lost, high",
          "of it first lactation",
          "of it later lactations",
          "central, a cow and day",
        ].map((name) => [
          name,
          "",
          "litres",
          "lactations must hold a lactation number wherever there is a count; got a blank or 0 in row 1",
        ]),
        ...["money lost, low", "money lost, central", "money lost, high"].map((name) => [
          name,
          "",
          "money",
          "lactations must hold a lactation number wherever there is a count; got a blank or 0 in row 1",
        ]),
      ],
      decimals: 2,
      origin: "hand",
      where: "one cow at 100 thousand, score 3, lactation unknown; Wilson upper limit of 0 of 1: 1.96² / (1 + 1.96²)",
    },
  ],
  compute(given, remarks) {
    const summary = read(given);
    remarkOnHerd(summary.herd, given.days, remarks);
    if (summary.herd.unknown.cows > 0) remarks.add(withoutLactation(summary.herd, "lactations"));
    return [[...HEADINGS], ...countRows(summary, given), ...lossRows(summary, given)];
  },
  steps(given, result) {
    const { averages, tank, herd, listed } = read(given);
    const rows = result as readonly Row[];
    const lossOf = (name: string, unit: string): string => {
      const [, value] = rows.find(([label]) => label === name)!;
      return value === "" ? NOT_COMPUTED : `${figure(value as number)}${unit}`;
    };
    return [
      {
        label: "Cows",
        working: `${listed} listed, ${listed - averages.cows} without a count`,
        value: counted(averages.cows, "cow"),
      },
      {
        label: "Geometric mean",
        working: countOfScoreText(scoreOfCount(averages.geometric), given.unit),
        value: countText(inUnit(averages.geometric, given.unit), given.unit),
      },
      {
        label: "Tank",
        working: tank.cows > 0 ? `sum of count × milk / ${figure(tank.milk)} of milk` : tankNote(tank),
        value: tank.cows > 0 ? countText(inUnit(tankCount(tank), given.unit), given.unit) : NOT_COMPUTED,
      },
      {
        label: "Doublings above 50 thousand",
        working: "sum of log2(count / 50), cows above 50 only",
        value: `${figure(herd.first.doublings, 3)} first, ${figure(herd.later.doublings, 3)} later lactations`,
      },
      ...LEVELS.map(({ label, model }) => ({
        label: `Milk lost, ${label}`,
        working: `(first × ${figure(model.first, 4)} + later × ${figure(model.later, 4)}) kg × ${counted(given.days, "day")}, ${model.name}`,
        value: lossOf(`milk lost, ${label}`, ` ${given.milkUnit}`),
      })),
      {
        label: "Money",
        working: `central milk × ${given.milkPrice} ${aUnitOf(given.milkUnit)}`,
        value: lossOf("money lost, central", ""),
      },
    ];
  },
});

const NOT_COMPUTED = "not computed";

const LEVELS: readonly { readonly label: string; readonly model: LossModel }[] = [
  { label: "low", model: LOWEST_DAILY },
  { label: "central", model: DAILY_MODELS[0] },
  { label: "high", model: HIGHEST_DAILY },
];

function read({ counts, lactations, milk, unit }: Given): HerdSummary {
  const summary = herdSummary(columnInThousands(counts, unit), wholeNumbersOf(lactations), numbersOf(milk));
  if (summary.averages.cows === 0) throw noCount("counts");
  return summary;
}

function countRows({ listed, averages, tank, high, herd }: HerdSummary, { unit, days }: Given): Row[] {
  const { cows, arithmetic, geometric } = averages;
  const { low, high: upper } = wilsonInterval(high, cows, USUAL_LEVEL);
  return [
    ["cows listed", listed, "cows", ""],
    ["cows with a count", cows, "cows", ""],
    ["left out", listed - cows, "cows", "no count"],
    [
      "counts at the cap",
      herd.capped,
      "cows",
      herd.capped > 0 ? "9,999 thousand: the true counts are that or more" : "",
    ],
    ["mean count", inUnit(arithmetic, unit), unit, "arithmetic mean of the cows"],
    ["geometric mean", inUnit(geometric, unit), unit, "the usual cow"],
    ["mean score", scoreOfCount(geometric), "score", ""],
    ["tank estimate", tank.cows > 0 ? inUnit(tankCount(tank), unit) : "", unit, tankNote(tank)],
    ["high cows", high, "cows", "200 thousand or more"],
    [
      "share high",
      high / cows,
      "share",
      `95 % limits ${figure(low)} to ${figure(upper)}${cows < FEW ? "; few cows" : ""}`,
    ],
    ["first lactation", herd.first.cows, "cows", ""],
    ["later lactations", herd.later.cows, "cows", ""],
    [
      "days",
      days,
      "days",
      days > DAYS_IN_MILK_A_YEAR
        ? "only right if every cow is in milk on all of them; with dry cows about 305 a year"
        : "",
    ],
  ];
}

function tankNote({ cows, withoutCount, withoutMilk }: HerdSummary["tank"]): string {
  if (cows === 0) return "no cow with count and milk";
  const notes = [`${counted(cows, "cow")}, weighted by milk`];
  if (withoutCount > 0)
    notes.push(`${counted(withoutCount, "cow")} with milk ${withoutCount === 1 ? "has" : "have"} no count`);
  if (withoutMilk > 0)
    notes.push(`${counted(withoutMilk, "cow")} with a count ${withoutMilk === 1 ? "has" : "have"} no milk`);
  return notes.join("; ");
}

function lossRows({ averages, herd }: HerdSummary, { days, milkPrice, milkUnit }: Given): Row[] {
  const complete = herd.unknown.cows === 0;
  const missing = complete ? "" : withoutLactation(herd, "lactations");
  const row = (name: string, value: number, unit: string, note: string): Row =>
    complete ? [name, value, unit, note] : [name, "", unit, missing];
  const milkOf = (kgPerDay: number): number => milkFromKg(kgPerDay * days, milkUnit);
  const central = DAILY_MODELS[0];
  const losses = LEVELS.map(({ label, model }) => ({ label, model, milk: milkOf(herdLossKgPerDay(herd, model)) }));
  const perCowAndDay = milkFromKg(herdLossKgPerDay(herd, central) / averages.cows, milkUnit);
  return [
    ...losses.map(({ label, model, milk }) => row(`milk lost, ${label}`, milk, milkUnit, model.name)),
    row("of it first lactation", milkOf(herd.first.doublings * central.first), milkUnit, "of the central figure"),
    row("of it later lactations", milkOf(herd.later.doublings * central.later), milkUnit, "of the central figure"),
    row("central, a cow and day", perCowAndDay, milkUnit, "of the cows with a count"),
    ...losses.map(({ label, milk }) =>
      row(`money lost, ${label}`, milk * milkPrice, "money", `at ${milkPrice} ${aUnitOf(milkUnit)}, before feed saved`),
    ),
  ];
}
