import { type HerdScoring, lastHerdScoring, LOOK_BACK_DAYS } from "../../core/claws/herd-scoring";
import { type DaySerial, isoDate } from "../../core/shared/days";
import { unavailable } from "../../core/shared/domain-error";
import { commonPractice } from "../../core/shared/source";
import { type Column, numbersOf } from "../columns";
import { defineFunction, optional, required } from "../define";
import { counted } from "../figure";
import { date } from "../scalars";
import { dates as days } from "./kinds";
import { remarkLeftOut } from "./kinds-of-findings";
import { GROUP } from "./kinds-of-scores";

export const lameScoring = defineFunction({
  id: "LAME.SCORING",
  group: GROUP,
  summary: "Day on which the herd was last scored walking; single cows scored at the chute make no such day.",
  parameters: {
    dates: required(days, "Day of each score, a row for each cow scored; cows that were not seen left out"),
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
    "Where the herd is scored in groups on several days, each large group is a scoring of its own: write one day for all.",
  ],
  cautions: [],
  examples: [
    {
      arguments: [[[45_300], [45_300], [45_300], [45_314], [45_314], [45_317]]],
      result: 45_314,
      origin: "hand",
      where: "three cows, then two (more than half of three), then one at the chute",
    },
    {
      arguments: [[[45_300], [45_300], [45_314], [45_320]], 45_319],
      result: 45_300,
      origin: "hand",
      where: "two cows, then one (no more than half of two); the third day is after the last that counts",
    },
  ],
  compute({ dates, upTo }, remarks) {
    remarkLeftOut(remarks, dates.noteRows, "no day");
    return scoringOf(dates, upTo).date;
  },
  steps({ dates, upTo }) {
    const { date: day, cows, fullest } = scoringOf(dates, upTo);
    return [
      {
        label: "Fullest day",
        working: `of the ${LOOK_BACK_DAYS} days up to ${isoDate(day)}`,
        value: counted(fullest, "cow"),
      },
      { label: "Scored on the day", working: `more than half of ${fullest}`, value: counted(cows, "cow") },
      { label: "Last scoring of the herd", working: "the last such day", value: isoDate(day) },
    ];
  },
});

function scoringOf(dates: Column<DaySerial>, upTo: DaySerial | undefined): HerdScoring {
  const found = lastHerdScoring(numbersOf(dates), upTo);
  if (found !== undefined) return found;
  throw unavailable(`dates holds no day of a score${upTo === undefined ? "" : ` up to ${isoDate(upTo)}`}`);
}
