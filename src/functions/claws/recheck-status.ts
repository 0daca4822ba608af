import { recheckStatus as statusOfRecheck } from "../../core/claws/recheck-status";
import { day, isoDate } from "../../core/shared/days";
import { DomainError, unavailable } from "../../core/shared/domain-error";
import { definition } from "../../core/shared/source";
import { VETERINARIAN } from "../cautions";
import { defineFunction, optional, required } from "../define";
import { date } from "../scalars";

/** A recheck done longer than this before it is due was more likely one of an earlier case. */
const EARLY_DAYS = 7;

export const recheckStatus = defineFunction({
  id: "RECHECK.STATUS",
  group: "Rechecks and treatment dates",
  summary: "Where a recheck stands: done, overdue, today, or in how many days.",
  parameters: {
    due: required(date(), "Day on which it is due"),
    doneOn: optional(date(), "Day on which it was done", "it is still open"),
    today: optional(date(), "Today, from the cell of the sheet that holds it", "needed while the recheck is open"),
  },
  result: { shape: "scalar", type: "text" },
  sources: [definition("Days between two dates; a recheck with a day on which it was done is no longer open.")],
  limits: ["A recheck counts as done whatever was found: write what was found in the findings."],
  cautions: [VETERINARIAN],
  examples: [
    {
      arguments: [day("2024-02-27"), null, day("2024-03-01")],
      result: "overdue 3 d",
      origin: "hand",
      where: "27 February to 1 March in a leap year: 28, 29 February, 1 March",
    },
    {
      arguments: [day("2024-02-27"), null, day("2024-02-27")],
      result: "today",
      origin: "hand",
      where: "The day itself",
    },
    {
      arguments: [day("2024-03-05"), null, day("2024-03-01")],
      result: "in 4 d",
      origin: "hand",
      where: "1 to 5 March",
    },
    {
      arguments: [day("2024-02-27"), day("2024-02-28"), day("2024-03-01")],
      result: "done",
      origin: "hand",
      where: "It was done, a day late",
    },
  ],
  compute({ due, doneOn, today }, remarks) {
    if (doneOn === undefined) {
      if (today === undefined) throw unavailable("today is blank: enter today's date");
      return statusOfRecheck(due, false, today);
    }
    if (today !== undefined && doneOn > today) {
      throw new DomainError(
        "invalid",
        `doneOn must be no later than today (${isoDate(today)}); got ${isoDate(doneOn)}`,
      );
    }
    if (due - doneOn > EARLY_DAYS)
      remarks.add(`done ${due - doneOn} days before it was due: check that the day belongs to this recheck`);
    return statusOfRecheck(due, true, doneOn);
  },
  steps: ({ due, doneOn, today }, result) => [
    {
      label: "Status",
      working:
        doneOn === undefined
          ? `due ${isoDate(due)}, open, today ${isoDate(today!)}`
          : `due ${isoDate(due)}, done ${isoDate(doneOn)}`,
      value: String(result),
    },
  ],
});
