import type { Block } from "../block";
import { call } from "../expression/call";
import { columns } from "../expression/columns";
import { monthsOn } from "../expression/days";
import { literal } from "../expression/expression";
import { type Condition, filtered } from "../expression/filtered";
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
        countOfTest(cows, "last before", calvings),
        countOfTest(cows, "first from", firstTest),
        input("limit"),
      ),
      of: "CELL.DRYPERIOD",
      rows: ROWS,
    },
  ],
  charts: [],
  notes: ["Each cow's latest calving counts, as it stands under Cows. Heifers stand in a row of their own."],
};
