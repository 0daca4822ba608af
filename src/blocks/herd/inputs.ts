import { USUAL_GAP_DAYS } from "../../core/claws/new-cases";
import { ISO_DATE } from "../../workbook/number-format";
import type { BlockInput } from "../block";
import { column } from "../expression/columns";
import { type Expression, literal } from "../expression/expression";
import { monthsOn } from "../expression/days";
import { type Condition, filtered } from "../expression/filtered";
import { arithmetic } from "../expression/operators";
import { asOf, input } from "../expression/places";

export const DAY = ISO_DATE;

/** The year up to the day before the one that the workbook counts from. */
export const period: readonly BlockInput[] = [
  { name: "from", label: "From", usual: monthsOn(asOf, -12), format: DAY },
  { name: "to", label: "To", usual: arithmetic(asOf, "-", 1), format: DAY },
];

export const gap: BlockInput = {
  name: "gapDays",
  label: "A repeat within, days",
  usual: literal(USUAL_GAP_DAYS),
  format: "0",
};

export const lesion: BlockInput = {
  name: "lesion",
  label: "Lesion, a group, or all",
  usual: literal("DD"),
};

export const from = input("from");
export const to = input("to");

/** Rows of a dated list that lie in the period. */
export function inPeriod(table: string): readonly Condition[] {
  const date = column(table, "date");
  return [
    { column: date, is: ">=", than: from },
    { column: date, is: "<=", than: to },
  ];
}

/** A column of the findings of the period. */
export function findingsOfPeriod(cells: Expression): Expression {
  return filtered(cells, ...inPeriod("Findings"));
}
