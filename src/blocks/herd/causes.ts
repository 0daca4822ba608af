import type { Block } from "../block";
import { call } from "../expression/call";
import { column } from "../expression/columns";
import { findingsOfPeriod, period } from "./inputs";

/** As many patterns as the review knows. */
const ROWS = 13;

const columns = ["lesion", "zone", "lactation", "daysInMilk"].map((key) => findingsOfPeriod(column("Findings", key)));

export const causes: Block = {
  id: "where-to-look",
  title: "Where to look",
  about:
    "What the lesions, their zones and the cows that have them point to in the barn. It ranks; it does not diagnose.",
  screen: "herd",
  inputs: period,
  parts: [
    {
      kind: "table",
      id: "causes",
      title: "What to go and look at",
      value: call("CAUSE.REVIEW", ...columns),
      of: "CAUSE.REVIEW",
      rows: ROWS,
    },
  ],
  charts: [],
  notes: [],
};
