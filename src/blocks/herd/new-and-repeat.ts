import type { Block } from "../block";
import { call } from "../expression/call";
import { literal } from "../expression/expression";
import { countOf } from "../expression/filtered";
import { arithmetic, quotient } from "../expression/operators";
import { input, part } from "../expression/places";
import { type CowsLookedAt, findings, named, wholeHerd } from "./cows-looked-at";
import { from, gap, inPeriod, period, to } from "./inputs";

export const marks = call("LESION.NEWCASE", ...findings, input("gapDays"));

/** Cows listed at most where a part must end; more make the list longer than its room. */
const COWS = 40;

export function newAndRepeatOf(cows: CowsLookedAt): Block {
  return {
    ...named(cows, "new-and-repeat", "New cases, repeats, and cows with many"),
    about: "Whether feet come back, and which cows have several new cases.",
    screen: "herd",
    inputs: [
      ...period,
      gap,
      { name: "cases", label: "List cows from so many new cases", usual: literal(3), format: "0" },
    ],
    parts: [
      {
        kind: "figure",
        id: "new",
        label: "New cases",
        value: countOf({ column: marks, is: "=", than: 1 }, ...inPeriod("Findings"), ...cows.conditions),
        format: "0",
      },
      {
        kind: "figure",
        id: "repeats",
        label: "Repeats",
        value: countOf(
          { column: marks, is: "=", than: 0 },
          { column: marks, is: "a number" },
          ...inPeriod("Findings"),
          ...cows.conditions,
        ),
        format: "0",
        note: "Records of a case that was already open.",
      },
      {
        kind: "figure",
        id: "share",
        label: "Repeats among all records",
        value: quotient(part("repeats"), arithmetic(part("new"), "+", part("repeats")), "no record in this time"),
        format: "0%",
      },
      {
        kind: "table",
        id: "cows",
        title: "Cows with several new cases",
        value: call("COW.REPEATS", ...findings, from, to, input("cases"), input("gapDays"), cows.counted),
        of: "COW.REPEATS",
        rows: COWS,
      },
    ],
    charts: [],
    notes: ["Cows without a lesion (none) are in no figure here."],
  };
}

export const newAndRepeat = newAndRepeatOf(wholeHerd);
