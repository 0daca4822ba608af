import { costByLesion, mixedBasis, totalCost } from "../../core/money/case-costs";
import { dolecheck2019 } from "../../core/reference/dolecheck-2019";
import { DomainError, unavailable } from "../../core/shared/domain-error";
import { lesions as lesionsKind, SOUND } from "../claws/kinds";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { costOf, costs as costsKind } from "./kinds";

export const costCases = defineFunction({
  id: "COST.CASES",
  group: "Money",
  summary: "Cost of all cases in a column of findings.",
  parameters: {
    lesions: required(lesionsKind, 'What was found, a case a row; "none" for a sound cow'),
    costs: required(costsKind, "Costs a case, in one currency"),
  },
  result: { shape: "scalar", type: "number", format: "#,##0.00" },
  sources: [dolecheck2019],
  limits: [
    "Every row is a case: pass new cases only (LESION.NEWCASE), or a lesion seen twice is paid twice.",
    'A lesion without a cost is refused; write "none" as its cost to count it at nothing.',
  ],
  cautions: ["Do not add to a milk loss that already holds the milk of lame cows."],
  examples: [
    {
      arguments: [
        [["SU"], ["DD"], ["none"], ["SU"], [null]],
        [
          ["Lesion", "Cost per case"],
          ["SU", 178],
          ["DD", 64],
        ],
      ],
      result: 420,
      origin: "hand",
      where: "Dolecheck et al. 2019: 2 × 178 + 64",
    },
    {
      arguments: [
        [["WLF"], ["WLA"]],
        [
          ["Lesion", "Cost per case"],
          ["WL", 152],
        ],
      ],
      result: 304,
      origin: "hand",
      where: "2 × 152, both forms of white line disease",
    },
  ],
  compute({ lesions, costs }, remarks) {
    const cost = costOf(costs);
    const { values } = lesions;
    const without = values.findIndex((lesion) => lesion !== null && lesion !== SOUND && cost(lesion) === undefined);
    if (without >= 0)
      throw new DomainError(
        "invalid",
        `lesions row ${without + 1} is ${values[without]}, for which costs must have a row`,
      );
    const rows = costByLesion(
      values.map((lesion) => (lesion === SOUND ? null : lesion)),
      cost,
    );
    if (values.every((lesion) => lesion === null)) throw unavailable("lesions holds no row: enter what was found");
    for (const text of mixedBasis(costs)) remarks.add(text);
    return totalCost(rows);
  },
  steps({ lesions, costs }, result) {
    const rows = costByLesion(
      lesions.values.map((lesion) => (lesion === SOUND ? null : lesion)),
      costOf(costs),
    );
    return [
      ...rows.map(({ lesion, cases, costPerCase = 0 }) => ({
        label: lesion,
        working: `${cases} × ${figure(costPerCase)}`,
        value: figure(cases * costPerCase),
      })),
      {
        label: "Together",
        working: counted(
          rows.reduce((sum, { cases }) => sum + cases, 0),
          "case",
        ),
        value: figure(Number(result)),
      },
    ];
  },
});
