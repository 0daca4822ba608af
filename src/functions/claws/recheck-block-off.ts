import { blockPractice, standardCare } from "../../core/claws/standard-care";
import { thomas2015 } from "../../core/reference/thomas-2015";
import { addDays, day, isoDate } from "../../core/shared/days";
import { VETERINARIAN } from "../cautions";
import { defineFunction, required, withDefault } from "../define";
import { counted } from "../figure";
import { date } from "../scalars";
import { blockDays } from "./kinds-of-care";

const { blockCheckDays, blockOffDays } = standardCare;

export const recheckBlockOff = defineFunction({
  id: "RECHECK.BLOCKOFF",
  group: "Rechecks and treatment dates",
  summary: "Day on which a block is looked at: replaced if lost, taken off if worn, painful or no longer needed.",
  parameters: {
    appliedOn: required(date(), "Day on which the block was put on"),
    days: withDefault(blockDays, "Days until it is looked at", blockCheckDays, "14 days (common practice, no source)"),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [blockPractice, thomas2015],
  limits: ["Give 28 as days for the day on which the trial took blocks off (25 to 31 days)."],
  cautions: [
    "A block that stays on too long or hurts makes the cow lamer: never leave one on without a day to take it off.",
    VETERINARIAN,
  ],
  examples: [
    {
      arguments: [day("2024-02-20"), 28],
      result: day("2024-03-19"),
      origin: "hand",
      where: "Thomas et al. 2015: block off at 25 to 31 days, here 28; 29 days in February 2024",
    },
    {
      arguments: [day("2024-02-20")],
      result: day("2024-03-05"),
      origin: "hand",
      where: "Common practice, no source: looked at two weeks on",
    },
  ],
  compute({ appliedOn, days }, remarks) {
    if (days < blockOffDays)
      remarks.add(`take it off by ${isoDate(addDays(appliedOn, blockOffDays))} (${blockOffDays} days) at the latest`);
    if (days > blockOffDays)
      remarks.add(
        `${days} days is longer than the ${blockOffDays} days after which ${thomas2015.name} took blocks off`,
      );
    return addDays(appliedOn, days);
  },
  steps: ({ appliedOn, days }, result) => [
    {
      label: "Look at the block",
      working: `${isoDate(appliedOn)} + ${counted(days, "day")}`,
      value: isoDate(result as number),
    },
    {
      label: "Off at the latest",
      working: `${isoDate(appliedOn)} + ${Math.max(days, blockOffDays)} days`,
      value: isoDate(addDays(appliedOn, Math.max(days, blockOffDays))),
    },
  ],
});
