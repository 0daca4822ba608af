import type { Block } from "../block";
import { cellAt } from "../expression/aggregates";
import { call } from "../expression/call";
import { literal } from "../expression/expression";
import { quotient } from "../expression/operators";
import { part } from "../expression/places";
import { counts, lactations, milk, testDay } from "./inputs";

/** A day and a price that no figure taken from the summary here depends on. */
const summary = call("CELL.SUMMARY", counts, lactations, milk, literal(1), literal(1));
/** Row of the arithmetic mean of the cows in the summary, its headings being row 1. */
const MEAN_ROW = 6;

export const tank: Block = {
  id: "tank-and-cows",
  title: "The tank against the average cow",
  about: "Why the tank's count is not the average of the cows: it weighs each cow by her milk.",
  screen: "cells",
  inputs: [testDay],
  parts: [
    {
      kind: "figure",
      id: "tank",
      label: "Tank as the cows foretell it, thousand cells/mL",
      value: call("TANK.ESTIMATE", counts, milk),
      format: "#,##0",
    },
    {
      kind: "figure",
      id: "mean",
      label: "Plain mean of the cows",
      value: cellAt(summary, MEAN_ROW, 2),
      format: "#,##0",
      note: "A few very high cows lift it.",
    },
    {
      kind: "figure",
      id: "geometric",
      label: "Geometric mean: the usual cow",
      value: call("CELL.MEAN", counts),
      format: "#,##0",
    },
    {
      kind: "figure",
      id: "ratio",
      label: "Tank over plain mean",
      value: quotient(part("tank"), part("mean"), "the mean of the cows is 0"),
      format: "0.00",
      note: "Below 1: the high cows give less milk than the others. Above 1: they give more.",
    },
  ],
  charts: [],
  notes: ["Milk that is kept out of the tank is in this figure too: the dairy's count is then lower."],
};
