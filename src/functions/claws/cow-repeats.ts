import { type RepeatCow, repeatCows } from "../../core/claws/repeat-cows";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { commonPractice } from "../../core/shared/source";
import { type Column, wholeNumbersOf } from "../columns";
import { defineFunction, withDefault } from "../define";
import { counted } from "../figure";
import { number } from "../scalars";
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

/** A cow with three cases in a year is one to talk about at dry-off. Common practice, no source. */
const USUAL_CASES = 3;
/** More than this in any period was mistyped. */
const MOST_CASES = 100;

const columns = [
  { heading: "Cow", type: "text" },
  { heading: "New cases", type: "number", format: "0" },
  { heading: "Repeats", type: "number", format: "0" },
  { heading: "Last seen", type: "date", format: "yyyy-mm-dd" },
  { heading: "Worst foot", type: "text" },
  { heading: "Lesions", type: "text" },
] as const;
const headings = columns.map(({ heading }) => heading);

export const cowRepeats = defineFunction({
  id: "COW.REPEATS",
  group: GROUP,
  summary: "Cows with several new cases in a period, the worst first.",
  parameters: {
    cows: cowsParameter,
    feet: feetParameter,
    lesions: lesionsParameter,
    dates: datesParameter,
    from: fromParameter,
    to: toParameter,
    cases: withDefault(
      number({
        min: 1,
        max: MOST_CASES,
        whole: true,
        reason: "cases of one cow",
        zeroIsBlank: true,
        unit: "new cases",
      }),
      "Cows with at least so many new cases",
      USUAL_CASES,
      `${USUAL_CASES} (common practice)`,
    ),
    gapDays: gapParameter,
    counted: countedParameter,
  },
  result: { shape: "table", columns },
  sources: [commonPractice(`${USUAL_CASES} new cases in a period mark a cow to talk about.`), gapSource],
  limits: [
    ...gapLimits,
    "The worst foot is the one with most new cases; of several the one affected last.",
    "Takes all lesions together, the painful and the mild.",
  ],
  cautions: [
    "A list to talk over with the veterinarian, no order to cull or dry off. A severely lame cow must not be transported.",
  ],
  examples: [
    {
      arguments: [
        [[7], [7], [7], [8], [7]],
        [["LH"], ["LH"], ["RH"], ["LH"], ["LH"]],
        [["SU"], ["DD"], ["DD"], ["WL"], ["SU"]],
        [[45_300], [45_320], [45_340], [45_350], [45_310]],
        45_292,
        45_657,
      ],
      result: [headings, ["7", 3, 1, 45_340, "LH", "U, DD"]],
      origin: "hand",
      where: "cow 7: ulcer (looked at again 10 days later) and dermatitis on LH, dermatitis on RH",
    },
    {
      arguments: [[[7], [8]], [["LH"], [null]], [["SU"], ["IP"]], [[45_300], [45_320]], 45_292, 45_657, 1],
      result: [headings, ["8", 1, 0, 45_320, "", "IP"], ["7", 1, 0, 45_300, "LH", "U"]],
      origin: "hand",
      where: "one case each, the later first",
    },
    {
      arguments: [
        [[7], [7], [7]],
        [["LH"], ["LH"], ["RH"]],
        [["SU"], ["SU"], ["DD"]],
        [[45_300], [45_310], [45_320]],
        45_292,
        45_657,
        1,
        null,
        [["no"], ["yes"], ["yes"]],
      ],
      result: [headings, ["7", 1, 1, 45_320, "RH", "DD"]],
      origin: "hand",
      where: "the ulcer counted repeats the one that is not; the dermatitis is new",
    },
  ],
  compute(args, remarks) {
    const { list, tally } = listed(args);
    remarkRows(remarks, tally, args.gapDays);
    const lines = list.map((row) => [
      row.cow,
      row.newCases,
      row.repeats,
      row.last,
      row.worstFoot,
      row.lesions.join(", "),
    ]);
    return [headings, ...lines];
  },
  steps(args) {
    const { list, tally } = listed(args);
    const { from, to, cases, gapDays } = args;
    return [
      { label: "Rule", working: gapText(gapDays), value: "" },
      lesionsStep(tally, args.lesions.length),
      {
        label: "Cows listed",
        working: `${counted(cases, "new case")} or more, ${isoDate(from)} to ${isoDate(to)}`,
        value: String(list.length),
      },
    ];
  },
});

type Arguments = Parameters<typeof markedRows>[0] & {
  readonly feet: Column<string>;
  readonly from: DaySerial;
  readonly to: DaySerial;
  readonly cases: number;
};

function listed(args: Arguments): { list: readonly RepeatCow[]; tally: ReturnType<typeof markedRows>["tally"] } {
  const { feet, dates, from, to, cases } = args;
  refusePeriod(from, to);
  const rows = markedRows(args);
  refuseNoFindings(rows.tally, "lesions");
  return { list: repeatCows(rows, feet.values, wholeNumbersOf(dates), from, to, cases), tally: rows.tally };
}
