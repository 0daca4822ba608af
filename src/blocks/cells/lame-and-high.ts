import type { Block } from "../block";
import { asTexts } from "../expression/aggregates";
import { call } from "../expression/call";
import { columns } from "../expression/columns";
import type { Expression } from "../expression/expression";
import { filtered } from "../expression/filtered";
import { ifNumber } from "../expression/if-number";
import { lookUp } from "../expression/lookup";
import { iff, is, isNumber } from "../expression/operators";
import { input } from "../expression/places";
import { DAY } from "../herd/inputs";
import { lameFrom, lastScoring } from "../herd/lame";
import { SCORING_NOTE } from "../herd/scorings";
import { cows, limit, NO_LIMIT, ofTest, testDay, tests } from "./inputs";

const scores = columns("Scores", "date", "cow", "score");

/** "yes" or "no" of each number of a column; nothing where there is none. */
function reaches(numbers: Expression, from: Expression): Expression {
  return iff(isNumber(numbers), iff(is(numbers, ">=", from), "yes", "no"), "");
}

function scored(cells: Expression): Expression {
  return filtered(cells, { column: scores.date, is: "=", than: input("scored") });
}

const lame = lookUp(asTexts(cows), asTexts(scored(scores.cow)), scored(reaches(scores.score, lameFrom)), "");
const high = ifNumber(input("limit"), ofTest(reaches(tests.count, input("limit"))), NO_LIMIT);

export const lameAndHigh: Block = {
  id: "lame-and-high",
  title: "Lame cows and high counts",
  about: "Whether the cows that are lame are also those with high counts.",
  screen: "cells",
  inputs: [testDay, { name: "scored", label: "Scored on", usual: lastScoring, format: DAY }, limit],
  parts: [
    {
      kind: "table",
      id: "link",
      title: "Cows by both",
      value: call("LINK.TABLE", lame, high),
      of: "LINK.TABLE",
      rows: 4,
    },
  ],
  charts: [],
  notes: [SCORING_NOTE, "That the two go together does not say that one brings the other."],
};
