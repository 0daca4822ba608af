import { disorders } from "../../core/claws/disorder-key";
import type { Block } from "../block";
import { call } from "../expression/call";
import { column } from "../expression/columns";
import type { Expression } from "../expression/expression";
import { filtered } from "../expression/filtered";
import { type CowsLookedAt, named, wholeHerd } from "./cows-looked-at";
import { from, period, to } from "./inputs";
import { lesionsAbove } from "./lesion-rates";

/** Every lesion that is no form of another, and all lesions. */
const ROWS = disorders.filter(({ parent }) => parent === undefined).length + 1;

/** Code, lesion, cows, examined, share, low, high. */
const SHARE_COLUMN = 4;

export function lesionSharesOf(cows: CowsLookedAt): Block {
  const { conditions } = cows;
  const own = (key: string): Expression => {
    const cells = column("Findings", key);
    return conditions.length === 0 ? cells : filtered(cells, ...conditions);
  };
  return {
    ...named(cows, "lesion-shares", "Lesions: share of cows examined"),
    about: "How many of the cows examined in the period had each lesion, with limits.",
    screen: "herd",
    inputs: period,
    parts: [
      {
        kind: "table",
        id: "shares",
        title: "Cows with a lesion",
        value: call("LESION.SHARES", own("cow"), own("lesion"), own("date"), from, to),
        of: "LESION.SHARES",
        rows: ROWS,
      },
    ],
    charts: [
      {
        id: "shares",
        part: "shares",
        type: "bars",
        title: "Share of the cows examined",
        categories: 1,
        values: [SHARE_COLUMN],
        valueTitle: "share of cows",
        valueFormat: "0%",
        shown: lesionsAbove,
        describe: (rows) => {
          const [most] = [...rows].sort((a, b) => Number(b[SHARE_COLUMN]) - Number(a[SHARE_COLUMN]));
          const highest = most === undefined ? "" : ` The highest is ${String(most[1])}, ${Math.round(100 * Number(most[SHARE_COLUMN]))} %.`; // oxfmt-ignore
          return `Bars of the share of cows with each lesion.${highest}`;
        },
      },
    ],
    notes: [
      "Shares count cows, each once; rates count cases. A longer period finds more cows with a lesion.",
      "Cows that are trimmed because they are lame have more lesions than those that were not looked at.",
    ],
  };
}

export const lesionShares = lesionSharesOf(wholeHerd);
