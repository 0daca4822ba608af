import { type HerdScoring, lastHerdScoring, LOOK_BACK_DAYS } from "../../core/claws/herd-scoring";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { unavailable } from "../../core/shared/domain-error";
import { commonPractice } from "../../core/shared/source";
import { type Column, numbersOf } from "../columns";
import { defineFunction, optional } from "../define";
import { date } from "../scalars";
import { datesParameter, remarkLeftOut } from "./kinds-of-findings";
import { GROUP, scoresParameter, zeroLimit } from "./kinds-of-scores";

export const lameScoring = defineFunction({
  id: "LAME.SCORING",
  group: GROUP,
  summary: "Day on which the herd was last scored walking; single cows scored at the chute make no such day.",
  parameters: {
    dates: datesParameter,
    scores: scoresParameter,
    upTo: optional(date(), "Last day that counts: later scores are passed over", "all days count"),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [
    commonPractice(
      "a scoring of the herd is a day on which more than half as many cows were scored as on the fullest day of the year up to it.",
    ),
  ],
  limits: [
    "The first day in the list is always a scoring. Where single cows alone are scored, those days are what there is.",
    "A herd that is scored in groups on several days: write one day for all of them, or each large group is a scoring of its own.",
    zeroLimit,
  ],
  cautions: [],
  examples: [
    {
      arguments: [
        [[45_300], [45_300], [45_300], [45_314], [45_314], [45_317]],
        [[0], [1], [2], [0], [2], [3]],
      ],
      result: 45_314,
      origin: "hand",
      where: "three cows, then two (more than half of three), then one at the chute",
    },
    {
      arguments: [[[45_300], [45_300], [45_314], [45_314]], [[0], [1], ["-"], [2]], 45_320],
      result: 45_300,
      origin: "hand",
      where: "of two cows on the second day one was not seen: one is not more than half of two",
    },
    {
      arguments: [[[45_300], [45_300], [45_314], [45_314]], [[0], [1], [0], [2]], 45_313],
      result: 45_300,
      origin: "hand",
      where: "the second scoring is after the last day that counts",
    },
  ],
  compute({ dates, scores, upTo }, remarks) {
    const { scoredOn, withoutDay } = daysOf(dates, scores);
    remarkLeftOut(remarks, withoutDay, "a score without its day");
    return scoringOf(scoredOn, upTo).date;
  },
  steps({ dates, scores, upTo }) {
    const { scoredOn } = daysOf(dates, scores);
    const { date: day, cows, fullest } = scoringOf(scoredOn, upTo);
    return [
      {
        label: "Fullest day",
        working: `of the ${LOOK_BACK_DAYS} days up to ${isoDate(day)}`,
        value: cowCount(fullest),
      },
      { label: "Scored on the day", working: `more than half of ${fullest}`, value: cowCount(cows) },
      { label: "Last scoring of the herd", working: "the last such day", value: isoDate(day) },
    ];
  },
});

/** The day of each score; NaN where a row has no score. */
function daysOf(
  dates: Column<DaySerial>,
  scores: Column<number>,
): { readonly scoredOn: Float64Array; readonly withoutDay: number } {
  const [days, values] = [numbersOf(dates), numbersOf(scores)];
  const scoredOn = Float64Array.from(days, (day, row) => (Number.isNaN(values[row]!) ? NaN : day));
  let withoutDay = 0;
  for (let row = 0; row < days.length; row++) if (Number.isNaN(days[row]!) && !Number.isNaN(values[row]!)) withoutDay++;
  return { scoredOn, withoutDay };
}

function scoringOf(scoredOn: Float64Array, upTo: DaySerial | undefined): HerdScoring {
  const found = lastHerdScoring(scoredOn, upTo);
  if (found !== undefined) return found;
  throw unavailable(`scores holds no score with its day${upTo === undefined ? "" : ` up to ${isoDate(upTo)}`}`);
}

function cowCount(cows: number): string {
  return `${cows} ${cows === 1 ? "cow" : "cows"}`;
}
