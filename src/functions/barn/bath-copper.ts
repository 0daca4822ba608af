import { copperKg } from "../../core/barn/footbath";
import { solano2017 } from "../../core/reference/solano-2017";
import { definition } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { number } from "../scalars";

const kgKind = number({ unit: "kg", min: 0.1, max: 1_000_000, reason: "kg of copper sulphate", zeroIsBlank: true });

export const bathCopper = defineFunction({
  id: "BATH.COPPER",
  group: "Barn and footbath",
  summary: "Kilograms of copper in copper sulphate, which end on the fields.",
  parameters: { kg: required(kgKind, "Copper sulphate pentahydrate") },
  result: { shape: "scalar", type: "number", unit: "kg", format: "0.00" },
  sources: [definition("Copper is 25.45 % of CuSO4·5H2O by atomic weights (IUPAC 2021)."), solano2017],
  limits: ["For the pentahydrate, the blue crystals. Other salts hold another share."],
  cautions: [
    "Copper builds up in soil and poisons sheep: keep a log of the load, and follow local codes for spreading.",
  ],
  examples: [
    {
      arguments: [11.25],
      result: 2.86,
      decimals: 2,
      origin: "hand",
      where: "One fill of 225 L at 5 %: 11.25 × 0.2545",
    },
    { arguments: [100], result: 25.45, decimals: 2, origin: "hand", where: "63.546 / 249.68" },
  ],
  compute: ({ kg }) => copperKg(kg),
  steps: ({ kg }, result) => [
    { label: "Copper", working: `${kg} kg × 25.45 %`, value: `${figure(Number(result))} kg` },
  ],
});
