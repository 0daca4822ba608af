import { disorderOf } from "../../core/claws/disorder-key";
import { heringstad2018 } from "../../core/reference/heringstad-2018";
import { icar2020 } from "../../core/reference/icar-2020";
import { commonPractice } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { lesionCode } from "./kinds";
import { GROUP } from "./kinds-of-findings";

export const lesionGroup = defineFunction({
  id: "LESION.GROUP",
  group: GROUP,
  summary: "Group of a claw lesion: horn, infectious, shape or other.",
  parameters: { code: required(lesionCode, "Code or name of the claw disorder key") },
  result: { shape: "scalar", type: "text" },
  sources: [
    heringstad2018,
    icar2020,
    commonPractice("AC, CD, CC and SC as shape; horn fissures (HF) and swellings (SW) as other."),
  ],
  limits: ["Interdigital hyperplasia (IH) is listed with the infectious lesions, as one of poor hygiene."],
  cautions: [],
  examples: [
    {
      arguments: ["WLA"],
      result: "horn",
      origin: "printed",
      where: "Heringstad et al. 2018: SH, SU and WL belong together",
    },
    {
      arguments: ["HHE"],
      result: "infectious",
      origin: "printed",
      where: "Heringstad et al. 2018: DD/ID and HHE belong together",
    },
    { arguments: ["CC"], result: "shape", origin: "hand", where: "common practice, no source" },
    { arguments: ["HFV"], result: "other", origin: "hand", where: "common practice, no source" },
  ],
  compute: ({ code }) => disorderOf(code)!.group,
  steps: ({ code }, group) => [{ label: disorderOf(code)!.name, working: code, value: String(group) }],
});
