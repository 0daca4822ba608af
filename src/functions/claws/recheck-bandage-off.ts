import { bandageDays } from "../../core/claws/aftercare";
import { bandagePractice, standardCare } from "../../core/claws/standard-care";
import { BANDAGE_DAYS, higginsonCutler2013 } from "../../core/reference/higginson-cutler-2013";
import { addDays, day, isoDate } from "../../core/shared/days";
import { VETERINARIAN } from "../cautions";
import { defineFunction, required, withDefault } from "../define";
import { counted } from "../figure";
import { date } from "../scalars";
import { bandageHours } from "./kinds-of-care";

export const recheckBandageOff = defineFunction({
  id: "RECHECK.BANDAGEOFF",
  group: "Rechecks and treatment dates",
  summary: "Day by which a bandage comes off.",
  parameters: {
    appliedOn: required(date(), "Day on which the bandage was put on"),
    hours: withDefault(
      bandageHours,
      "Hours for which it stays on",
      standardCare.bandageOffHours,
      "24 hours (common practice, no source)",
    ),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [bandagePractice, higginsonCutler2013],
  limits: ["Part of a day is rounded down: the bandage comes off rather earlier than later."],
  cautions: [
    "A bandage left on cuts in and rots: take it off on the day even when no one looks at the lesion.",
    VETERINARIAN,
  ],
  examples: [
    {
      arguments: [day("2024-02-28"), 48],
      result: day("2024-03-01"),
      origin: "hand",
      where: "Higginson Cutler et al. 2013: a bandage left on for 2 days; leap year",
    },
    {
      arguments: [day("2024-02-28")],
      result: day("2024-02-29"),
      origin: "hand",
      where: "Common practice, no source: off within 24 hours",
    },
  ],
  compute({ appliedOn, hours }, remarks) {
    if (hours > standardCare.bandageOffHours) {
      remarks.add(
        `${hours} hours is longer than the usual ${standardCare.bandageOffHours}; ${higginsonCutler2013.name} left bandages on for ${BANDAGE_DAYS} days`,
      );
    }
    return addDays(appliedOn, bandageDays(hours));
  },
  steps: ({ appliedOn, hours }, result) => [
    {
      label: "Days on",
      working: `${counted(hours, "hour")} / 24, rounded down`,
      value: counted(bandageDays(hours), "day"),
    },
    {
      label: "Off by",
      working: `${isoDate(appliedOn)} + ${counted(bandageDays(hours), "day")}`,
      value: isoDate(result as number),
    },
  ],
});
