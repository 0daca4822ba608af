import {
  daysBetweenTrims,
  defaultTrimRules,
  dryOffTrimPractice,
  type NextTrim,
  nextTrim,
  trimGapPractice,
} from "../../core/claws/next-trim";
import { cramer2025 } from "../../core/reference/cramer-2025";
import { day, isoDate } from "../../core/shared/days";
import { TRAINED_TRIMMER } from "../cautions";
import { defineFunction, optional } from "../define";
import { counted } from "../figure";
import { date } from "../scalars";
import { BUILT_IN_TRIM_RULES, trimRules } from "./kinds-of-trimming";

/** "2024-01-10 + 117 days (in milk)", "2024-11-20 - 21 days (before dry-off)". */
function inWords({ rule: { when, days }, due }: NextTrim): string {
  const isBefore = when === "before dry-off";
  const from = isBefore ? due + days : due - days;
  const what = when === "days in milk" ? "in milk" : when;
  return `${isoDate(from)} ${isBefore ? "-" : "+"} ${counted(days, "day")} (${what})`;
}

export const trimNext = defineFunction({
  id: "TRIM.NEXT",
  group: "Toe, sole, balance and trimming",
  summary: "Day of the next routine trim: the earliest of the rules that the last trim does not cover.",
  parameters: {
    lastTrim: optional(date(), "Day of the last trim of all feet", "not trimmed before"),
    calvedOn: optional(date(), "Day of the last calving", "rules by days in milk are passed over"),
    dryOffOn: optional(date(), "Day of the dry-off that ends this lactation", "rules by dry-off are passed over"),
    rules: optional(trimRules, "Trim rules of the farm", BUILT_IN_TRIM_RULES),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [cramer2025, dryOffTrimPractice, trimGapPractice],
  limits: [
    "Published trials disagree on the gain of a trim in mid lactation. A day in the past means overdue.",
    "A lame cow is not put off until her routine trim.",
  ],
  cautions: [TRAINED_TRIMMER],
  examples: [
    {
      arguments: [day("2023-12-15"), day("2024-01-10"), day("2024-11-20"), null],
      result: day("2024-05-06"),
      origin: "hand",
      where:
        "10 January + 117 days: 21 in January, 29, 31, 30, then 6 May; before 21 days ahead of dry-off (30 October)",
    },
    {
      arguments: [day("2024-05-06"), day("2024-01-10"), day("2024-11-20"), null],
      result: day("2024-10-30"),
      origin: "hand",
      where: "Mid lactation is done; 20 November - 21 days",
    },
    {
      arguments: [
        day("2024-05-06"),
        null,
        null,
        [
          ["When", "Days"],
          ["after last trim", 180],
        ],
      ],
      result: day("2024-11-02"),
      origin: "hand",
      where: "6 May + 180 days: 25 in May, 30, 31, 31, 30, 31, then 2 November",
    },
  ],
  compute: ({ rules, ...cow }) => nextTrim(cow, rules ?? defaultTrimRules).due,
  steps({ rules, ...cow }, result) {
    const next = nextTrim(cow, rules ?? defaultTrimRules);
    const gap = daysBetweenTrims(rules ?? defaultTrimRules);
    return [
      {
        label: "Last trim",
        working: `covers what is due up to it${gap > 0 ? ` or fewer than ${counted(gap, "day")} after it` : ""}`,
        value: cow.lastTrim === undefined ? "none" : isoDate(cow.lastTrim),
      },
      { label: "Earliest rule left", working: inWords(next), value: isoDate(result as number) },
    ];
  },
});
