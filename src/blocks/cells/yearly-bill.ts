import type { Block } from "../block";
import { call } from "../expression/call";
import { input } from "../expression/places";
import { counts, days, lactations, LOSS_NOTES, milk, milkPrice, testDay } from "./inputs";

/** Rows of the summary. */
const ROWS = 22;
const SHARE = "0.0%";
const DECIMALS = "0.00";
/** Figures of the summary whose unit does not tell how many decimals they need. */
const WITH_DECIMALS: ReadonlySet<unknown> = new Set(["central, a cow and day"]);

export const yearlyBill: Block = {
  id: "yearly-bill",
  title: "Milk and money behind high counts",
  about: "What the counts of one test stand for over a year: low, central and high between published models.",
  screen: "cells",
  inputs: [testDay, days, milkPrice],
  parts: [
    {
      kind: "figure",
      id: "milk",
      label: "Milk lost over those days, litres",
      value: call("CELL.HERDLOSS", counts, lactations, input("days")),
      format: "#,##0",
      note: "The central model.",
    },
    {
      kind: "figure",
      id: "money",
      label: "Its price",
      value: call("CELL.HERDCOST", counts, lactations, input("days"), input("milkPrice")),
      format: "#,##0",
      note: "In the currency of the milk price, before the feed that was not eaten.",
    },
    {
      kind: "table",
      id: "summary",
      title: "That test in full",
      value: call("CELL.SUMMARY", counts, lactations, milk, input("days"), input("milkPrice")),
      of: "CELL.SUMMARY",
      rows: ROWS,
      formats: (figure, row) =>
        row[2] === "share" ? SHARE : row[2] === "score" || WITH_DECIMALS.has(figure) ? DECIMALS : "#,##0",
    },
  ],
  charts: [],
  notes: LOSS_NOTES,
};
