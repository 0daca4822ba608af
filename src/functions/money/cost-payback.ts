import { definition } from "../../core/shared/source";
import { defineFunction, required } from "../define";
import { counted, figure } from "../figure";
import { number } from "../scalars";
import { money } from "./kinds";

const casesKind = number({
  unit: "cases",
  min: 0.1,
  max: 100_000,
  reason: "cases avoided in a year",
  zeroIsBlank: true,
});

export const costPayback = defineFunction({
  id: "COST.PAYBACK",
  group: "Money",
  summary: "Years until a purchase is paid back by the cases that it avoids.",
  parameters: {
    price: required(money, "Price of the purchase"),
    casesAvoidedPerYear: required(casesKind, "Cases avoided in a year"),
    costPerCase: required(money, "Cost of a case, in the same currency"),
  },
  result: { shape: "scalar", type: "number", unit: "years", format: "0.0" },
  sources: [definition("Price / (cases avoided a year × cost of a case), without interest.")],
  limits: ["Without interest, upkeep or wear. The number of cases avoided is a guess: try a low one and a high one."],
  cautions: [],
  examples: [
    {
      arguments: [10_800, 60, 90],
      result: 2,
      origin: "hand",
      where: "300 cows × 20 % = 60 cases × 90 = 5,400 a year (University of Wisconsin); 10,800 / 5,400",
    },
    { arguments: [4895, 55, 178], result: 0.5, origin: "hand", where: "55 × 178 = 9,790 a year; 4,895 is half of it" },
  ],
  compute: ({ price, casesAvoidedPerYear, costPerCase }) => price / (casesAvoidedPerYear * costPerCase),
  steps: ({ price, casesAvoidedPerYear, costPerCase }, result) => [
    {
      label: "Saved a year",
      working: `${counted(casesAvoidedPerYear, "case")} × ${costPerCase}`,
      value: figure(casesAvoidedPerYear * costPerCase),
    },
    {
      label: "Paid back in",
      working: `${price} / saved a year`,
      value: counted(Number(figure(Number(result))), "year"),
    },
  ],
});
