import type { Block } from "../block";
import { call } from "../expression/call";
import { monthsOn, monthStart } from "../expression/days";
import { arithmetic } from "../expression/operators";
import { asOf, input } from "../expression/places";
import { type CowsLookedAt, findings, named, wholeHerd } from "./cows-looked-at";
import { DAY, gap } from "./inputs";

/** A year and the two months before it, so that a month stands beside the same one of last year. */
const MONTHS = 14;
const MONTH = "mmm yy";
const thisMonth = monthStart(asOf);

export function monthsOf(cows: CowsLookedAt): Block {
  return {
    ...named(cows, "lesion-months", "New cases by month"),
    about: "How the months went: new cases, horn and infectious apart.",
    screen: "herd",
    inputs: [
      { name: "from", label: "First month", usual: monthsOn(thisMonth, -MONTHS), format: DAY },
      { name: "to", label: "Up to", usual: arithmetic(thisMonth, "-", 1), format: DAY },
      gap,
    ],
    parts: [
      {
        kind: "table",
        id: "months",
        title: "New cases",
        value: call("LESION.MONTHS", ...findings, input("from"), input("to"), input("gapDays"), cows.counted),
        of: "LESION.MONTHS",
        rows: MONTHS,
      },
    ],
    charts: [
      {
        id: "months",
        part: "months",
        type: "stacked columns",
        title: "New cases by month",
        categories: 0,
        values: [1, 2, 3, 4],
        categoryFormat: MONTH,
        valueTitle: "new cases",
        valueFormat: "0",
        describe: (rows) => {
          const all = rows.reduce((sum, row) => sum + Number(row[5]), 0);
          const most = rows.reduce((high, row) => Math.max(high, Number(row[5])), 0);
          return `Stacked columns of new claw cases in ${rows.length} months: horn, infectious, shape and other. ${all} in all, at most ${most} in a month.`;
        },
      },
    ],
    notes: ["Months in which more cows were trimmed show more cases: read them beside the trimming days."],
  };
}

export const months = monthsOf(wholeHerd);
