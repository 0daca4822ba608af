import type { Block } from "../block";
import { call } from "../expression/call";
import { literal } from "../expression/expression";
import { input } from "../expression/places";
import { counts, cows, lactations, LOSS_NOTES, milk, milkPrice, testDay } from "./inputs";

const USUAL_COWS = 10;
/** Room for a longer list. */
const ROWS = 20;

export const topCows: Block = {
  id: "top-cows",
  title: "The cows behind most of it",
  about: "The cows that lose most milk to their counts, and what the tank would hold without each.",
  screen: "cells",
  inputs: [testDay, milkPrice, { name: "number", label: "Cows to list", usual: literal(USUAL_COWS), format: "0" }],
  parts: [
    {
      kind: "table",
      id: "cows",
      title: "The dearest first",
      value: call("CELL.TOP", cows, counts, lactations, milk, input("number"), input("milkPrice")),
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
