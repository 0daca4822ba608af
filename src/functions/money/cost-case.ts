import { dolecheck2019 } from "../../core/reference/dolecheck-2019";
import { willshireBell2009 } from "../../core/reference/willshire-bell-2009";
import { unavailable } from "../../core/shared/domain-error";
import { SOUND } from "../claws/kinds";
import { lesionOrSound } from "../claws/kinds-of-care";
import { defineFunction, required } from "../define";
import { figure } from "../figure";
import { costOf, costs as costsKind } from "./kinds";

export const costCase = defineFunction({
  id: "COST.CASE",
  group: "Money",
  summary: "Cost of one case of a lesion, from the costs table of the workbook.",
  parameters: {
    lesion: required(lesionOrSound, "What was found"),
    costs: required(costsKind, "Costs a case, in one currency"),
  },
  result: { shape: "scalar", type: "number", format: "#,##0.00" },
  sources: [dolecheck2019, willshireBell2009],
  limits: [
    "The farm's own table counts; published figures differ by country, year and what they include, and are not made up to date.",
    "A form takes the cost of its parent when it has no row of its own.",
  ],
  cautions: ["Do not add to a milk loss that already holds the milk of lame cows."],
  examples: [
    {
      arguments: [
        "Sole ulcer",
        [
          ["Lesion", "Cost per case", "Currency", "Year"],
          ["SU", 178, "USD", 2018],
          ["DD", 64, "USD", 2018],
        ],
      ],
      result: 178,
      origin: "printed",
      where: "Dolecheck et al. 2019: sole ulcer US$178",
    },
    {
      arguments: [
        "WLA",
        [
          ["Lesion", "Cost per case"],
          ["WL", 152],
        ],
      ],
      result: 152,
      origin: "printed",
      where: "Dolecheck et al. 2019: white line disease US$152; the abscess is a form of it",
    },
  ],
  compute({ lesion, costs }) {
    if (lesion === SOUND) throw unavailable("lesion says that nothing was found: there is no case");
    const cost = costOf(costs)(lesion);
    if (cost === undefined) throw unavailable(`costs must have a row for ${lesion}`);
    return cost;
  },
  steps: ({ lesion, costs }, result) => [
    {
      label: "Cost of a case",
      working: `${lesion}, from the costs table`,
      value: `${figure(Number(result))} ${costs[0]?.currency ?? ""}`.trim(),
    },
  ],
});
