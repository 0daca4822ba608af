import type { Block } from "../block";
import { asTexts, columnOfTable, sum } from "../expression/aggregates";
import { call } from "../expression/call";
import { type Expression, literal } from "../expression/expression";
import { lookUp } from "../expression/lookup";
import { iff, is } from "../expression/operators";
import { input, part } from "../expression/places";
import { counts, cows, lactations, LOSS_NOTES, milk, milkPrice, testDay } from "./inputs";

const USUAL_COWS = 10;
/** Room for a longer list. */
const ROWS = 20;

const top = call("CELL.TOP", cows, counts, lactations, milk, input("number"), input("milkPrice"));
/** Columns of the list, counted from 1. */
const LISTED = { money: 4, lossShare: 5, tankShare: 6 } as const;

/** Count of the tank without the milk of the cows that a call of CELL.TOP lists; the others keep theirs in it. */
export function tankWithout(list: Expression, names: Expression, ofCounts: Expression, ofMilk: Expression): Expression {
  const listed = columnOfTable(list, 1);
  const kept = iff(is(lookUp(asTexts(names), listed, listed, ""), "=", ""), ofMilk, "");
  return call("TANK.ESTIMATE", ofCounts, kept);
}

export const topCows: Block = {
  id: "top-cows",
  title: "The cows behind most of it",
  about: "The cows that lose most milk to their counts, and what the tank would hold without each.",
  screen: "cells",
  inputs: [testDay, milkPrice, { name: "number", label: "Cows to list", usual: literal(USUAL_COWS), format: "0" }],
  parts: [
    { kind: "figure", id: "money", label: "Money in 30 days, all of them", value: sum(columnOfTable(top, LISTED.money)), format: "#,##0" }, // oxfmt-ignore
    { kind: "figure", id: "lossShare", label: "Their share of the loss", value: sum(columnOfTable(top, LISTED.lossShare)), format: "0%" }, // oxfmt-ignore
    { kind: "figure", id: "tankShare", label: "Their share of the tank's cells", value: sum(columnOfTable(top, LISTED.tankShare)), format: "0%" }, // oxfmt-ignore
    {
      kind: "figure",
      id: "without",
      label: "Tank without the milk of all of them, thousand cells/mL",
      // Where the list is refused, no cow would be left out: then there is no figure either.
      value: iff(is(part("money"), ">=", 0), tankWithout(top, cows, counts, milk), ""),
      format: "#,##0",
    },
    {
      kind: "table",
      id: "cows",
      title: "The dearest first",
      value: top,
      of: "CELL.TOP",
      rows: ROWS,
    },
  ],
  charts: [
    {
      id: "cows",
      part: "cows",
      type: "bars",
      title: "Share of the herd's loss",
      categories: 0,
      values: [4],
      valueTitle: "share of the loss",
      valueFormat: "0%",
      describe: (rows) => {
        const share = rows.reduce((sum, row) => sum + (typeof row[4] === "number" ? row[4] : 0), 0);
        return `Bars of each cow's share of the herd's loss. These ${rows.length} cows make ${Math.round(100 * share)} % of it.`;
      },
    },
  ],
  notes: LOSS_NOTES,
};
