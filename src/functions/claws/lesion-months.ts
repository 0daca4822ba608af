import { casesByMonth, disorderGroups, type MonthOfCases } from "../../core/claws/cases-by-month";
import { heringstad2018 } from "../../core/reference/heringstad-2018";
import { type DaySerial, dateOf, isoDate } from "../../core/shared/days";
import { DomainError } from "../../core/shared/domain-error";
import { wholeNumbersOf } from "../columns";
import { defineFunction } from "../define";
import { counted } from "../figure";
import {
  countedParameter,
  cowsParameter,
  datesParameter,
  feetParameter,
  fromParameter,
  gapLimits,
  gapParameter,
  gapSource,
  gapText,
  GROUP,
  lesionsParameter,
  lesionsStep,
  markedRows,
  refuseNoFindings,
  refusePeriod,
  remarkRows,
  toParameter,
} from "./kinds-of-findings";

/** A longer period was mistyped: nobody charts two generations of cows by month. */
const MOST_YEARS = 50;

const count = (heading: string) => ({ heading, type: "number", unit: "new cases", format: "0" }) as const;
const columns = [
  { heading: "Month from", type: "date", format: "yyyy-mm-dd" } as const,
  count("Horn"),
  count("Infectious"),
  count("Shape"),
  count("Other"),
  count("All"),
];
const headings = columns.map(({ heading }) => heading);

export const lesionMonths = defineFunction({
  id: "LESION.MONTHS",
  group: GROUP,
  summary: "New cases by calendar month and group of lesions, for a chart.",
  parameters: {
    cows: cowsParameter,
    feet: feetParameter,
    lesions: lesionsParameter,
    dates: datesParameter,
    from: fromParameter,
    to: toParameter,
    gapDays: gapParameter,
    counted: countedParameter,
  },
  result: { shape: "table", columns },
  sources: [gapSource, heringstad2018],
  limits: [
    ...gapLimits,
    "Counts follow the days of trimming: a month with a visit has more. The herd's size is not in them.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        [[1], [1], [2], [3]],
        [["LH"], ["LH"], ["RH"], ["LH"]],
        [["SU"], ["SU"], ["DD"], ["none"]],
        [[45_322], [45_330], [45_351], [45_351]],
        45_292,
        45_382,
      ],
      result: [headings, [45_292, 1, 0, 0, 0, 1], [45_323, 0, 1, 0, 0, 1], [45_352, 0, 0, 0, 0, 0]],
      origin: "hand",
      where: "January to March 2024: a sole ulcer on the 31st, repeated on 8 February; dermatitis on 29 February",
    },
    {
      arguments: [[[9]], [["LF"]], [["HFV"]], [[45_657]], 45_657, 45_658, 14],
      result: [headings, [45_627, 0, 0, 0, 1, 1], [45_658, 0, 0, 0, 0, 0]],
      origin: "hand",
      where: "the last day of 2024 and the first of 2025",
    },
    {
      arguments: [
        [[1], [1], [2]],
        [["LH"], ["LH"], ["RH"]],
        [["SU"], ["SU"], ["DD"]],
        [[45_300], [45_310], [45_311]],
        45_292,
        45_322,
        null,
        [["no"], ["yes"], ["yes"]],
      ],
      result: [headings, [45_292, 0, 1, 0, 0, 1]],
      origin: "hand",
      where: "January 2024: the second ulcer repeats the first, which is not counted; the dermatitis is new",
    },
  ],
  compute(args, remarks) {
    const { months, tally } = byMonth(args);
    remarkRows(remarks, tally, args.gapDays);
    const { from, to } = args;
    if (dateOf(from).day > 1 || dateOf(to + 1).day > 1)
      remarks.add(`The period is ${isoDate(from)} to ${isoDate(to)}: a month that it cuts is counted in part`);
    return [headings, ...months.map((month) => [month.firstDay, ...counts(month)])];
  },
  steps(args) {
    const { months, tally } = byMonth(args);
    const sums = disorderGroups.map((group) => months.reduce((sum, { newCases }) => sum + newCases[group], 0));
    return [
      { label: "Rule", working: gapText(args.gapDays), value: "" },
      lesionsStep(tally, args.lesions.length),
      ...disorderGroups.map((group, place) => ({
        label: `New cases, ${group}`,
        working: counted(months.length, "month"),
        value: String(sums[place]),
      })),
    ];
  },
});

function counts({ newCases }: MonthOfCases): number[] {
  const byGroup = disorderGroups.map((group) => newCases[group]);
  return [...byGroup, byGroup.reduce((sum, cases) => sum + cases)];
}

function byMonth(args: Parameters<typeof markedRows>[0] & { readonly from: DaySerial; readonly to: DaySerial }): {
  readonly months: readonly MonthOfCases[];
  readonly tally: ReturnType<typeof markedRows>["tally"];
} {
  const { from, to, dates } = args;
  refusePeriod(from, to);
  if (dateOf(to).year - dateOf(from).year > MOST_YEARS) {
    throw new DomainError(
      "invalid",
      `to must be at most ${MOST_YEARS} years after from; got ${isoDate(from)} to ${isoDate(to)}`,
    );
  }
  const rows = markedRows(args);
  refuseNoFindings(rows.tally, "lesions");
  return { months: casesByMonth(rows, wholeNumbersOf(dates), from, to), tally: rows.tally };
}
