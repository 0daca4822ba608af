import type { Block } from "../block";
import { call } from "../expression/call";
import { columnOrBlanks, column, settingsIfAny } from "../expression/columns";
import { input, part } from "../expression/places";
import { from, gap, period, to } from "./inputs";

/** Cow, foot, lesion and day of each finding, as the functions of lesions take them. */
export const findings = [
  column("Findings", "cow"),
  columnOrBlanks("Findings", "foot", "cow"),
  column("Findings", "lesion"),
  column("Findings", "date"),
] as const;

/** Days at risk of all cows in the period. */
export const cowDays = call("COW.DAYS", column("Cows", "entered"), column("Cows", "left"), from, to);

/** Code, lesion, cases, repeats, cows, rate, low, high, target, against target, note. */
const RATE_COLUMN = 5;

export const lesionRates: Block = {
  id: "lesion-rates",
  title: "Lesions: new cases and rates",
  about: "New cases by lesion per 100 cow-years, with limits, against the farm's targets.",
  screen: "herd",
  inputs: [...period, gap],
  parts: [
    { kind: "figure", id: "cowDays", label: "Cow-days at risk", value: cowDays, format: "#,##0" },
    {
      kind: "table",
      id: "lesions",
      title: "New cases by lesion",
      value: call("LESION.TABLE", ...findings, from, to, part("cowDays"), settingsIfAny("Targets"), input("gapDays")),
      of: "LESION.TABLE",
      rows: 34,
    },
  ],
  charts: [
    {
      id: "rates",
      part: "lesions",
      type: "bars",
      title: "New cases per 100 cow-years",
      categories: 1,
      values: [RATE_COLUMN],
      valueTitle: "per 100 cow-years",
      valueFormat: "0",
      describe: (rows) => {
        const [most] = [...rows].filter(([code]) => code !== "all").sort((a, b) => Number(b[RATE_COLUMN]) - Number(a[RATE_COLUMN])); // prettier-ignore
        const highest = most === undefined ? "" : ` The highest is ${String(most[1])}, ${Number(most[RATE_COLUMN]).toFixed(1)}.`; // prettier-ignore
        return `Bars of the rate of each lesion.${highest}`;
      },
    },
  ],
  notes: [
    "Rates count cases; shares count cows. Small numbers move a lot by chance: read the limits.",
    "Cows are not all trimmed; those that are have more lesions.",
  ],
};
