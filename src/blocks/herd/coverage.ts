import type { Block } from "../block";
import { columns } from "../expression/columns";
import { fromDays } from "../expression/days";
import type { Expression } from "../expression/expression";
import { type Condition, countOf, filtered } from "../expression/filtered";
import { countFound } from "../expression/lookup";
import { arithmetic, iff, is, quotient } from "../expression/operators";
import { part } from "../expression/places";
import { findingsOfPeriod, inPeriod, period, toDay } from "./inputs";

/** Below this share of the milking cows the lesions found may not be those of the herd. Common practice, no source. */
export const ENOUGH_EXAMINED = 0.8;
const NO_COW = "no milking cow on the last day";

const { cow, calved, left, dryOff } = columns("Cows", "cow", "calved", "left", "dryOff");
const { cow: found } = columns("Findings", "cow");

/** Cows that have calved, are still here, and stand not dry, on the last day of the period. */
const milking: readonly Condition[] = [
  { column: cow, is: "filled" },
  { column: calved, is: "a number" },
  { column: calved, is: "<=", than: toDay },
  { column: notBefore(left), is: "=", than: "here" },
  { column: dryNow(), is: "=", than: "in milk" },
];

/** "here" where the day is blank or still to come. */
function notBefore(day: Expression): Expression {
  return fromDays(day, iff(is(day, "=", ""), "here", iff(is(day, ">", toDay), "here", "gone")));
}

/** A day of drying off before her calving belongs to the lactation before. */
function dryNow(): Expression {
  const isToCome = iff(is(dryOff, ">", toDay), "in milk", iff(is(dryOff, ">", calved), "dry", "in milk"));
  return fromDays(dryOff, iff(is(dryOff, "=", ""), "in milk", isToCome));
}

export const coverage: Block = {
  id: "coverage",
  title: "How many cows were looked at",
  about: "Whether the findings of the period speak for the herd.",
  screen: "herd",
  inputs: period,
  parts: [
    { kind: "figure", id: "milking", label: "Milking cows on the last day", value: countOf(...milking), format: "0" },
    {
      kind: "figure",
      id: "examined",
      label: "of these examined in the period",
      value: iff(
        is(arithmetic(part("milking"), "*", countOf({ column: found, is: "filled" }, ...inPeriod("Findings"))), "=", 0),
        0,
        countFound(filtered(cow, ...milking), findingsOfPeriod(found)),
      ),
      format: "0",
    },
    {
      kind: "figure",
      id: "share",
      label: "Share examined",
      value: quotient(part("examined"), part("milking"), NO_COW),
      format: "0%",
    },
    {
      kind: "figure",
      id: "enough",
      label: "Do they speak for the herd",
      value: iff(
        is(part("milking"), "=", 0),
        NO_COW,
        iff(
          is(part("share"), "<", ENOUGH_EXAMINED),
          "fewer than 80 % were examined: the shares may not be those of the herd",
          "80 % or more were examined",
        ),
      ),
    },
  ],
  charts: [],
  notes: ["Cows that are trimmed because they are lame have more lesions than those that were not looked at."],
};
