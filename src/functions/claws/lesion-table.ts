import { CaseTally } from "../../core/claws/case-tally";
import { FEW_CASES } from "../../core/claws/lesion-rate";
import { type LesionRow, lesionTable as rowsByLesion } from "../../core/claws/lesion-table";
import { garwood1936 } from "../../core/reference/garwood-1936";
import { icar2020 } from "../../core/reference/icar-2020";
import { kelton1998 } from "../../core/reference/kelton-1998";
import { isoDate } from "../../core/shared/days";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wholeNumbersOf } from "../columns";
import { defineFunction, optional, required } from "../define";
import { counted, figure } from "../figure";
import { lesionsAsWritten } from "./kinds";
import {
  countedParameter,
  cowDaysParameter,
  cowsParameter,
  datesParameter,
  feetParameter,
  fromParameter,
  gapLimits,
  gapParameter,
  gapSource,
  gapText,
  GROUP,
  lesionsStep,
  markedRows,
  refuseFewCowDays,
  refuseNoFindings,
  refusePeriod,
  remarkRows,
  type Targets,
  targetsTable,
  toParameter,
} from "./kinds-of-findings";

const rate = (heading: string) => ({ heading, type: "number", unit: "per 100 cow-years", format: "0.0" }) as const;
const count = (heading: string) => ({ heading, type: "number", format: "0" }) as const;
const words = (heading: string) => ({ heading, type: "text" }) as const;

const columns = [
  words("Code"),
  words("Lesion"),
  count("New cases"),
  count("Repeats"),
  count("Cows"),
  rate("Per 100 cow-years"),
  rate("Low"),
  rate("High"),
  rate("Target"),
  words("Against target"),
  words("Note"),
];
const headings = columns.map(({ heading }) => heading);

export const lesionTable = defineFunction({
  id: "LESION.TABLE",
  group: GROUP,
  summary: "New cases, repeats and rates by lesion, with limits and targets.",
  parameters: {
    cows: cowsParameter,
    feet: feetParameter,
    lesions: required(lesionsAsWritten, 'Lesion of each row, by code or name; "none" for a sound cow'),
    dates: datesParameter,
    from: fromParameter,
    to: toParameter,
    cowDays: cowDaysParameter,
    targets: optional(targetsTable, "Targets by lesion or group, with headings", "no targets"),
    gapDays: gapParameter,
    counted: countedParameter,
  },
  result: { shape: "table", columns },
  sources: [kelton1998, garwood1936, icar2020, gapSource],
  limits: [
    ...gapLimits,
    "Low and high are exact 95 % limits. Above or below is said only when the whole interval lies there; else chance may explain it.",
    `Fewer than ${FEW_CASES} new cases are called few. Forms (SU, WLA ...) have a row of their own where they have a target; all lesions together stand last.`,
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        [[1], [2], [2], [3]],
        [["LH"], ["LH"], ["LH"], ["RH"]],
        [["SU"], ["DD"], ["DD"], ["none"]],
        [[45_300], [45_310], [45_320], [45_320]],
        45_292,
        45_657,
        36_525,
        [
          ["Lesion", "Target"],
          ["DD", 10],
        ],
      ],
      result: [
        headings,
        ["U", "Ulcer", 1, 0, 1, 1, 0.025, 5.572, "", "", "few cases"],
        ["DD", "Digital dermatitis", 1, 1, 1, 1, 0.025, 5.572, 10, "below", "few cases"],
        ["all", "All lesions", 2, 1, 2, 2, 0.242, 7.225, "", "", "few cases; gap 28 d"],
      ],
      decimals: 3,
      origin: "oracle",
      where: "counts by hand over 100 cow-years; limits by R 4.2.2 poisson.test",
    },
    {
      arguments: [
        [[1], [1]],
        [["LF"], ["LF"]],
        [["IP"], ["foot thing"]],
        [[45_300], [45_300]],
        45_292,
        45_657,
        3652.5,
        null,
        14,
      ],
      result: [
        headings,
        ["IP", "Interdigital phlegmon", 1, 0, 1, 10, 0.253, 55.716, "", "", "few cases"],
        ["all", "All lesions", 1, 0, 1, 10, 0.253, 55.716, "", "", "few cases; gap 14 d"],
        ["", "Left out: lesion not known", "", "", "", "", "", "", "", "", "1 row"],
      ],
      decimals: 3,
      origin: "oracle",
      where: "counts by hand over 10 cow-years; limits by R 4.2.2 poisson.test",
    },
    {
      arguments: [
        [[7], [7]],
        [["LH"], ["LH"]],
        [["DD"], ["DD"]],
        [[45_300], [45_310]],
        45_292,
        45_657,
        36_525,
        null,
        null,
        [["no"], ["yes"]],
      ],
      result: [
        headings,
        ["DD", "Digital dermatitis", 0, 1, 1, 0, 0, 3.689, "", "", "few cases"],
        ["all", "All lesions", 0, 1, 1, 0, 0, 3.689, "", "", "few cases; gap 28 d"],
      ],
      decimals: 3,
      origin: "hand",
      where: "the row counted repeats the one before, which is not; exact upper limit of none: -ln(0.025) = 3.689",
    },
  ],
  compute(args, remarks) {
    const { rows, tally } = table(args);
    remarkRows(remarks, tally, args.gapDays);
    const lines = rows.map((row) => line(row, row === rows.at(-1) ? args.gapDays : undefined));
    if (tally.unknownLesion > 0) {
      const blanks = headings.slice(3).map(() => "");
      lines.push(["", "Left out: lesion not known", ...blanks, counted(tally.unknownLesion, "row")]);
    }
    return [headings, ...lines];
  },
  steps(args) {
    const { rows, tally } = table(args);
    const total = rows.at(-1)!;
    return [
      { label: "Rule", working: gapText(args.gapDays), value: "" },
      lesionsStep(tally, args.lesions.length),
      {
        label: "New cases",
        working: `${isoDate(args.from)} to ${isoDate(args.to)}, ${counted(total.repeats, "repeat")} left aside`,
        value: String(total.newCases),
      },
      ...rows.map(({ lesion, newCases, rate, low, high }) => ({
        label: lesion.title,
        working: `${newCases} / (${args.cowDays} / 365.25) × 100`,
        value: `${figure(rate)} (${figure(low)} to ${figure(high)})`,
      })),
    ];
  },
});

function table(
  args: Parameters<typeof markedRows>[0] & {
    readonly from: number;
    readonly to: number;
    readonly cowDays: number;
    readonly targets: Targets | undefined;
  },
): { readonly rows: readonly LesionRow[]; readonly tally: ReturnType<typeof markedRows>["tally"] } {
  const { from, to, cowDays, dates, targets } = args;
  refusePeriod(from, to);
  refuseFewCowDays(cowDays, from, to);
  const marked = markedRows(args);
  refuseNoFindings(marked.tally, "lesions");
  const cases = new CaseTally(marked, wholeNumbersOf(dates), from, to);
  return { rows: rowsByLesion(cases, cowDays, USUAL_LEVEL, targets ?? []), tally: marked.tally };
}

function line(row: LesionRow, gapDays: number | undefined): (string | number)[] {
  const { lesion, newCases, repeats, cows, rate, low, high, target = "", against = "" } = row;
  const notes = [
    ...(newCases < FEW_CASES ? ["few cases"] : []),
    ...(gapDays === undefined ? [] : [`gap ${gapDays} d`]),
  ];
  return [lesion.name, lesion.title, newCases, repeats, cows, rate, low, high, target, against, notes.join("; ")];
}
