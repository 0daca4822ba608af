import { USUAL_LIMIT_THOUSAND } from "../../core/cells/high-counts";
import type { BlockInput } from "../block";
import { column, columns } from "../expression/columns";
import { latestDay } from "../expression/days";
import { type Expression, literal } from "../expression/expression";
import { filtered } from "../expression/filtered";
import { asOf, input } from "../expression/places";
import { DAY } from "../herd/inputs";
import { litrePrice } from "./litre-price";

const MONEY = "#,##0.00";
const DAYS_A_YEAR = 365;

export const tests = columns("Tests", "date", "cow", "count", "lactation", "milkKg");

export const testDay: BlockInput = {
  name: "test",
  label: "Milk test of",
  usual: latestDay(tests.date, asOf, "none yet"),
  format: DAY,
};
/** All days of the year: right where the cows that dry off are followed by others. */
export const days: BlockInput = {
  name: "days",
  label: "Days like that test",
  usual: literal(DAYS_A_YEAR),
  format: "0",
};
export const milkPrice: BlockInput = {
  name: "milkPrice",
  label: "Milk price, a litre",
  usual: litrePrice("Milk"),
  format: MONEY,
};
export const limit: BlockInput = {
  name: "limit",
  label: "High from, thousand cells/mL",
  usual: literal(USUAL_LIMIT_THOUSAND),
  format: "0",
};

/** What is asked for where the cell of the limit was cleared. */
export const NO_LIMIT = "High from is blank or no number: write the count from which a cow is high.";

/** Cells of one test. */
export function ofTest(cells: Expression, day: Expression = input("test")): Expression {
  return filtered(cells, { column: column("Tests", "date"), is: "=", than: day });
}

export const counts = ofTest(tests.count);
export const lactations = ofTest(tests.lactation);
export const milk = ofTest(tests.milkKg);
export const cows = ofTest(tests.cow);

/** What milk behind counts is, and is not. */
export const LOSS_NOTES = [
  "Milk that goes with high counts; part of it may be dilution. It is not milk that comes back next week.",
] as const;
