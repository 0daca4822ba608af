import type { Block } from "../block";
import { call } from "../expression/call";
import { dayBefore, monthsOn } from "../expression/days";
import { type Expression, literal } from "../expression/expression";
import { countOf } from "../expression/filtered";
import { ifNumber } from "../expression/if-number";
import { arithmetic, iff, is } from "../expression/operators";
import { cellOfSeries, input, part, seriesColumn } from "../expression/places";
import { DAY, lastOfSeries } from "../herd/inputs";
import { ofTest, testDay, tests } from "./inputs";

const MONTHS = 3;
/** A test every week of three months. */
const TESTS = 14;
/** Regulation (EC) No 853/2004: the rolling geometric mean over three months must not be above it. */
const EU_LIMIT = 400;

/** First day of the months up to the test. */
const start = monthsOn(arithmetic(input("test"), "+", 1), -MONTHS);

/** The test before one, where it lies in those months: an older one must not keep the mean from being told. */
function testBefore(day: Expression): Expression {
  const earlier = dayBefore(tests.date, day, "");
  return iff(is(earlier, "=", ""), "", iff(is(earlier, ">=", start), earlier, ""));
}

const firstShown = part(cellOfSeries("tank", 0, 0));
const notShown = iff(
  is(firstShown, "=", ""),
  0,
  countOf({ column: tests.date, is: ">=", than: start }, { column: tests.date, is: "<", than: firstShown }),
);
const rolling = call("TANK.ROLLING", seriesColumn("tank", 0), seriesColumn("tank", 1), input("test"), literal(MONTHS));

export const legalLimit: Block = {
  id: "legal-limit",
  title: "The rolling mean of three months",
  about: "The figure that the European limit of 400 thousand is held against, as the cows' tests foretell it.",
  screen: "cells",
  inputs: [testDay, { name: "legalLimit", label: "Limit, thousand cells/mL", usual: literal(EU_LIMIT), format: "0" }],
  parts: [
    {
      kind: "series",
      id: "tank",
      title: "Tank as each test foretells it",
      length: TESTS,
      columns: [
        { heading: "Test", format: DAY },
        { heading: "Tank estimate", format: "#,##0", unit: "thousand cells/mL" },
      ],
      last: lastOfSeries("test"),
      before: testBefore,
      figures: (day) => [call("TANK.ESTIMATE", ofTest(tests.count, day), ofTest(tests.milkKg, day))],
    },
    {
      kind: "figure",
      id: "rolling",
      label: "Rolling geometric mean, thousand cells/mL",
      value: ifNumber(
        iff(is(notShown, "=", 0), 0, "more"),
        rolling,
        `There are more than ${TESTS} tests in those ${MONTHS} months: the mean of them all cannot be told here.`,
      ),
      format: "#,##0",
    },
    {
      kind: "figure",
      id: "against",
      label: "Against the limit",
      value: ifNumber(
        input("legalLimit"),
        iff(is(part("rolling"), ">", input("legalLimit")), "above", "not above"),
        "The limit is blank or no number: write it.",
      ),
    },
  ],
  charts: [],
  notes: ["The dairy's own samples count, not this estimate: milk that is kept out of the tank is in it."],
};
