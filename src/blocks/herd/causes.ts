import type { Block } from "../block";
import { call } from "../expression/call";
import { type CowsLookedAt, findingsOf, named, wholeHerd } from "./cows-looked-at";
import { period } from "./inputs";

/** As many patterns as the review knows. */
const ROWS = 13;

const COLUMNS = ["lesion", "zone", "lactation", "daysInMilk"] as const;

export function causesOf(cows: CowsLookedAt): Block {
  return {
    ...named(cows, "where-to-look", "Where to look"),
    about:
      "What the lesions, their zones and the cows that have them point to in the barn. It ranks; it does not diagnose.",
    screen: "herd",
    inputs: period,
    parts: [
      {
        kind: "table",
        id: "causes",
        title: "What to go and look at",
        value: call("CAUSE.REVIEW", ...COLUMNS.map((key) => findingsOf(cows, key))),
        of: "CAUSE.REVIEW",
        rows: ROWS,
      },
    ],
    charts: [],
    notes: [],
  };
}

export const causes = causesOf(wholeHerd);
