import type { Block } from "../block";
import { asTexts } from "../expression/aggregates";
import { call } from "../expression/call";
import { columnOrBlanks } from "../expression/columns";
import { dayBefore } from "../expression/days";
import type { Expression } from "../expression/expression";
import { lookUp } from "../expression/lookup";
import { arithmetic, iff, is } from "../expression/operators";
import { input, part } from "../expression/places";
import { DAY } from "../herd/inputs";
import { counts, cows, limit, ofTest, testDay, tests } from "./inputs";

const before = part("before");
/** What stood beside each cow at the test before. */
function earlier(cells: Expression): Expression {
  return lookUp(asTexts(cows), asTexts(ofTest(tests.cow, before)), ofTest(cells, before), "");
}

const lactation = columnOrBlanks("Tests", "lactation", "cow");
const [then, now] = [earlier(lactation), ofTest(lactation)];
const areKnown = arithmetic(is(then, ">", 0), "*", is(now, ">", 0));
/** A cow that calved between the tests is fresh: her count before was of another lactation. */
const isFresh = arithmetic(areKnown, "*", is(then, "<>", now));
const previous = iff(isFresh, "", earlier(tests.count));
/** New, recovered, lasting, low, first tests, left out and what the function adds to them. */
const ROWS = 10;

export const changes: Block = {
  id: "cell-changes",
  title: "New, recovered and lasting cases",
  about: "What became of the cows from one test to the next.",
  screen: "cells",
  inputs: [testDay, limit],
  parts: [
    {
      kind: "figure",
      id: "before",
      label: "Test before",
      value: dayBefore(tests.date, input("test"), "none before"),
      format: DAY,
    },
    {
      kind: "table",
      id: "changes",
      title: "Against the test before",
      value: call("CELL.CHANGE", previous, counts, input("limit")),
      of: "CELL.CHANGE",
      rows: ROWS,
    },
  ],
  charts: [],
  notes: [
    "A count over the limit points to an infection; it does not name it.",
    "Both tests are of one lactation: of a cow that calved between them the earlier count is left out, where both rows give her lactation.",
  ],
};
