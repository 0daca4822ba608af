import { type GroupOfCows, twoByTwo, type TwoByTwo } from "../../core/cells/two-by-two";
import { egyedy2022 } from "../../core/reference/egyedy-2022";
import { katz1978 } from "../../core/reference/katz-1978";
import { wilson1927 } from "../../core/reference/wilson-1927";
import { unavailable } from "../../core/shared/domain-error";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import type { CellValue } from "../cell";
import { type Column, columnOf } from "../columns";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { choice } from "../scalars";
import { FEW_COWS } from "./kinds-of-tests";

type YesNo = "yes" | "no";

const lame = columnOf(choice(["yes", "no"], { lame: "yes", severe: "yes", sound: "no", "not lame": "no" }), {
  notes: "refuse",
});
const high = columnOf(
  choice(["yes", "no"], {
    high: "yes",
    new: "yes",
    lasting: "yes",
    "first high": "yes",
    low: "no",
    recovered: "no",
    "first low": "no",
  }),
  { notes: "refuse" },
);

const COLUMNS = [
  { heading: "group", type: "text" },
  { heading: "high count", type: "number", format: "0" },
  { heading: "low count", type: "number", format: "0" },
  { heading: "cows", type: "number", format: "0" },
  { heading: "share high, or ratio", type: "number", format: "0.00" },
  { heading: "lower limit", type: "number", format: "0.00" },
  { heading: "upper limit", type: "number", format: "0.00" },
  { heading: "note", type: "text" },
] as const;
const HEADINGS = COLUMNS.map(({ heading }) => heading);

const NOT_CAUSE = "association, not cause";

/** A cell below this makes the limits of a ratio a rough guess. Common practice, no source. */
const FEW_IN_A_CELL = 5;

interface Given {
  readonly lame: Column<YesNo>;
  readonly high: Column<YesNo>;
}

export const linkTable = defineFunction({
  id: "LINK.TABLE",
  group: "Cell counts",
  summary:
    "Lame cows and high cell counts in this herd: the four counts, the share high in each group, and their ratio.",
  parameters: {
    lame: required(lame, 'Lame or not, one cow a row: "yes" and "no", or the words of LAME.STATE'),
    high: required(
      high,
      'High count or not, the same cows: "yes" and "no", "high" and "low", or the words of CELL.STATUS',
    ),
  },
  result: { shape: "table", columns: COLUMNS },
  sources: [katz1978, wilson1927, egyedy2022],
  limits: [
    "An association in one herd on one day, not a cause: age and stage of lactation drive both. Published findings point both ways, so no factor is built in.",
    "Milk lost to lameness and to high counts overlaps in the same cows: do not add them up.",
    "Shares have Wilson limits, the ratio limits by its logarithm (Katz 1978), 95 %.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        [...Array<string[]>(20).fill(["lame"]), ...Array<string[]>(80).fill(["sound"])],
        [
          ...Array<string[]>(8).fill(["high"]),
          ...Array<string[]>(12).fill(["low"]),
          ...Array<string[]>(16).fill(["high"]),
          ...Array<string[]>(64).fill(["low"]),
        ],
      ],
      result: [
        [...HEADINGS],
        ["lame", 8, 12, 20, 0.4, 0.2188, 0.6134, ""],
        ["not lame", 16, 64, 80, 0.2, 0.127, 0.3005, ""],
        ["all", 24, 76, 100, 0.24, 0.1669, 0.3323, ""],
        ["ratio", "", "", "", 2, 1.0002, 3.9992, NOT_CAUSE],
      ],
      decimals: 4,
      origin: "oracle",
      where: "limits by R 4.2.2: prop.test(..., correct = FALSE); exp(log(2) ± 1.96 × sqrt(1/8 - 1/20 + 1/16 - 1/80))",
    },
    {
      arguments: [
        [["yes"], ["no"], ["no"], [null]],
        [["no"], ["no"], ["yes"], ["yes"]],
      ],
      result: [
        [...HEADINGS],
        ["lame", 0, 1, 1, 0, 0, 0.7935, "few cows"],
        ["not lame", 1, 1, 2, 0.5, 0.0945, 0.9055, "few cows"],
        ["all", 1, 2, 3, 0.3333, 0.0615, 0.7923, "few cows; 1 row left out: one of the two unknown"],
        ["ratio", "", "", "", "", "", "", "no ratio: a group without a high cow"],
      ],
      decimals: 4,
      origin: "oracle",
      where: "limits by R 4.2.2, prop.test(..., correct = FALSE)",
    },
  ],
  compute(given, remarks) {
    const table = read(given);
    if (table.leftOut > 0) remarks.add(leftOutText(table.leftOut));
    return [[...HEADINGS], ...rowsOf(table)];
  },
  steps(given) {
    const { lame: lameCows, sound, ratio, leftOut } = read(given);
    return [
      { label: "Share high of the lame", working: `${lameCows.high} of ${lameCows.cows}`, value: share(lameCows) },
      { label: "Share high of the others", working: `${sound.high} of ${sound.cows}`, value: share(sound) },
      {
        label: "Ratio",
        working: "first share / second share",
        value:
          ratio === undefined
            ? `none: ${whyNoRatio(lameCows, sound)}`
            : `${figure(ratio.ratio)} (${figure(ratio.low)} to ${figure(ratio.high)})`,
      },
      { label: "Left out", working: "one of the two unknown", value: counted(leftOut, "row") },
    ];
  },
});

function read({ lame, high }: Given): TwoByTwo {
  const yes = (word: YesNo | null): boolean | null => (word === null ? null : word === "yes");
  const table = twoByTwo(lame.values.map(yes), high.values.map(yes));
  if (table.lame.cows + table.sound.cows === 0)
    throw unavailable("lame and high hold no row with both: enter at least one cow");
  return table;
}

function rowsOf({ lame, sound, leftOut, ratio }: TwoByTwo): CellValue[][] {
  const all = { high: lame.high + sound.high, cows: lame.cows + sound.cows };
  const few = Math.min(lame.high, lame.cows - lame.high, sound.high, sound.cows - sound.high) < FEW_IN_A_CELL;
  return [
    groupRow("lame", lame, ""),
    groupRow("not lame", sound, ""),
    groupRow("all", all, leftOut > 0 ? leftOutText(leftOut) : ""),
    ratio === undefined
      ? ["ratio", "", "", "", "", "", "", `no ratio: ${whyNoRatio(lame, sound)}`]
      : ["ratio", "", "", "", ratio.ratio, ratio.low, ratio.high, few ? `few cows; ${NOT_CAUSE}` : NOT_CAUSE],
  ];
}

/** Without a low cow there is a ratio, 1, and nothing that could tell its limits. */
function whyNoRatio(lame: GroupOfCows, sound: GroupOfCows): string {
  return lame.high > 0 && sound.high > 0 ? "every cow is high" : "a group without a high cow";
}

function groupRow(group: string, { high, cows }: GroupOfCows, note: string): CellValue[] {
  if (cows === 0) return [group, 0, 0, 0, "", "", "", joined(["no cows", note])];
  const limits = wilsonInterval(high, cows, USUAL_LEVEL);
  const few = cows < FEW_COWS ? "few cows" : "";
  return [group, high, cows - high, cows, high / cows, limits.low, limits.high, joined([few, note])];
}

function joined(notes: readonly string[]): string {
  return notes.filter((note) => note !== "").join("; ");
}

function leftOutText(rows: number): string {
  return `${counted(rows, "row")} left out: one of the two unknown`;
}

function share({ high, cows }: GroupOfCows): string {
  return cows === 0 ? "no cows" : figure(high / cows, 3);
}
