import { cellAddress } from "../../xlsx/address";
import type { ConditionalFormatModel, ConditionalRule } from "../../xlsx/model";
import { gridRange } from "./sheet";
import { gridStyle } from "./styles";

/** A conditional format as the grid writes it. */
export function conditionalFormatRule({ areas, stopIfTrue, rule }: ConditionalFormatModel, cfId: string): object {
  const first = areas[0]!;
  return {
    cfId,
    stopIfTrue,
    ranges: areas.map(gridRange),
    rule:
      rule.type === "colourScale"
        ? {
            type: "colorScale",
            config: rule.stops.map(({ at, value, colour }, index) => ({
              index,
              color: colour,
              value: { type: at, ...(value === undefined ? {} : { value: Number(value) || value }) },
            })),
          }
        : {
            type: "highlightCell",
            subType: "formula",
            value: `=${ruleFormula(rule, cellAddress(first.firstRow, first.firstColumn))}`,
            style: gridStyle(rule.style),
          },
  };
}

const OPERATORS: Readonly<Record<string, string>> = {
  equal: "=",
  notEqual: "<>",
  greaterThan: ">",
  greaterThanOrEqual: ">=",
  lessThan: "<",
  lessThanOrEqual: "<=",
};

/** The formula, relative to the first cell of the rule, that says when it holds. */
function ruleFormula(rule: Exclude<ConditionalRule, { type: "colourScale" }>, cell: string): string {
  if (rule.type === "formula") return rule.formula;
  const [first = "0", second = "0"] = rule.formulas;
  if (rule.operator === "between") return `AND(${cell}>=(${first}),${cell}<=(${second}))`;
  if (rule.operator === "notBetween") return `OR(${cell}<(${first}),${cell}>(${second}))`;
  return `${cell}${OPERATORS[rule.operator] ?? "="}(${first})`;
}
