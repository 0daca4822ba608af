import { disorders } from "../../core/claws/disorder-key";
import type { Block } from "../block";
import { call } from "../expression/call";
import { column, settings } from "../expression/columns";
import { filtered } from "../expression/filtered";
import { input } from "../expression/places";
import { gap, inPeriod, period } from "../herd/inputs";
import { findings } from "../herd/lesion-rates";

/** The lesion of each new case of the period. */
export const newCases = filtered(
  column("Findings", "lesion"),
  { column: call("LESION.NEWCASE", ...findings, input("gapDays")), is: "=", than: 1 },
  ...inPeriod("Findings"),
);

/** Every lesion of the key can have a case. */
const ROWS = disorders.length;
const COST_COLUMN = 4;

export const lesionCosts: Block = {
  id: "lesion-costs",
  title: "What claw lesions cost",
  about: "New cases of the period, times the cost of a case under Costs.",
  screen: "costs",
  inputs: [...period, gap],
  parts: [
    {
      kind: "table",
      id: "costs",
      title: "By lesion, the dearest first",
      value: call("COST.TABLE", newCases, settings("Costs")),
      of: "COST.TABLE",
      rows: ROWS,
    },
  ],
  charts: [
    {
      id: "costs",
      part: "costs",
      type: "bars",
      title: "Cost by lesion",
      categories: 1,
      values: [COST_COLUMN],
      valueTitle: "in the currency of Costs",
      valueFormat: "#,##0",
      describe: (rows) => `Bars of the cost of each lesion; the dearest is ${String(rows[0]?.[1] ?? "none")}.`,
    },
  ],
  notes: [
    "The costs of a case are published ones until the farm writes its own under Costs. One currency, one year: nothing is converted.",
    "The cost of a case holds the lost milk of that cow: do not add it to the milk behind high counts.",
  ],
};
