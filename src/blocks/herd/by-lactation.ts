import type { Block, Part } from "../block";
import { call } from "../expression/call";
import { column } from "../expression/columns";
import { type Expression, literal } from "../expression/expression";
import { input } from "../expression/places";
import { findingsOfPeriod, lesion, period } from "./inputs";

const SHARE_COLUMN = 3;
/** Heifers, first lactation, later ones, and cows whose lactation is not given. */
const GROUPS = 4;

function byGroup(id: string, title: string, of: Expression): Part {
  const columns = ["cow", "lesion", "lactation"].map((key) => findingsOfPeriod(column("Findings", key)));
  return {
    kind: "table",
    id,
    title,
    value: call("LESION.BYGROUP", ...columns, of),
    of: "LESION.BYGROUP",
    rows: GROUPS,
  };
}

export const byLactation: Block = {
  id: "lesions-by-lactation",
  title: "Heifers, first and later lactations",
  about: "The share of examined cows with a lesion, by lactation. Digital dermatitis in heifers comes first.",
  screen: "herd",
  inputs: [...period, lesion],
  parts: [
    byGroup("dermatitis", "Digital dermatitis, share of cows examined", literal("DD")),
    byGroup("chosen", "The lesion chosen above, share of cows examined", input("lesion")),
  ],
  charts: [
    {
      id: "dermatitis",
      part: "dermatitis",
      type: "columns",
      title: "Digital dermatitis by lactation",
      categories: 0,
      values: [SHARE_COLUMN],
      valueTitle: "share of cows examined",
      valueFormat: "0%",
      describe: (rows) =>
        `Columns of the share with digital dermatitis: ${rows.map((row) => `${String(row[0])} ${percent(row[SHARE_COLUMN])}`).join(", ")}.`, // oxfmt-ignore
    },
  ],
  notes: [
    "Where it shows in heifers, look up the stream: how they are reared, and with whom they are brought in.",
    "The groups are of cows, each counted once however many findings she has.",
  ],
};

function percent(share: unknown): string {
  return typeof share === "number" ? `${Math.round(100 * share)} %` : "not told";
}
