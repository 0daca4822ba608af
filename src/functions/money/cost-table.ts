import { disorderOf } from "../../core/claws/disorder-key";
import { costByLesion, mixedBasis, totalCost } from "../../core/money/case-costs";
import { dolecheck2019 } from "../../core/reference/dolecheck-2019";
import type { CellValue } from "../cell";
import { lesions as lesionsKind, SOUND } from "../claws/kinds";
import type { Column } from "../columns";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { costOf, costs as costsKind } from "./kinds";

const HEADINGS: readonly CellValue[] = ["Code", "Lesion", "Cases", "Cost per case", "Cost", "Share of cost"];

function sick(lesions: Column<string>): readonly (string | null)[] {
  return lesions.values.map((lesion) => (lesion === SOUND ? null : lesion));
}

export const costTable = defineFunction({
  id: "COST.TABLE",
  group: "Money",
  summary: "Cases and their cost by lesion, the dearest first.",
  parameters: {
    lesions: required(lesionsKind, 'What was found, a case a row; "none" for a sound cow'),
    costs: required(costsKind, "Costs a case, in one currency"),
  },
  result: {
    shape: "table",
    columns: [
      { heading: "Code", type: "text" },
      { heading: "Lesion", type: "text" },
      { heading: "Cases", type: "number", format: "0" },
      { heading: "Cost per case", type: "number", format: "#,##0.00" },
      { heading: "Cost", type: "number", format: "#,##0.00" },
      { heading: "Share of cost", type: "number", format: "0%" },
    ],
  },
  sources: [dolecheck2019],
  limits: [
    "Every row is a case: pass new cases only (LESION.NEWCASE). Lesions without a row in costs stand last, without a cost, and are in no share.",
  ],
  cautions: ["Do not add to a milk loss that already holds the milk of lame cows."],
  examples: [
    {
      arguments: [
        [["DD"], ["SU"], ["DD"], ["HHE"], ["none"]],
        [
          ["Lesion", "Cost per case"],
          ["SU", 178],
          ["DD", 61],
        ],
      ],
      result: [
        HEADINGS,
        ["SU", "Sole ulcer", 1, 178, 178, 0.5933333333333334],
        ["DD", "Digital dermatitis", 2, 61, 122, 0.4066666666666667],
        ["HHE", "Heel horn erosion", 1, "", "", ""],
      ],
      origin: "hand",
      where: "178 and 2 × 61 = 122 of 300; 178 / 300 and 122 / 300",
    },
    {
      arguments: [
        [["WLA"], ["WL"]],
        [
          ["Lesion", "Cost per case"],
          ["WL", 152],
        ],
      ],
      result: [
        HEADINGS,
        ["WLA", "White line abscess", 1, 152, 152, 0.5],
        ["WL", "White line disease", 1, 152, 152, 0.5],
      ],
      origin: "hand",
      where: "Dolecheck et al. 2019: US$152 each",
    },
  ],
  compute({ lesions, costs }, remarks) {
    const rows = costByLesion(sick(lesions), costOf(costs));
    const total = totalCost(rows);
    for (const text of mixedBasis(costs)) remarks.add(text);
    for (const { lesion, cases, costPerCase } of rows)
      if (costPerCase === undefined) remarks.add(`${lesion} has no cost: ${cases} left out of the shares`);
    return [
      HEADINGS,
      ...rows.map(({ lesion, cases, costPerCase }): readonly CellValue[] => {
        const name = disorderOf(lesion)?.name ?? "";
        if (costPerCase === undefined) return [lesion, name, cases, "", "", ""];
        const cost = cases * costPerCase;
        return [lesion, name, cases, costPerCase, cost, total > 0 ? cost / total : ""];
      }),
    ];
  },
  steps({ lesions, costs }) {
    const rows = costByLesion(sick(lesions), costOf(costs));
    return [
      ...rows.map(({ lesion, cases, costPerCase }) => ({
        label: lesion,
        working:
          costPerCase === undefined
            ? `${counted(cases, "case")}, no row in costs`
            : `${cases} × ${figure(costPerCase)}`,
        value: costPerCase === undefined ? "no cost" : figure(cases * costPerCase),
      })),
      { label: "Together", working: "of the lesions with a cost", value: figure(totalCost(rows)) },
    ];
  },
});
