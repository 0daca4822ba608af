import { type CaseCount, CaseTally } from "../../core/claws/case-tally";
import type { RowTally } from "../../core/claws/findings";
import { casesPer100CowYears, DAYS_A_YEAR, FEW_CASES, rateInterval } from "../../core/claws/lesion-rate";
import type { LesionSelection } from "../../core/claws/lesion-selection";
import { garwood1936 } from "../../core/reference/garwood-1936";
import { kelton1998 } from "../../core/reference/kelton-1998";
import { isoDate } from "../../core/shared/days";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wholeNumbersOf } from "../columns";
import { defineFunction } from "../define";
import { counted, figure } from "../figure";
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
  lesionsParameter,
  markedRows,
  refuseFewCowDays,
  refuseNoFindings,
  refusePeriod,
  remarkRows,
  selectionParameter,
  toParameter,
} from "./kinds-of-findings";

/** Twelve cows, one sole ulcer each, in a row of days of 2024. */
const twelve = Array.from({ length: 12 }, (_, index) => index + 1);

export const lesionRate = defineFunction({
  id: "LESION.RATE",
  group: GROUP,
  summary: "New cases of a lesion per 100 cow-years.",
  parameters: {
    cows: cowsParameter,
    feet: feetParameter,
    lesions: lesionsParameter,
    dates: datesParameter,
    lesion: selectionParameter,
    from: fromParameter,
    to: toParameter,
    cowDays: cowDaysParameter,
    gapDays: gapParameter,
    counted: countedParameter,
  },
  result: { shape: "scalar", type: "number", unit: "new cases per 100 cow-years", format: "0.0" },
  sources: [kelton1998, garwood1936, gapSource],
  limits: [
    ...gapLimits,
    "Counts cases, not cows: a cow may have several. Cow-years count every cow, also those with a case.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        twelve.map((cow) => [cow]),
        twelve.map(() => ["LH"]),
        twelve.map(() => ["SU"]),
        twelve.map((month) => [45_270 + 30 * month]),
        "SU",
        45_292,
        45_657,
        31_046.25,
      ],
      result: 14.118,
      decimals: 3,
      origin: "hand",
      where: "12 new cases in 85 cow-years: 12 / 85 × 100",
    },
    {
      arguments: [
        [[7], [7], [7], [8], [9]],
        [["LH"], ["LH"], ["RH"], ["LH"], [""]],
        [["DD"], ["DD"], ["IP"], ["SU"], ["none"]],
        [[45_285], [45_300], [45_310], [45_320], [45_330]],
        "infectious",
        45_292,
        45_657,
        36_525,
      ],
      result: 1,
      origin: "hand",
      where: "DD of 2024-01-09 repeats one of 15 days before, which lies before the period; IP is new: 1 / 100 × 100",
    },
    {
      arguments: [
        [[7], [7], [7]],
        [["LH"], ["LH"], ["RH"]],
        [["DD"], ["DD"], ["IP"]],
        [[45_300], [45_310], [45_310]],
        "infectious",
        45_292,
        45_657,
        36_525,
        null,
        [["no"], ["yes"], ["yes"]],
      ],
      result: 1,
      origin: "hand",
      where: "of the rows counted DD repeats the one before, which is not counted; IP is new: 1 / 100 × 100",
    },
  ],
  compute(args, remarks) {
    const { newCases, tally } = countedCases(args);
    remarkRows(remarks, tally, args.gapDays);
    if (newCases < FEW_CASES) remarks.add(`Only ${counted(newCases, "new case")}: a small number`);
    return casesPer100CowYears(newCases, args.cowDays);
  },
  steps(args, rate) {
    const { newCases, repeats, cows } = countedCases(args);
    const { lesion, from, to, cowDays, gapDays } = args;
    const { low, high } = rateInterval(newCases, cowDays, USUAL_LEVEL);
    return [
      { label: "Lesion", working: lesion.title, value: lesion.name },
      { label: "Rule", working: gapText(gapDays), value: "" },
      {
        label: "New cases",
        working: `${isoDate(from)} to ${isoDate(to)}, ${counted(cows, "cow")}, ${counted(repeats, "repeat")} left aside`,
        value: String(newCases),
      },
      { label: "Cow-years", working: `${cowDays} / ${DAYS_A_YEAR}`, value: figure(cowDays / DAYS_A_YEAR) },
      {
        label: "Per 100 cow-years",
        working: `${newCases} / (${cowDays} / ${DAYS_A_YEAR}) × 100`,
        value: figure(Number(rate)),
      },
      { label: "95 % limits", working: "exact Poisson", value: `${figure(low)} to ${figure(high)}` },
    ];
  },
});

type Arguments = Parameters<typeof markedRows>[0] & {
  readonly lesion: LesionSelection;
  readonly from: number;
  readonly to: number;
  readonly cowDays: number;
};

function countedCases(args: Arguments): CaseCount & { readonly tally: RowTally } {
  const { from, to, cowDays, dates, lesion } = args;
  refusePeriod(from, to);
  refuseFewCowDays(cowDays, from, to);
  const rows = markedRows(args);
  refuseNoFindings(rows.tally, "lesions");
  return { ...new CaseTally(rows, wholeNumbersOf(dates), from, to).of(lesion), tally: rows.tally };
}
