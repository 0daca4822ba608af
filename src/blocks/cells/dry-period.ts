import type { Block } from "../block";
import { call } from "../expression/call";
import { columns } from "../expression/columns";
import { monthsOn } from "../expression/days";
import { type Expression, literal } from "../expression/expression";
import { type Condition, filtered } from "../expression/filtered";
import { ifNumber } from "../expression/if-number";
import { arithmetic } from "../expression/operators";
import { asOf, input } from "../expression/places";
import { countOfTest } from "../expression/per-animal";
import { DAY } from "../herd/inputs";
import { limit } from "./inputs";

const { cow, calved } = columns("Cows", "cow", "calved");
/** In her first days the count is high by nature. */
const FIRST_DAYS = 5;
const ROWS = 6;

const recentlyCalved: readonly Condition[] = [
  { column: calved, is: ">=", than: input("from") },
  { column: calved, is: "<=", than: input("to") },
];
const cows = filtered(cow, ...recentlyCalved);
const calvings = filtered(calved, ...recentlyCalved);
const firstTest = filtered(arithmetic(calved, "+", input("firstDays")), ...recentlyCalved);

/** SUMIFS takes an error in its criteria for a cow that has no test, so cleared cells are asked for before it. */
function askedFor(counts: Expression): Expression {
  const [from, to, firstDays] = [input("from"), input("to"), input("firstDays")];
  const days = ifNumber(firstDays, counts, "First test from day is blank or no number: write a number of days.");
  const upTo = ifNumber(to, days, "Calved to is blank or no day: write a date.");
  return ifNumber(from, upTo, "Calved from is blank or no day: write a date.");
}

export const dryPeriod: Block = {
  id: "dry-period",
  title: "Over the dry period",
  about: "Cows that calved in the period: high before drying off and after, new and cured.",
  screen: "cells",
  inputs: [
    { name: "from", label: "Calved from", usual: monthsOn(asOf, -12), format: DAY },
    { name: "to", label: "to", usual: arithmetic(asOf, "-", 1), format: DAY },
    { name: "firstDays", label: "First test from day", usual: literal(FIRST_DAYS), format: "0" },
    limit,
  ],
  parts: [
    {
      kind: "table",
      id: "dry",
      title: "Last test before calving against the first after it",
      value: call(
        "CELL.DRYPERIOD",
        askedFor(countOfTest(cows, "last before", calvings)),
        askedFor(countOfTest(cows, "first from", firstTest)),
        input("limit"),
      ),
      of: "CELL.DRYPERIOD",
      rows: ROWS,
    },
  ],
  charts: [],
  notes: ["Each cow's latest calving counts, as it stands under Cows. Heifers stand in a row of their own."],
};
