import { daysAtRisk } from "../../core/claws/cow-days";
import { DAYS_A_YEAR } from "../../core/claws/lesion-rate";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { DomainError, unavailable } from "../../core/shared/domain-error";
import { definition } from "../../core/shared/source";
import { type Column, numbersOf, rowName } from "../columns";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { datesOnly, fromParameter, GROUP, refusePeriod, remarkLeftOut, toParameter } from "./kinds-of-findings";

interface HerdDays {
  readonly days: number;
  readonly cows: number;
  readonly cowsAtRisk: number;
  /** Rows without any day, above the last row that has one. */
  readonly emptyRows: number;
}

function herdDays(enteredOn: Column<DaySerial>, leftOn: Column<DaySerial>, from: DaySerial, to: DaySerial): HerdDays {
  refusePeriod(from, to);
  const [entered, left] = [numbersOf(enteredOn), numbersOf(leftOn)];
  let [days, cows, cowsAtRisk, lastRow] = [0, 0, 0, 0];
  for (let row = 0; row < entered.length; row++) {
    if (Number.isNaN(entered[row]!)) {
      if (Number.isNaN(left[row]!)) continue;
      throw new DomainError("invalid", `${rowName("enteredOn", row)} must be a date, since the cow left; got a blank`);
    }
    if (left[row]! < entered[row]!) {
      throw new DomainError(
        "invalid",
        `${rowName("leftOn", row)} must be ${isoDate(entered[row]!)} (enteredOn) or later; got ${isoDate(left[row]!)}`,
      );
    }
    const cowDays = daysAtRisk(entered[row]!, left[row]!, from, to);
    days += cowDays;
    cows++;
    if (cowDays > 0) cowsAtRisk++;
    lastRow = row + 1;
  }
  if (cows === 0) throw unavailable("enteredOn holds no dates: enter the day on which each cow came into the herd");
  return { days, cows, cowsAtRisk, emptyRows: lastRow - cows };
}

export const cowDays = defineFunction({
  id: "COW.DAYS",
  group: GROUP,
  summary: "Days that all cows together were at risk in a period: what a rate is divided by.",
  parameters: {
    enteredOn: required(
      datesOnly,
      "Day on which each cow came into the herd (for rates of cows: first calving or purchase)",
    ),
    leftOn: required(datesOnly, "Day on which each cow left; blank = still in the herd"),
    from: fromParameter,
    to: toParameter,
  },
  result: { shape: "scalar", type: "number", unit: "cow-days", format: "#,##0" },
  sources: [
    definition("Cow-days: for each cow the days in the herd from `from` to `to`, first and last day included."),
  ],
  limits: ["A cow stays at risk after a case and while dry.", "A cow without a day of entry cannot be counted."],
  cautions: [],
  examples: [
    {
      arguments: [[[45_292], [45_400], [45_200]], [[""], [45_409], [45_300]], 45_292, 45_657],
      result: 385,
      origin: "hand",
      where: "2024: 366 days, 2024-04-18 to 04-27: 10, 2024-01-01 to 01-09: 9",
    },
    {
      arguments: [[[40_000], [40_000]], [[""], [45_000]], 45_352, 45_352],
      result: 1,
      origin: "hand",
      where: "one day, 2024-03-01; the second cow left before",
    },
  ],
  compute({ enteredOn, leftOn, from, to }, remarks) {
    const { days, emptyRows } = herdDays(enteredOn, leftOn, from, to);
    remarkLeftOut(remarks, emptyRows, "no day of entry");
    return days;
  },
  steps({ enteredOn, leftOn, from, to }) {
    const { days, cows, cowsAtRisk } = herdDays(enteredOn, leftOn, from, to);
    const length = to - from + 1;
    return [
      { label: "Period", working: `${isoDate(from)} to ${isoDate(to)}`, value: counted(length, "day") },
      {
        label: "Cows in the herd then",
        working: `${cowsAtRisk} of ${counted(cows, "row")}`,
        value: counted(days, "cow-day"),
      },
      { label: "Cow-years", working: `${days} / ${DAYS_A_YEAR}`, value: figure(days / DAYS_A_YEAR) },
      { label: "Cows on an average day", working: `${days} / ${length}`, value: figure(days / length, 1) },
    ];
  },
});
