import { monthsSinceMark, WALL_GROWTH_MM_PER_MONTH, wallGrowthPractice } from "../../core/claws/wall-growth";
import { defineFunction, required, withDefault } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";

const distance = number({ unit: "mm", min: 1, max: 150, reason: "along the wall, in millimetres", zeroIsBlank: true });
const growth = number({
  unit: "mm a month",
  min: 3,
  max: 15,
  reason: "claw walls grow about 5 to 13 mm a month",
  zeroIsBlank: true,
});

export const clawGrowOut = defineFunction({
  id: "CLAW.GROWOUT",
  group: "Toe, sole, balance and trimming",
  summary: "Months since a groove or mark on the claw wall arose at the skin-horn line.",
  parameters: {
    distanceMm: required(distance, "Distance of the mark below the skin-horn line, along the front wall"),
    mmPerMonth: withDefault(growth, "Growth of the wall", WALL_GROWTH_MM_PER_MONTH, "6 mm a month (common practice)"),
  },
  result: { shape: "scalar", type: "number", unit: "months", format: "0.0" },
  sources: [wallGrowthPractice],
  limits: ["Growth differs by age, floor and season: take the answer as a season, not a date."],
  cautions: [],
  examples: [
    { arguments: [36, 6], result: 6, origin: "hand", where: "36 mm / 6 mm a month" },
    { arguments: [75], result: 12.5, origin: "hand", where: "Whole wall: 75 mm / 6 mm a month" },
  ],
  compute: ({ distanceMm, mmPerMonth }) => monthsSinceMark(distanceMm, mmPerMonth),
  steps: ({ distanceMm, mmPerMonth }, result) => [
    { label: "Months", working: `${distanceMm} mm / ${mmPerMonth} mm a month`, value: figure(Number(result)) },
  ],
});
