import { mobilityScales } from "../../core/claws/mobility";
import type { Block } from "../block";
import { blanksAsText, cellAt } from "../expression/aggregates";
import { call } from "../expression/call";
import { column } from "../expression/columns";
import type { Expression } from "../expression/expression";
import { filtered } from "../expression/filtered";
import { asOf, input, scale } from "../expression/places";
import { DAY, lastOfSeries } from "./inputs";
import { SCORING_NOTE, scoringBefore, scoringUpTo } from "./scorings";

/** A year of scorings every second week. */
const SCORINGS = 26;
const NONE = "none yet";
const date = column("Scores", "date");

/** The score from which a cow is lame, on the scale of the workbook. */
export const lameFrom: Expression = {
  text: (names) => String(mobilityScales[names.scale].lameFrom),
  compute: (run) => mobilityScales[run.data.scale].lameFrom,
};

export const lastScoring = scoringUpTo(asOf, NONE);

function summaryOf(day: Expression): Expression {
  const scores = filtered(blanksAsText(column("Scores", "score")), { column: date, is: "=", than: day });
  return call("LAME.SUMMARY", scores, scale);
}

/** Places in the row of the summary: cows scored, share lame, its limits. */
const SUMMARY = { scored: 1, share: 4, low: 5, high: 6 } as const;

export const lame: Block = {
  id: "lame-share",
  title: "Lame cows",
  about: "The share of cows that walked lame when scored, and how it went.",
  screen: "herd",
  inputs: [{ name: "scored", label: "Scored on", usual: lastScoring, format: DAY }],
  parts: [
    {
      kind: "table",
      id: "summary",
      title: "That scoring",
      value: summaryOf(input("scored")),
      of: "LAME.SUMMARY",
      rows: 1,
    },
    {
      kind: "series",
      id: "trend",
      title: `The last ${SCORINGS} scorings`,
      length: SCORINGS,
      columns: [
        { heading: "Scored on", format: DAY },
        { heading: "Cows scored", format: "0" },
        { heading: "Share lame", format: "0.0%" },
        { heading: "Low", format: "0.0%" },
        { heading: "High", format: "0.0%" },
      ],
      last: lastOfSeries("scored"),
      before: (day) => scoringBefore(day, ""),
      figures: (day) => {
        const summary = summaryOf(day);
        return [SUMMARY.scored, SUMMARY.share, SUMMARY.low, SUMMARY.high].map((place) => cellAt(summary, 2, place));
      },
    },
  ],
  charts: [
    {
      id: "trend",
      part: "trend",
      type: "lines",
      title: "Share of lame cows",
      categories: 0,
      values: [2, 3, 4],
      categoryFormat: "d mmm",
      valueTitle: "lame",
      valueFormat: "0%",
      describe: (rows) => {
        const shares = rows.flatMap((row) => (typeof row[2] === "number" ? [row[2]] : []));
        const [first, last] = [shares[0], shares.at(-1)];
        if (first === undefined || last === undefined) return "Line of the share of lame cows: no scoring yet.";
        return `Line of the share of lame cows at ${shares.length} scorings with its limits: ${percent(first)} at the first, ${percent(last)} at the last.`;
      },
    },
  ],
  notes: [SCORING_NOTE, "Shares from different scorers or scales cannot be compared."],
};

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
