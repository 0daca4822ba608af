import type { Block } from "../block";
import { call } from "../expression/call";
import { dayBefore } from "../expression/days";
import { lookUp } from "../expression/lookup";
import { input, part } from "../expression/places";
import { DAY } from "../herd/inputs";
import { counts, cows, limit, ofTest, testDay, tests } from "./inputs";

const before = part("before");
const previous = lookUp(cows, ofTest(tests.cow, before), ofTest(tests.count, before), "");
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
  notes: ["A count over the limit points to an infection; it does not name it."],
};
