import type { Block } from "../block";
import { blanksAsText } from "../expression/aggregates";
import { call } from "../expression/call";
import { columns } from "../expression/columns";
import { type Expression, literal } from "../expression/expression";
import { type Condition, countOf, filtered } from "../expression/filtered";
import { firstFindingFrom } from "../expression/per-animal";
import { input, scale } from "../expression/places";
import { inPeriod, period } from "./inputs";

const { cow, date, score } = columns("Scores", "cow", "date", "score");
const states = call("LAME.CASES", cow, date, blanksAsText(score), scale);
const newlyLame: readonly Condition[] = [{ column: states, is: "=", than: "new" }, ...inPeriod("Scores")];
const cows = filtered(cow, ...newlyLame);
const seenOn = filtered(date, ...newlyLame);
const treatedOn = firstFindingFrom(cows, seenOn);

/** Trials that showed a benefit treated within two days; a fortnight shows who was forgotten. */
const SOON_HOURS = 48;
const FORTNIGHT_HOURS = 336;

function within(hours: Expression): Expression {
  return call("LAME.WITHIN", seenOn, treatedOn, hours);
}

export const lameToTreated: Block = {
  id: "lame-to-treated",
  title: "From seen lame to treated",
  about: "How soon cows that became lame stood under Findings with a lesion.",
  screen: "herd",
  inputs: [...period, { name: "hours", label: "In time within, hours", usual: literal(SOON_HOURS), format: "0" }],
  parts: [
    { kind: "figure", id: "cases", label: "Cows that became lame", value: countOf(...newlyLame), format: "0" },
    { kind: "figure", id: "inTime", label: "Treated in time", value: within(input("hours")), format: "0%" },
    {
      kind: "figure",
      id: "fortnight",
      label: "Treated within 14 days",
      value: within(literal(FORTNIGHT_HOURS)),
      format: "0%",
    },
  ],
  charts: [],
  notes: [
    "Treated means: recorded under Findings with a lesion on that day or later. Cows seen lame in the last days may still be waiting.",
  ],
};
