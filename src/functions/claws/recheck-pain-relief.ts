import { painReliefPractice, standardCare } from "../../core/claws/standard-care";
import { thomas2015 } from "../../core/reference/thomas-2015";
import { addDays, day, isoDate } from "../../core/shared/days";
import { AS_PRESCRIBED, VETERINARIAN } from "../cautions";
import { defineFunction, required, withDefault } from "../define";
import { date } from "../scalars";
import { painReliefDays } from "./kinds-of-care";

export const recheckPainRelief = defineFunction({
  id: "RECHECK.PAINRELIEF",
  group: "Rechecks and treatment dates",
  summary: "Last day of a course of pain relief, as prescribed.",
  parameters: {
    startedOn: required(date(), "Day of the first dose"),
    days: withDefault(
      painReliefDays,
      "Days of the course, the first included",
      standardCare.painReliefDays,
      "3 days (Thomas et al. 2015; common practice 2 to 3)",
    ),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [thomas2015, painReliefPractice],
  limits: ["The first dose counts as day 1: three days are the day of the first dose and the two after it."],
  cautions: [AS_PRESCRIBED, VETERINARIAN],
  examples: [
    {
      arguments: [day("2024-02-27"), 3],
      result: day("2024-02-29"),
      origin: "hand",
      where: "Thomas et al. 2015, a dose a day for 3 days: 27, 28 and 29 February",
    },
    {
      arguments: [day("2023-12-31"), 2],
      result: day("2024-01-01"),
      origin: "hand",
      where: "Common practice, no source: two days",
    },
  ],
  compute({ startedOn, days }, remarks) {
    if (days > standardCare.painReliefDays)
      remarks.add(`${days} days is longer than the usual two to three: only as prescribed`);
    return addDays(startedOn, days - 1);
  },
  steps: ({ startedOn, days }, result) => [
    { label: "Last day", working: `${isoDate(startedOn)} is day 1 of ${days}`, value: isoDate(result as number) },
  ],
});
