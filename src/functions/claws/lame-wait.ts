import { leach2012 } from "../../core/reference/leach-2012";
import { isoDate } from "../../core/shared/days";
import { DomainError } from "../../core/shared/domain-error";
import { defineFunction, required } from "../define";
import { counted } from "../figure";
import { date } from "../scalars";
import { GROUP } from "./kinds-of-scores";

export const lameWait = defineFunction({
  id: "LAME.WAIT",
  group: GROUP,
  summary: "Days from seeing a cow lame to treating her.",
  parameters: {
    seenLameOn: required(date(), "Day on which she was first seen lame"),
    treatedOn: required(date(), "Day on which she was treated"),
  },
  result: { shape: "scalar", type: "number", unit: "days", format: "0" },
  sources: [leach2012],
  limits: ["Whole days: times of day are cut off.", "She was lame for some time before she was seen."],
  cautions: ["A cow waiting for treatment is in pain: a lame cow is treated as soon as can be."],
  examples: [
    {
      arguments: [45_342, 45_344],
      result: 2,
      origin: "printed",
      where: "Leach et al. 2012: treated within 48 hours; 2024-02-20 to 22",
    },
    {
      arguments: [45_342, 45_407],
      result: 65,
      origin: "printed",
      where: "Leach et al. 2012: median of usual care; 2024-02-20 and 65 days is 04-25",
    },
  ],
  compute({ seenLameOn, treatedOn }) {
    if (treatedOn < seenLameOn)
      throw new DomainError(
        "invalid",
        `treatedOn must be ${isoDate(seenLameOn)} (seenLameOn) or later; got ${isoDate(treatedOn)}`,
      );
    return treatedOn - seenLameOn;
  },
  steps: ({ seenLameOn, treatedOn }, days) => [
    { label: "Wait", working: `${isoDate(seenLameOn)} to ${isoDate(treatedOn)}`, value: counted(Number(days), "day") },
  ],
});
