import { definition } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";
import { intake } from "./kinds";

const content = number({
  unit: "mg/kg",
  min: 0.1,
  max: 1000,
  reason: "mg/kg (ppm) of the whole ration, not of a premix",
  zeroIsBlank: true,
});

export const rationSupply = defineFunction({
  id: "RATION.SUPPLY",
  group: "Ration",
  summary: "Mineral that a cow eats in a day, from the content of the whole ration.",
  parameters: {
    intakeKg: required(intake, "Dry matter eaten a day"),
    mgPerKg: required(content, "Content of the whole ration in the dry matter (ppm)"),
  },
  result: { shape: "scalar", type: "number", unit: "mg a day", format: "0" },
  sources: [definition("Dry matter × content; mg/kg and ppm are the same.")],
  limits: ["Content of the whole ration with its water and forage minerals, in the dry matter."],
  cautions: [],
  examples: [
    { arguments: [25, 57], result: 1425, origin: "hand", where: "25 kg × 57 mg/kg" },
    { arguments: [20, 11], result: 220, origin: "hand", where: "20 kg × 11 mg/kg" },
  ],
  compute: ({ intakeKg, mgPerKg }) => intakeKg * mgPerKg,
  steps: ({ intakeKg, mgPerKg }, result) => [
    { label: "Supply", working: `${intakeKg} kg × ${mgPerKg} mg/kg`, value: `${figure(Number(result), 1)} mg a day` },
  ],
});
