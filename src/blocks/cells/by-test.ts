import type { Block } from "../block";
import { call } from "../expression/call";
import { dayBefore } from "../expression/days";
import { literal } from "../expression/expression";
import { DAY, lastOfSeries } from "../herd/inputs";
import { LOSS_NOTES, ofTest, testDay, tests } from "./inputs";

/** A year of monthly tests and the two before it. */
const TESTS = 14;

export const byTest: Block = {
  id: "cells-by-test",
  title: "The tests one by one",
  about: "How the tank, the usual cow and the milk lost went from test to test.",
  screen: "cells",
  inputs: [testDay],
  parts: [
    {
      kind: "series",
      id: "tests",
      title: `The last ${TESTS} tests`,
      length: TESTS,
      columns: [
        { heading: "Test", format: DAY },
        { heading: "Geometric mean", format: "#,##0", unit: "thousand cells/mL" },
        { heading: "Tank estimate", format: "#,##0", unit: "thousand cells/mL" },
        { heading: "Litres lost a day", format: "#,##0", unit: "litres" },
      ],
      last: lastOfSeries("test"),
      before: (day) => dayBefore(tests.date, day, ""),
      figures: (day) => [
        call("CELL.MEAN", ofTest(tests.count, day)),
        call("TANK.ESTIMATE", ofTest(tests.count, day), ofTest(tests.milkKg, day)),
        call("CELL.HERDLOSS", ofTest(tests.count, day), ofTest(tests.lactation, day), literal(1)),
      ],
    },
  ],
  charts: [
    {
      id: "counts",
      part: "tests",
      type: "lines",
      title: "Cell counts by test",
      categories: 0,
      values: [2, 1],
      categoryFormat: "mmm yy",
      valueTitle: "thousand cells/mL",
      valueFormat: "0",
      describe: (rows) => `Two lines over ${held(rows).length} tests: the tank estimate ${lastOf(rows, 2)} at the last, the usual cow ${lastOf(rows, 1)} thousand cells/mL.`, // oxfmt-ignore
    },
    {
      id: "loss",
      part: "tests",
      type: "columns",
      title: "Milk that goes with high counts",
      categories: 0,
      values: [3],
      categoryFormat: "mmm yy",
      valueTitle: "litres a day",
      valueFormat: "0",
      describe: (rows) => `Columns of the litres lost a day at ${held(rows).length} tests: ${lastOf(rows, 3)} at the last.`, // oxfmt-ignore
    },
  ],
  notes: LOSS_NOTES,
};

type TestRows = Parameters<(typeof byTest)["charts"][number]["describe"]>[0];

function held(rows: TestRows): TestRows {
  return rows.filter(([day]) => typeof day === "number");
}

function lastOf(rows: TestRows, column: number): string {
  const value = held(rows).at(-1)?.[column];
  return typeof value === "number" ? String(Math.round(value)) : "not told";
}
