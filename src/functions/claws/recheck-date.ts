import { recheckDate as dateOfRecheck } from "../../core/claws/recheck-date";
import { phlegmonPractice, recheckDays } from "../../core/claws/recheck-rules";
import { klawitter2019 } from "../../core/reference/klawitter-2019";
import { thomas2015 } from "../../core/reference/thomas-2015";
import { day, isoDate } from "../../core/shared/days";
import { VETERINARIAN } from "../cautions";
import { defineFunction, optional, required, withDefault } from "../define";
import { counted } from "../figure";
import { date } from "../scalars";
import { BUILT_IN_RULES, lesionOrSound, recheckRuleOf, recheckRules, recheckVisit } from "./kinds-of-care";

export const recheckDate = defineFunction({
  id: "RECHECK.DATE",
  group: "Rechecks and treatment dates",
  summary: "Day on which a treated foot is looked at again.",
  parameters: {
    lesion: required(lesionOrSound, "What was found"),
    treatedOn: required(date(), "Day of treatment"),
    rules: optional(recheckRules, "Recheck rules of the farm", BUILT_IN_RULES),
    visit: withDefault(recheckVisit, "Which recheck: 1 is the first", 1, "1, the first recheck"),
  },
  result: { shape: "scalar", type: "date", format: "yyyy-mm-dd" },
  sources: [thomas2015, klawitter2019, phlegmonPractice],
  limits: [
    "The built-in days for sole ulcer, sole haemorrhage and white line disease come from trials of lame cows; other lesions need a row in rules.",
    "A form takes the row of its parent when it has none of its own. Rules that are passed stand alone.",
  ],
  cautions: [VETERINARIAN],
  examples: [
    {
      arguments: ["SU", day("2024-02-20"), null, 1],
      result: day("2024-02-27"),
      origin: "hand",
      where: "Thomas et al. 2015: first recheck at 5 to 11 days, here 7; leap year",
    },
    {
      arguments: ["WLA", day("2023-02-20"), null, 2],
      result: day("2023-03-20"),
      origin: "hand",
      where: "Thomas et al. 2015: second recheck at 25 to 31 days, here 28; February 2023 has 28 days",
    },
    {
      arguments: [
        "TU",
        day("2024-12-30"),
        [
          ["Lesion", "First recheck (days)"],
          ["U", 3],
        ],
      ],
      result: day("2025-01-02"),
      origin: "hand",
      where: "A toe ulcer takes the row of its parent, ulcer: 30 December + 3 days",
    },
  ],
  compute: ({ lesion, treatedOn, rules, visit }) => dateOfRecheck(recheckRuleOf(lesion, rules), treatedOn, visit),
  steps({ lesion, treatedOn, rules, visit }, result) {
    const rule = recheckRuleOf(lesion, rules);
    const days = counted(recheckDays(rule)[visit - 1]!, "day");
    return [
      {
        label: "Rule",
        working: `${lesion} uses the ${rules ? "farm's" : "built-in"} row of ${rule.lesion}`,
        value: `recheck ${visit}: ${days}`,
      },
      { label: "Recheck", working: `${isoDate(treatedOn)} + ${days}`, value: isoDate(result as number) },
    ];
  },
});
