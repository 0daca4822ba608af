import { disorderOf, parentCode } from "../../core/claws/disorder-key";
import { icar2020 } from "../../core/reference/icar-2020";
import { defineFunction, required } from "../define";
import { lesionCode } from "./kinds";
import { GROUP } from "./kinds-of-findings";

export const lesionParent = defineFunction({
  id: "LESION.PARENT",
  group: GROUP,
  summary: "Code under which a lesion is counted: SU is an ulcer (U), WLA is white line disease (WL).",
  parameters: { code: required(lesionCode, "Code or name of the claw disorder key") },
  result: { shape: "scalar", type: "text" },
  sources: [icar2020],
  limits: ["A lesion that is no form of another is its own parent."],
  cautions: [],
  examples: [
    { arguments: ["SU"], result: "U", origin: "printed", where: "ICAR Claw Health Atlas (from memory)" },
    {
      arguments: ["White line abscess"],
      result: "WL",
      origin: "printed",
      where: "ICAR Claw Health Atlas (from memory)",
    },
    { arguments: ["DD"], result: "DD", origin: "printed", where: "ICAR Claw Health Atlas (from memory): no forms" },
  ],
  compute: ({ code }) => parentCode(code),
  steps: ({ code }, parent) => [
    {
      label: disorderOf(code)!.name,
      working: `${code} is counted as`,
      value: `${String(parent)}, ${disorderOf(String(parent))!.name}`,
    },
  ],
});
