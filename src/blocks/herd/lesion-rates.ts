import { disorderOf, disorders } from "../../core/claws/disorder-key";
import { groupWords } from "../../core/claws/lesion-selection";
import type { PlainCell } from "../../workbook/port";
import type { Block } from "../block";
import { call } from "../expression/call";
import { settingsIfAny } from "../expression/columns";
import { input, part } from "../expression/places";
import { type CowsLookedAt, findings, named, wholeHerd } from "./cows-looked-at";
import { from, gap, period, to } from "./inputs";

export { findings } from "./cows-looked-at";

/** Days at risk of all cows in the period. */
export const cowDays = wholeHerd.cowDays!;

/** Every lesion of the key, the groups and all lesions, and the rows left out. */
const ROWS = disorders.length + groupWords.length + 1;

/** Code, lesion, cases, repeats, cows, rate, low, high, target, against target, note. */
const RATE_COLUMN = 5;

/** Groups, all lesions and the rows left out stand below the lesions: a bar of their sum would dwarf theirs. */
export function lesionsAbove(rows: readonly (readonly PlainCell[])[]): number {
  const end = rows.findIndex(([code]) => disorderOf(String(code)) === undefined);
  return end < 0 ? rows.length : end;
}

/** undefined where the days at risk of the cows cannot be told. */
export function lesionRatesOf(cows: CowsLookedAt): Block | undefined {
  if (cows.cowDays === undefined) return undefined;
  return {
    ...named(cows, "lesion-rates", "Lesions: new cases and rates"),
    about: "New cases by lesion per 100 cow-years, with limits, against the farm's targets.",
    screen: "herd",
    inputs: [...period, gap],
    parts: [
      { kind: "figure", id: "cowDays", label: "Cow-days at risk", value: cows.cowDays, format: "#,##0" },
      {
        kind: "table",
        id: "lesions",
        title: "New cases by lesion",
        value: call(
          "LESION.TABLE",
          ...findings,
          from,
          to,
          part("cowDays"),
          settingsIfAny("Targets"),
          input("gapDays"),
          cows.counted,
        ),
        of: "LESION.TABLE",
        rows: ROWS,
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
        shown: lesionsAbove,
        describe: (rows) => {
          const [most] = [...rows].sort((a, b) => Number(b[RATE_COLUMN]) - Number(a[RATE_COLUMN]));
          const highest = most === undefined ? "" : ` The highest is ${String(most[1])}, ${Number(most[RATE_COLUMN]).toFixed(1)}.`; // oxfmt-ignore
          return `Bars of the rate of each lesion.${highest}`;
        },
      },
    ],
    notes: [
      "Rates count cases; shares count cows. Small numbers move a lot by chance: read the limits.",
      "Cows are not all trimmed; those that are have more lesions.",
    ],
  };
}

export const lesionRates = lesionRatesOf(wholeHerd)!;
