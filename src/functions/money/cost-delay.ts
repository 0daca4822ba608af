import { robcis2023 } from "../../core/reference/robcis-2023";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { number } from "../scalars";
import { money } from "./kinds";

const weeksKind = number({ unit: "weeks", min: 0.1, max: 52, reason: "weeks lame within a year", zeroIsBlank: true });

export const costDelay = defineFunction({
  id: "COST.DELAY",
  group: "Money",
  summary: "Cost of the weeks for which a lame cow waits for treatment.",
  parameters: {
    weeks: required(weeksKind, "Weeks from seen lame to treated"),
    perWeek: required(money, "Cost of a further week lame"),
  },
  result: { shape: "scalar", type: "number", format: "#,##0.00" },
  sources: [robcis2023],
  limits: ["Straight by the week; a foot that waits also heals worse. Prices are not made up to date."],
  cautions: ["A lame cow is treated for her own sake, whatever the sum says."],
  examples: [
    { arguments: [4, 12.1], result: 48.4, origin: "hand", where: "Robcis et al. 2023: EUR 12.10 a week × 4" },
    {
      arguments: [1, 12.1],
      result: 12.1,
      origin: "printed",
      where: "Robcis et al. 2023: EUR 12.10 for a further week",
    },
  ],
  compute: ({ weeks, perWeek }) => weeks * perWeek,
  steps: ({ weeks, perWeek }, result) => [
    { label: "Cost", working: `${counted(weeks, "week")} × ${perWeek}`, value: figure(Number(result)) },
  ],
});
