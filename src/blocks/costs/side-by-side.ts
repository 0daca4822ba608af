import type { Block } from "../block";
import { columnOfTable, sum } from "../expression/aggregates";
import { call } from "../expression/call";
import { settings } from "../expression/columns";
import { iff, isNumber } from "../expression/operators";
import { input } from "../expression/places";
import { counts, days, lactations, milkPrice, testDay } from "../cells/inputs";
import { gap, period } from "../herd/inputs";
import { newCases } from "./lesion-costs";

const table = call("COST.TABLE", newCases, settings("Costs"));
/** Columns of that table, counted from 1. */
const COLUMNS = { cases: 3, costPerCase: 4, cost: 5 } as const;
const cases = columnOfTable(table, COLUMNS.cases);

export const sideBySide: Block = {
  id: "side-by-side",
  title: "Lameness and cell counts side by side",
  about: "Two bills of the same herd. They overlap, so there is no total.",
  screen: "costs",
  inputs: [...period, gap, testDay, days, milkPrice],
  parts: [
    {
      kind: "figure",
      id: "lesions",
      label: "Claw lesions: cost of the new cases of the period",
      value: sum(columnOfTable(table, COLUMNS.cost)),
      format: "#,##0",
      unit: "In the currency of Costs",
      note: "Holds what the source of each cost holds: most often treatment, lost milk, longer calving intervals, culling.",
    },
    { kind: "figure", id: "cases", label: "New cases in all", value: sum(cases), format: "0" },
    {
      kind: "figure",
      id: "uncosted",
      label: "of these without a cost under Costs, so not in it",
      value: sum(iff(isNumber(columnOfTable(table, COLUMNS.costPerCase)), 0, cases)),
      format: "0",
    },
    {
      kind: "figure",
      id: "milk",
      label: "Milk behind high counts, over the days above",
      value: call("CELL.HERDCOST", counts, lactations, input("days"), input("milkPrice")),
      format: "#,##0",
      unit: "In the currency of Prices",
      note: "Lost milk alone, gross. Treatment, culling, bonus and penalty of the tank are not in it.",
    },
  ],
  charts: [],
  notes: [
    "Never add the two: the milk that a lame cow loses is in the first, and if her count is high it is in the second as well.",
    "Not in either: labour that is not paid, work put off, feed saved, the welfare of the cow.",
    "The two may be in different currencies and years: look under Costs and Prices.",
  ],
};
