import type { Block } from "../../../blocks/block";
import type { InputValues } from "../../../blocks/compute";
import type { PlainCell } from "../../../workbook/port";
import type { MilkPrice } from "./milk-price";
import { type NumberLimits, typedNumber } from "./typed";

/** The fields of the screen; each is the input of that name in the blocks that have it. */
export type Field = "test" | "days" | "milkPrice" | "number" | "highest" | "ceiling" | "limit";
type NumberField = Exclude<Field, "test">;

/** Highest count that a laboratory gives, in thousands. */
const HIGHEST_COUNT = 9999;

/** What each field takes: the limits of the functions that it is handed to. */
export const LIMITS: Readonly<Record<NumberField, NumberLimits>> = {
  days: { name: "Days", min: 1, max: 366, whole: true },
  milkPrice: { name: "The price", min: 0, max: 1_000_000, exclusiveMin: true },
  number: { name: "Cows to list", min: 1, max: 1000, whole: true },
  highest: { name: "Cows cured", min: 1, max: 1000, whole: true },
  ceiling: { name: "The count", min: 1, max: HIGHEST_COUNT },
  limit: { name: "The count", min: 1, max: HIGHEST_COUNT },
};
const NUMBER_FIELDS = Object.keys(LIMITS) as readonly NumberField[];

/** Cows that the screen lists unless asked for more: as many as one deals with at a time. */
const USUAL_COWS = 5;

/** What was typed, read. */
export interface ReadFields {
  /** Values of inputs that are not as usual. */
  readonly values: InputValues;
  /** What is wrong with a field, by its name. */
  readonly problems: Readonly<Partial<Record<Field, string>>>;
  /** Price of a litre; undefined where there is none: only milk is shown then. */
  readonly price: number | undefined;
}

/** Stands for the price where there is none: milk is reckoned, and no money is shown. */
const NO_PRICE = 1;

export function readFields(typed: Readonly<Record<string, string>>, milkPrice: MilkPrice): ReadFields {
  const values: Record<string, PlainCell> = { number: USUAL_COWS };
  const problems: Partial<Record<Field, string>> = {};
  if (typed["test"] !== undefined) values["test"] = Number(typed["test"]);
  for (const field of NUMBER_FIELDS) {
    const text = typed[field];
    if (text === undefined) continue;
    const read = typedNumber(text, LIMITS[field]);
    if (read.kind === "number") values[field] = read.value;
    else if (read.kind === "wrong") problems[field] = read.message;
    else if (field !== "milkPrice") problems[field] = `${LIMITS[field].name}: type a number.`;
  }
  const own = values["milkPrice"];
  const price = typed["milkPrice"] === undefined ? milkPrice.litre : typeof own === "number" ? own : undefined;
  if (price === undefined) values["milkPrice"] = NO_PRICE;
  return { values, problems, price };
}

/** The inputs of a block that are not as usual. */
export function givenTo({ inputs }: Block, { values }: ReadFields): InputValues {
  const names = inputs.map(({ name }) => name).filter((name) => name in values);
  return Object.fromEntries(names.map((name) => [name, values[name]!]));
}

/** Whether a block can be computed with what was typed. */
export function isComputable({ inputs }: Block, { problems }: ReadFields): boolean {
  return inputs.every(({ name }) => !(name in problems));
}
