import { aftercareJobs } from "../../core/claws/aftercare";
import { type RecheckRule, ruleFor, defaultRecheckRules, phlegmonPractice } from "../../core/claws/recheck-rules";
import { bandagePractice, blockPractice, painReliefPractice, topicalPractice } from "../../core/claws/standard-care";
import { statedLengths } from "../../core/claws/stated-lengths";
import { treatmentOf } from "../../core/claws/treatment-words";
import { klawitter2019 } from "../../core/reference/klawitter-2019";
import { thomas2015 } from "../../core/reference/thomas-2015";
import { addDays, day, type DaySerial, isoDate } from "../../core/shared/days";
import { AS_PRESCRIBED, VETERINARIAN } from "../cautions";
import type { CellValue } from "../cell";
import { defineFunction, optional, required } from "../define";
import { counted } from "../figure";
import { date } from "../scalars";
import { SOUND } from "./kinds";
import { BUILT_IN_RULES, lesionOrSound, recheckRuleOf, recheckRules, treatment } from "./kinds-of-care";

const HEADINGS: readonly CellValue[] = ["Date", "What to do"];

function planRows(
  lesion: string,
  treatedOn: DaySerial,
  words: string,
  rules: readonly RecheckRule[] | undefined,
): readonly (readonly CellValue[])[] {
  const rule = ruleFor(rules ?? defaultRecheckRules, lesion);
  const jobs = aftercareJobs({ ...rule, ...statedLengths(words) }, treatmentOf(words));
  if (jobs.length === 0) recheckRuleOf(lesion, rules);
  const rows = jobs.map(({ afterDays, what }): readonly CellValue[] => [addDays(treatedOn, afterDays), what]);
  const hint =
    rule === undefined && lesion !== SOUND ? [["", `no recheck rule for ${lesion}: add a row to rules`]] : [];
  return [...rows, ...hint];
}

export const recheckPlan = defineFunction({
  id: "RECHECK.PLAN",
  group: "Rechecks and treatment dates",
  summary: "Everything to do after treating a foot, day by day.",
  parameters: {
    lesion: required(lesionOrSound, "What was found"),
    treatedOn: required(date(), "Day of treatment"),
    treatment: optional(treatment, "What was done, in words: block, pain relief, bandage, topical", "rechecks only"),
    rules: optional(recheckRules, "Recheck rules of the farm", BUILT_IN_RULES),
  },
  result: {
    shape: "table",
    columns: [
      { heading: "Date", type: "date", format: "yyyy-mm-dd" },
      { heading: "What to do", type: "text" },
    ],
  },
  sources: [
    thomas2015,
    klawitter2019,
    phlegmonPractice,
    blockPractice,
    bandagePractice,
    painReliefPractice,
    topicalPractice,
  ],
  limits: [
    "Words other than block, pain relief, bandage (wrap) and topical (spray, paste, powder) ask for nothing.",
    "A block gets 14 and 28 days, pain relief 3 days and a bandage 24 hours where the rules say nothing.",
    "A length stated beside its word, as in pain relief 2 d or bandage 48 h, takes the place of the rule's.",
  ],
  cautions: [AS_PRESCRIBED, VETERINARIAN],
  examples: [
    {
      arguments: ["SU", day("2024-02-20"), "block, pain relief"],
      result: [
        HEADINGS,
        [day("2024-02-22"), "last day of pain relief"],
        [day("2024-02-27"), "first recheck"],
        [day("2024-03-05"), "look at the block"],
        [day("2024-03-19"), "second recheck"],
        [day("2024-03-19"), "take the block off"],
        [day("2024-03-26"), "third recheck"],
      ],
      origin: "hand",
      where: "Thomas et al. 2015: 3 days of pain relief, seen at 7, 28 (block off) and 35 days; block looked at at 14",
    },
    {
      arguments: ["DD", day("2024-02-26"), "spray and bandage"],
      result: [
        HEADINGS,
        [day("2024-02-27"), "take the bandage off"],
        [day("2024-03-04"), "first recheck"],
        [day("2024-03-04"), "topical treatment 2 of 3"],
        [day("2024-03-11"), "second recheck"],
        [day("2024-03-11"), "topical treatment 3 of 3"],
        [day("2024-03-18"), "third recheck"],
      ],
      origin: "hand",
      where:
        "Klawitter et al. 2019: weekly; three treatments in all and the bandage off in 24 hours by common practice",
    },
  ],
  compute: ({ lesion, treatedOn, treatment: words = "", rules }) => [
    HEADINGS,
    ...planRows(lesion, treatedOn, words, rules),
  ],
  steps({ lesion, treatedOn, treatment: words = "", rules }) {
    const asked = Object.entries(treatmentOf(words)).filter(([, is]) => is);
    return [
      {
        label: "Rule",
        working: `${lesion}, ${rules ? "the farm's rules" : "built-in rules"}`,
        value: ruleFor(rules ?? defaultRecheckRules, lesion)?.lesion ?? "none",
      },
      {
        label: "Treatment read as",
        working: words === "" ? "left out" : words,
        value:
          asked.map(([what]) => (what === "painRelief" ? "pain relief" : what)).join(", ") || "nothing to follow up",
      },
      ...planRows(lesion, treatedOn, words, rules).map(([due, what]) =>
        due === ""
          ? { label: "Left over", working: String(what), value: "no day" }
          : {
              label: String(what),
              working: `${isoDate(treatedOn)} + ${counted(Number(due) - treatedOn, "day")}`,
              value: isoDate(Number(due)),
            },
      ),
    ];
  },
});
