import { LYING_TARGET_HOURS, lyingHours } from "../../core/barn/lying-budget";
import type { Source } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { hours } from "./kinds";

const timeBudget: Source = {
  name: "Time budget of a dairy cow",
  citation:
    "Time budgets as published by Cornell University: 24 hours less 8.5 hours of eating, drinking and company less 12 hours of rest leave 3.5 hours for milking and handling.",
  standing: "read",
};

export const lyingBudget = defineFunction({
  id: "LYING.BUDGET",
  group: "Barn and footbath",
  summary: "Hours of the day that are left for lying.",
  parameters: {
    milkingHours: required(hours(false), "Hours a day away from the pen for milking, walking and waiting included"),
    eatingHours: required(hours(true), "Hours a day of eating"),
    otherHours: required(hours(false), "Hours a day of drinking, company, standing in alleys, headlocks"),
  },
  result: { shape: "scalar", type: "number", unit: "hours", format: "0.0" },
  sources: [timeBudget],
  limits: ["Time that is left is not time lain: stalls, heat and rank decide. Cows want 12 to 14 hours."],
  cautions: [],
  examples: [
    {
      arguments: [3.5, 8.5, 0],
      result: 12,
      origin: "printed",
      where: "Cornell: 24 - 8.5 - 12 = 3.5 hours of management",
    },
    {
      arguments: [2.6, 4.4, 4],
      result: 13,
      origin: "hand",
      where: "24 - 2.6 - 4.4 - 4; milking and eating as in Wisconsin herds",
    },
  ],
  compute({ milkingHours, eatingHours, otherHours }, remarks) {
    const left = lyingHours(milkingHours, eatingHours, otherHours);
    if (left < LYING_TARGET_HOURS) remarks.add(`under the ${LYING_TARGET_HOURS} hours that cows want to lie`);
    return left;
  },
  steps: ({ milkingHours, eatingHours, otherHours }, result) => [
    {
      label: "Left for lying",
      working: `24 - ${milkingHours} - ${eatingHours} - ${otherHours} hours`,
      value: `${figure(Number(result))} hours`,
    },
    {
      label: "Meaning",
      working: `cows want ${LYING_TARGET_HOURS} hours or more`,
      value: Number(result) < LYING_TARGET_HOURS ? "too few" : "enough",
    },
  ],
});
