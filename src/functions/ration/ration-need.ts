import { mineralNeed, systems } from "../../core/ration/mineral-need";
import { nasem2021 } from "../../core/reference/nasem-2021";
import { nrc2001 } from "../../core/reference/nrc-2001";
import { defineFunction, optional, required, withDefault } from "../define";
import { figure } from "../figure";
import { choice, number } from "../scalars";
import { dailyMilk, intake, mineral as mineralKind } from "./kinds";

const weight = number({ unit: "kg", min: 200, max: 1200, reason: "weight of a grown cow", zeroIsBlank: true });
const pregnantDays = number({
  unit: "days",
  min: 1,
  max: 300,
  whole: true,
  reason: "cows carry some 280 days",
  zeroIsBlank: true,
});

export const rationNeed = defineFunction({
  id: "RATION.NEED",
  group: "Ration",
  summary: "Zinc, copper or manganese that a cow needs in her whole ration, mg a day.",
  parameters: {
    mineral: required(mineralKind, "Mineral"),
    weightKg: required(weight, "Body weight"),
    milkKg: required(dailyMilk, 'Milk a day, or "dry"'),
    intakeKg: required(intake, "Dry matter eaten a day"),
    system: withDefault(choice(systems), "Edition of the requirements", "NASEM 2021", '"NASEM 2021"'),
    daysPregnant: optional(pregnantDays, "Days pregnant", "nothing is added for pregnancy"),
  },
  result: { shape: "scalar", type: "number", unit: "mg a day", format: "0" },
  sources: [nasem2021, nrc2001],
  limits: [
    "Without growth. An average: half of the cows need more. Divide by the intake for mg/kg of dry matter in the whole ration, not the premix.",
    "NRC 2001 is without pregnancy.",
  ],
  cautions: [
    "Copper is toxic, to sheep at once: the nutritionist sets the ration, and this never asks for more copper.",
  ],
  examples: [
    {
      arguments: ["copper", 650, 40, 25],
      result: 220.5,
      origin: "hand",
      where: "NASEM 2021: (0.0145 × 650 + 0.04 × 40) / 0.05 = 11.025 / 0.05",
    },
    { arguments: ["zinc", 650, 40, 25], result: 1425, origin: "hand", where: "NASEM 2021: (5 × 25 + 4 × 40) / 0.20" },
    {
      arguments: ["manganese", 650, 40, 25, "NRC 2001"],
      result: 333.3,
      decimals: 1,
      origin: "hand",
      where: "NRC 2001: (0.002 × 650 + 0.03 × 40) / 0.0075 = 2.5 / 0.0075",
    },
    {
      arguments: ["copper", 700, "dry", 13, "NASEM 2021", 250],
      result: 235.2,
      origin: "hand",
      where: "NASEM 2021: (0.0145 + 0.0023) × 700 / 0.05 = 11.76 / 0.05",
    },
  ],
  compute: ({ mineral, system, ...cow }) => mineralNeed(mineral, cow, system).fedMg,
  steps({ mineral, system, ...cow }, result) {
    const need = mineralNeed(mineral, cow, system);
    return [
      {
        label: "Maintenance",
        working: `${cow.weightKg} kg, eating ${cow.intakeKg} kg`,
        value: `${figure(need.maintenanceMg)} mg absorbed`,
      },
      { label: "Milk", working: `${cow.milkKg} kg`, value: `${figure(need.milkMg)} mg absorbed` },
      {
        label: "Pregnancy",
        working: `${cow.daysPregnant ?? 0} days`,
        value: `${figure(need.pregnancyMg)} mg absorbed`,
      },
      {
        label: "Fed",
        working: `together / ${need.absorbedShare} absorbed, ${system}`,
        value: `${figure(Number(result), 1)} mg a day`,
      },
      {
        label: "In the dry matter",
        working: `/ ${cow.intakeKg} kg`,
        value: `${figure(Number(result) / cow.intakeKg, 1)} mg/kg`,
      },
    ];
  },
});
