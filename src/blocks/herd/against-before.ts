import type { Block, Figure, Part } from "../block";
import { call } from "../expression/call";
import { chanceOf } from "../expression/chance";
import { column } from "../expression/columns";
import { earliestDay } from "../expression/days";
import type { Expression } from "../expression/expression";
import { countOf } from "../expression/filtered";
import { arithmetic, iff, is, quotient } from "../expression/operators";
import { input, part } from "../expression/places";
import { DAY, DAY_OR_NONE, from, fromDay, gap, period, to, toDay } from "./inputs";
import { cowDays, findings } from "./lesion-rates";
import { marks } from "./new-and-repeat";

/** Rows kept free: most herds have fewer lesions in a period. */
const LESION_ROWS = 20;

const date = column("Findings", "date");

function newCases(first: Expression, last: Expression): Expression {
  return countOf(
    { column: marks, is: "=", than: 1 },
    { column: date, is: ">=", than: first },
    { column: date, is: "<=", than: last },
  );
}

function figure(id: string, label: string, value: Expression, format?: string, note?: string): Figure {
  return {
    kind: "figure",
    id,
    label,
    value,
    ...(format === undefined ? {} : { format }),
    ...(note === undefined ? {} : { note }),
  };
}

function lesions(id: string, title: string, first: Expression, last: Expression, days: Expression): Part {
  return {
    kind: "table",
    id,
    title,
    value: call("LESION.TABLE", ...findings, first, last, days, undefined, input("gapDays")),
    of: "LESION.TABLE",
    rows: LESION_ROWS,
  };
}

const [firstBefore, lastBefore] = [part("fromBefore"), part("toBefore")];
const both = arithmetic(part("now"), "+", part("before"));
const [share, expected, chance] = [part("share"), part("expected"), part("chance")];

/** Why two times are not compared: cases before the list began are not in it. */
export const BEGINS_LATE = "cannot be told: the list of findings begins within the time before";

/** Below this chance a difference is held to be more than chance: the counterpart of limits at 95 %. */
const SMALL_CHANCE = 0.05;

/**
 * Two counts over two times are compared through the part of both that falls into the later: where nothing changed it
 * is the later's part of the cow-days. Source: Przyborowski J, Wilenski H 1940, Homogeneity of results in testing
 * samples from Poisson series, Biometrika 31:313-323.
 */
export const againstBefore: Block = {
  id: "against-before",
  title: "This time against the time before",
  about:
    "New cases of this time against those of as many days before it, and whether the difference is more than chance.",
  screen: "herd",
  inputs: [...period, gap],
  parts: [
    figure(
      "fromBefore",
      "The time before, from",
      arithmetic(arithmetic(fromDay, "*", 2), "-", arithmetic(toDay, "+", 1)),
      DAY,
    ),
    figure("toBefore", "up to", arithmetic(fromDay, "-", 1), DAY),
    figure("listFrom", "The list of findings begins on", earliestDay(date), DAY_OR_NONE),
    figure("cowDays", "Cow-days at risk, this time", cowDays, "#,##0"),
    figure(
      "cowDaysBefore",
      "Cow-days at risk, before",
      call("COW.DAYS", column("Cows", "entered"), column("Cows", "left"), firstBefore, lastBefore),
      "#,##0",
    ),
    figure("now", "New cases, this time", newCases(fromDay, toDay), "0"),
    figure("before", "New cases, before", newCases(firstBefore, lastBefore), "0"),
    figure(
      "share",
      "Part of both that falls into this time",
      quotient(part("now"), both, "no new case in either time"),
      "0%",
    ),
    figure(
      "expected",
      "Part to expect if nothing changed",
      quotient(part("cowDays"), arithmetic(part("cowDays"), "+", part("cowDaysBefore")), "no cow-days in either time"),
      "0%",
    ),
    figure(
      "chance",
      "Chance alone parts them so far, or farther, in",
      chanceOf(part("now"), part("before"), expected),
      "0.0%",
      "The exact comparison of two counts over their cow-days (Przyborowski and Wilenski 1940), both sides.",
    ),
    figure(
      "verdict",
      "The difference",
      iff(
        is(part("listFrom"), ">", firstBefore),
        BEGINS_LATE,
        iff(
          is(chance, ">=", SMALL_CHANCE),
          "chance may explain it",
          iff(
            is(share, ">", expected),
            "more new cases than before, more than chance explains",
            "fewer new cases than before, more than chance explains",
          ),
        ),
      ),
    ),
    lesions("lesionsNow", "New cases by lesion, this time", from, to, part("cowDays")),
    lesions("lesionsBefore", "New cases by lesion, before", firstBefore, lastBefore, part("cowDaysBefore")),
  ],
  charts: [],
  notes: [
    "Both times must have been recorded alike: more trimming days, another trimmer or a list begun late look like a change.",
    "Cows that were taken out of the list of cows are missing from the days at risk.",
  ],
};
