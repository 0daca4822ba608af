import { DAILY_MODELS, LACTATION_MODELS, type LossModel, splitsByLactation } from "../../core/cells/loss-models";
import {
  type CowGroup,
  countedCows,
  type HerdDoublings,
  herdDoublings,
  herdLossKgPerDay,
} from "../../core/cells/herd-doublings";
import { DomainError, invalid } from "../../core/shared/domain-error";
import { milkDensity, milkFromKg, milkInKg, type MilkUnit } from "../../core/shared/milk-units";
import { green2006 } from "../../core/reference/green-2006";
import { definition, type Source } from "../../core/shared/source";
import { type Column, wholeNumbersOf } from "../columns";
import { type Remarks, type Step, withDefault } from "../define";
import { counted, figure } from "../figure";
import type { ScalarKind } from "../kind";
import { scalarKind } from "../scalars";
import { columnInThousands, type CountUnit, noCount, remarkOnCapped } from "./kinds";

/** Other words for the default model. */
const EXTENSION_WORDS = new Set(["extension", "extensiontable", "usextension"]);

/** "own 0.40/0.80" or "own 0.5", with a unit of milk after it where it is not that of the result. */
const OWN_SLOPES = /^own\s+(\d+(?:[.,]\d+)?)(?:\s*\/\s*(\d+(?:[.,]\d+)?))?\s*(litres|kg|lb)?$/i;

/** A slope above this belongs to the other time: no paper comes near it. In kg a day and in kg a lactation. */
const HIGHEST_OWN_SLOPE = { day: 5, lactation: 1500 } as const;

type Time = keyof typeof HIGHEST_OWN_SLOPE;

function modelKind(models: readonly LossModel[], time: Time): ScalarKind<string> {
  const names = models.map(({ name }) => name);
  const must = `${names.map((name) => `"${name}"`).join(", ")}, or own slopes for first and later lactations such as "own ${
    time === "day" ? "0.40/0.80" : "80/160"
  }"`;
  return scalarKind({
    name: "model",
    limits: { choices: names },
    must,
    zeroIsBlank: true,
    readCell(cell, where) {
      const text = String(cell);
      const found = names.find((name) => bare(name) === bare(text));
      if (found !== undefined) return found;
      if (EXTENSION_WORDS.has(bare(text))) return names[0]!;
      if (!OWN_SLOPES.test(text)) throw invalid(where, must, cell);
      return text;
    },
  });
}

/** Letters and figures alone: "Hortet & Seegers 1998" is "Hortet-Seegers 1998". */
function bare(text: string): string {
  return text.toLowerCase().replace(/[^a-z0-9]/g, "");
}

const dailyModel = modelKind(DAILY_MODELS, "day");
const lactationModel = modelKind(LACTATION_MODELS, "lactation");

export const dailyModelParameter = withDefault(
  dailyModel,
  "Milk-loss model by author and year",
  DAILY_MODELS[0].name,
  `"${DAILY_MODELS[0].name}": 0.75 lb (0.34 kg) a day for each doubling above 50 thousand in first lactation, 1.5 lb (0.68 kg) later`,
);
export const lactationModelParameter = withDefault(
  lactationModel,
  "Milk-loss model by author and year",
  LACTATION_MODELS[0].name,
  `"${LACTATION_MODELS[0].name}": 200 lb (91 kg) a lactation for each doubling above 50 thousand in first lactation, 400 lb (181 kg) later`,
);

const ownSlopes = definition(
  "Slopes given by the user for each doubling above 50 thousand cells/mL; no paper stands behind them.",
);

/** The model of that name for single tests. Own slopes are in the unit of the result unless they carry their own. */
export function dailyModelNamed(text: string, unit: MilkUnit): LossModel {
  return DAILY_MODELS.find(({ name }) => name === text) ?? ownModel(text, unit, "day");
}

/** The model of that name for whole lactations. */
export function lactationModelNamed(text: string, unit: MilkUnit): LossModel {
  return LACTATION_MODELS.find(({ name }) => name === text) ?? ownModel(text, unit, "lactation");
}

function ownModel(text: string, resultUnit: MilkUnit, time: Time): LossModel {
  const [, first = "", later = first, ownUnit] = OWN_SLOPES.exec(text)!;
  const unit = (ownUnit?.toLowerCase() ?? resultUnit) as MilkUnit;
  const [firstKg, laterKg] = [first, later].map((slope) => milkInKg(Number(slope.replace(",", ".")), unit));
  const highest = HIGHEST_OWN_SLOPE[time];
  for (const kg of [firstKg!, laterKg!]) {
    if (kg <= highest) continue;
    const other = time === "day" ? "a lactation" : "several lactations";
    throw invalid(
      "model",
      `own slopes of at most ${highest} kg a ${time} for each doubling (more looks like slopes for ${other})`,
      text,
    );
  }
  return { name: text, first: firstKg!, later: laterKg!, source: ownSlopes };
}

/** The herd's doublings of a test day, checked: no total comes from rows that a model cannot reckon with. */
export function readHerd(
  counts: Column<number>,
  lactations: Column<number>,
  unit: CountUnit,
  model: LossModel,
): HerdDoublings {
  const herd = herdDoublings(columnInThousands(counts, unit), wholeNumbersOf(lactations));
  if (countedCows(herd) === 0) throw noCount(counts.argument);
  if (herd.unknown.cows > 0 && splitsByLactation(model)) {
    throw new DomainError(
      "invalid",
      `${withoutLactation(herd, lactations.argument)}: enter it, since "${model.name}" has one slope for first and another for later lactations`,
    );
  }
  return herd;
}

/** "lactations is blank or 0 in 2 rows that hold a count (rows 5 and 9)". */
export function withoutLactation({ unknown, unknownRows }: HerdDoublings, argument: string): string {
  const rows = unknownRows.map((row) => row + 1);
  const more = unknown.cows > rows.length ? ", ..." : "";
  const named = rows.length === 1 ? `row ${rows[0]}` : `rows ${rows.join(", ")}${more}`;
  return `${argument} must hold a lactation number wherever there is a count; got a blank or 0 in ${named}`;
}

/** Days from which on dry cows matter: a cow is in milk for about so many days a year. */
export const DAYS_IN_MILK_A_YEAR = 305;

export function remarkOnHerd(herd: HerdDoublings, days: number, remarks: Remarks): void {
  if (herd.withoutCount > 0) remarks.add(`${counted(herd.withoutCount, "row")} left out: no count`);
  remarkOnCapped(herd.capped, remarks);
  if (days > DAYS_IN_MILK_A_YEAR)
    remarks.add(
      `${days} days is right only if every cow in the list is in milk on all of them; with dry cows a year has about 305`,
    );
}

/** What no model of milk and cell counts can tell. */
export const LOSS_LIMITS = [
  "Milk that goes with high counts; part of it is dilution in cows that give less, so it is not all milk to win back.",
  "Every model is counted from 50 thousand cells/mL, so that totals compare; Koldeweij, Luo and Potter print a slope alone.",
  "The first five days after calving have high counts by nature: leave such tests out.",
  "Do not add it to the loss from lameness, or to a cost per case that already holds lost milk.",
] as const;

/** Sources of the daily models, of what they leave open, and of litres. */
export const DAILY_SOURCES: readonly Source[] = [...DAILY_MODELS.map(({ source }) => source), green2006, milkDensity];

/** The working of a herd's loss: cows, doublings and slope of each group, a day, and all days. */
export function herdSteps(herd: HerdDoublings, model: LossModel, days: number, unit: MilkUnit): Step[] {
  const { first, later, unknown, withoutCount } = herd;
  const perDay = herdLossKgPerDay(herd, model);
  const groups = splitsByLactation(model)
    ? [groupStep("First lactation", first, model.first), groupStep("Later lactations", later, model.later)]
    : [groupStep("All lactations", sumOf([first, later, unknown]), model.later)];
  return [
    { label: "Cows with a count", working: `${withoutCount} left out: no count`, value: String(countedCows(herd)) },
    ...groups,
    { label: "Loss a day", working: model.name, value: `${figure(perDay, 3)} kg` },
    {
      label: "Over the days",
      working: `${figure(perDay, 3)} kg × ${counted(days, "day")}`,
      value: `${figure(perDay * days)} kg`,
    },
    unitStep(perDay * days, unit, "In the unit asked"),
  ];
}

function sumOf(groups: readonly CowGroup[]): CowGroup {
  return groups.reduce((sum, { cows, doublings }) => ({ cows: sum.cows + cows, doublings: sum.doublings + doublings }));
}

function groupStep(label: string, { cows, doublings }: CowGroup, slope: number): Step {
  const working = `${counted(cows, "cow")}, together ${counted(Number(figure(doublings, 3)), "doubling")} above 50 thousand × ${figure(slope, 4)} kg`;
  return { label, working, value: `${figure(doublings * slope, 3)} kg a day` };
}

/** Of what a price of milk is: "a litre". */
export function aUnitOf(unit: MilkUnit): string {
  return unit === "litres" ? "a litre" : `a ${unit}`;
}

/** The working from kg to the unit of the result. */
export function unitStep(kg: number, unit: MilkUnit, label: string): Step {
  const working = {
    litres: `${figure(kg, 3)} kg / 1.03 kg a litre`,
    kg: "in kg",
    lb: `${figure(kg, 3)} kg / 0.45359237 kg a lb`,
  };
  return { label, working: working[unit], value: `${figure(milkFromKg(kg, unit))} ${unit}` };
}
