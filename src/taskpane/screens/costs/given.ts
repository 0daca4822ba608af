import type { Block } from "../../../blocks/block";
import type { InputValues } from "../../../blocks/compute";
import type { DaySerial } from "../../../core/shared/days";
import type { PlainCell } from "../../../workbook/port";
import type { MilkPrice } from "../cells/milk-price";
import { readPeriod, shownPeriod } from "./period";

/** One test day says nothing about more than a year. */
const MOST_DAYS = 366;

/** The inputs of a block that are not as usual; undefined where the days cannot be counted over. */
export function givenTo(
  { inputs }: Block,
  typed: Readonly<Record<string, string>>,
  asOf: DaySerial,
  milk: MilkPrice,
): InputValues | undefined {
  const period = readPeriod(shownPeriod(typed, asOf));
  if (typeof period === "string") return undefined;
  const values: Record<string, PlainCell> = {};
  if (typed["from"] !== undefined) values["from"] = period.from;
  if (typed["to"] !== undefined) values["to"] = period.to;
  if (typed["from"] !== undefined || typed["to"] !== undefined)
    values["days"] = Math.min(MOST_DAYS, period.to - period.from + 1);
  // A price of something else than a litre must not be taken for one.
  if (milk.litre === undefined) values["milkPrice"] = null;
  const names = inputs.map(({ name }) => name).filter((name) => name in values);
  return Object.fromEntries(names.map((name) => [name, values[name]!]));
}
