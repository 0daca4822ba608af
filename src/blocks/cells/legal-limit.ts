import type { Block } from "../block";
import { call } from "../expression/call";
import { dayBefore } from "../expression/days";
import { literal } from "../expression/expression";
import { ifNumber } from "../expression/if-number";
import { iff, is } from "../expression/operators";
import { input, part, seriesColumn } from "../expression/places";
import { DAY, lastOfSeries } from "../herd/inputs";
import { ofTest, testDay, tests } from "./inputs";

/** The months of the rolling mean, and room for two tests in one of them. */
const TESTS = 6;
const MONTHS = 3;
/** Regulation (EC) No 853/2004: the rolling geometric mean over three months must not be above it. */
const EU_LIMIT = 400;

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
      before: (day) => dayBefore(tests.date, day, ""),
      figures: (day) => [call("TANK.ESTIMATE", ofTest(tests.count, day), ofTest(tests.milkKg, day))],
    },
    {
      kind: "figure",
      id: "rolling",
      label: "Rolling geometric mean, thousand cells/mL",
      value: call("TANK.ROLLING", seriesColumn("tank", 0), seriesColumn("tank", 1), input("test"), literal(MONTHS)),
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
