import { disorderOf } from "../../core/claws/disorder-key";
import { icar2020 } from "../../core/reference/icar-2020";
import { defineFunction, required } from "../define";
import { lesionCode } from "./kinds";
import { GROUP } from "./kinds-of-findings";

export const lesionName = defineFunction({
  id: "LESION.NAME",
  group: GROUP,
  summary: "Full name of a claw lesion.",
  parameters: { code: required(lesionCode, "Code or name, of the claw disorder key or of the trade") },
  result: { shape: "scalar", type: "text" },
  sources: [icar2020],
  limits: ["Codes and names are quoted from memory."],
  cautions: [],
  examples: [
    { arguments: ["SU"], result: "Sole ulcer", origin: "printed", where: "ICAR Claw Health Atlas (from memory)" },
    {
      arguments: ["wlf"],
      result: "White line fissure",
      origin: "printed",
      where: "ICAR Claw Health Atlas (from memory)",
    },
    {
      arguments: ["foul in the foot"],
      result: "Interdigital phlegmon",
      origin: "hand",
      where: "word of the trade (common practice, no source)",
    },
  ],
  compute: ({ code }) => disorderOf(code)!.name,
  steps: ({ code }, name) => [{ label: "Claw disorder key", working: code, value: String(name) }],
});
