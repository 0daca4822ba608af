import type { Block } from "../block";
import { blanksAsText, median } from "../expression/aggregates";
import { call } from "../expression/call";
import { columns } from "../expression/columns";
import { type Expression, literal } from "../expression/expression";
import { type Condition, countOf, filtered } from "../expression/filtered";
import { arithmetic, iff, is } from "../expression/operators";
import { firstFindingFrom } from "../expression/per-animal";
import { input, part, scale } from "../expression/places";
import { inPeriod, period } from "./inputs";

const { cow, date, score } = columns("Scores", "cow", "date", "score");
const states = call("LAME.CASES", cow, date, blanksAsText(score), scale);
const newlyLame: readonly Condition[] = [{ column: states, is: "=", than: "new" }, ...inPeriod("Scores")];
const cows = filtered(cow, ...newlyLame);
const seenOn = filtered(date, ...newlyLame);
const treatedOn = firstFindingFrom(cows, seenOn);

const isTreated: Condition = { column: treatedOn, is: ">", than: 0 };
/** Whole days: the next day is one. */
const daysWaited = arithmetic(treatedOn, "-", seenOn);

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
    {
      kind: "figure",
      id: "treated",
      label: "Treated so far",
      value: iff(is(part("cases"), "=", 0), 0, countOf(isTreated)),
      format: "0",
    },
    {
      kind: "figure",
      id: "days",
      label: "Days until treated, half of them sooner",
      value: iff(is(part("treated"), "=", 0), "none was treated", median(filtered(daysWaited, isTreated))),
      format: "0.0",
      note: "The median of those treated so far; cows still waiting are not in it.",
    },
  ],
  charts: [],
  notes: [
    "Treated means: recorded under Findings with a lesion on that day or later. Cows seen lame in the last days may still be waiting.",
  ],
};
