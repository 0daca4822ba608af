import { treatedWithin } from "../../core/claws/treatment-delay";
import { leach2012 } from "../../core/reference/leach-2012";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { DomainError, unavailable } from "../../core/shared/domain-error";
import { USUAL_LEVEL } from "../../core/shared/statistics/interval";
import { wilsonInterval } from "../../core/shared/statistics/wilson-interval";
import { type Column, numbersOf, rowName } from "../columns";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { number } from "../scalars";
import { datesOnly, remarkLeftOut } from "./kinds-of-findings";
import { GROUP } from "./kinds-of-scores";

export const lameWithin = defineFunction({
  id: "LAME.WITHIN",
  group: GROUP,
  summary: "Share of the cows seen lame that were treated in time.",
  parameters: {
    seenLameOn: required(datesOnly, "Day on which each cow was first seen lame"),
    treatedOn: required(datesOnly, "Day on which she was treated; blank = not treated"),
    hours: required(
      number({ unit: "hours", min: 1, max: 8760, reason: "within a year", zeroIsBlank: true }),
      "In time means within so many hours; trials that showed a benefit used 48",
    ),
  },
  result: { shape: "scalar", type: "number", unit: "share of cows seen lame", format: "0.0%" },
  sources: [leach2012],
  limits: [
    "A cow that was not treated counts against, also one seen only yesterday: end the rows where the time has passed.",
    "Whole days: treated the next day is 24 hours, whatever the time of day.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[45_342], [45_342], [45_342], [45_342]], [[45_342], [45_344], [45_345], [null]], 48],
      result: 0.5,
      origin: "hand",
      where: "after 0 and 2 days in time; after 3 days and never, not",
    },
    { arguments: [[[45_342]], [[45_343]], 12], result: 0, origin: "hand", where: "the next day is 24 hours" },
  ],
  compute(args, remarks) {
    const { seen, inTime, neverSeen } = countedCows(args);
    remarkLeftOut(remarks, neverSeen, "treated, but no day on which she was seen lame");
    return inTime / seen;
  },
  steps(args, share) {
    const { seen, inTime, untreated } = countedCows(args);
    const { low, high } = wilsonInterval(inTime, seen, USUAL_LEVEL);
    return [
      { label: "Seen lame", working: `${untreated} not treated`, value: String(seen) },
      { label: "In time", working: `within ${counted(args.hours, "hour")}`, value: String(inTime) },
      { label: "Share", working: `${inTime} / ${seen}`, value: `${figure(100 * Number(share), 1)} %` },
      { label: "95 % limits", working: "Wilson", value: `${figure(100 * low, 1)} to ${figure(100 * high, 1)} %` },
    ];
  },
});

interface Arguments {
  readonly seenLameOn: Column<DaySerial>;
  readonly treatedOn: Column<DaySerial>;
  readonly hours: number;
}

function countedCows({
  seenLameOn,
  treatedOn,
  hours,
}: Arguments): Record<"seen" | "inTime" | "untreated" | "neverSeen", number> {
  const [seenOn, treated] = [numbersOf(seenLameOn), numbersOf(treatedOn)];
  let [seen, inTime, untreated, neverSeen] = [0, 0, 0, 0];
  for (let row = 0; row < seenOn.length; row++) {
    if (Number.isNaN(seenOn[row]!)) {
      if (!Number.isNaN(treated[row]!)) neverSeen++;
      continue;
    }
    if (treated[row]! < seenOn[row]!) {
      throw new DomainError(
        "invalid",
        `${rowName("treatedOn", row)} must be ${isoDate(seenOn[row]!)} (seenLameOn) or later; got ${isoDate(treated[row]!)}`,
      );
    }
    seen++;
    if (Number.isNaN(treated[row]!)) untreated++;
    else if (treatedWithin(seenOn[row]!, treated[row]!, hours)) inTime++;
  }
  if (seen === 0) throw unavailable("seenLameOn holds no dates: enter the day on which each cow was seen lame");
  return { seen, inTime, untreated, neverSeen };
}
