import { bathDays as daysOfBath } from "../../core/barn/footbath";
import { AS_NEEDED_UNDER_SHARE, cookReinemann2007 } from "../../core/reference/cook-reinemann-2007";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";

const shareKind = number({ min: 0, max: 1, reason: "a share: 30 % is 0.3" });

export const bathDays = defineFunction({
  id: "BATH.DAYS",
  group: "Barn and footbath",
  summary: "Days a week with a footbath, from the share of cows with dirty legs.",
  parameters: { hygieneShare: required(shareKind, "Share of cows with leg hygiene 3 or 4, from 0 to 1") },
  result: { shape: "scalar", type: "text" },
  sources: [cookReinemann2007],
  limits: [
    "Leg hygiene of the lower hind leg: 1 clean, 2 splashed, 3 caked with hair visible, 4 caked. Clean the alleys first.",
  ],
  cautions: ["A bath prevents; it does not treat open lesions. Keep to the label and local codes."],
  examples: [
    { arguments: [0.8], result: "7 days a week", origin: "printed", where: "Over 75 %: 7 days a week" },
    { arguments: [0.2], result: "as needed", origin: "printed", where: "Under 25 %: as needed" },
    { arguments: [0.4], result: "2 days a week", origin: "printed", where: "25 to 50 %: 2 days (from memory)" },
  ],
  compute({ hygieneShare }) {
    const days = daysOfBath(hygieneShare);
    return days === undefined ? "as needed" : `${days} days a week`;
  },
  steps: ({ hygieneShare }, result) => [
    {
      label: "Footbath",
      working: `${figure(hygieneShare * 100, 1)} % with 3 or 4; as needed under ${AS_NEEDED_UNDER_SHARE * 100} %`,
      value: String(result),
    },
  ],
});
