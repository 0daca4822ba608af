import { USUAL_GAP_DAYS } from "../../core/claws/new-cases";
import { ISO_DATE } from "../../workbook/number-format";
import type { BlockInput } from "../block";
import { column } from "../expression/columns";
import { type Expression, literal } from "../expression/expression";
import { monthsOn } from "../expression/days";
import { type Condition, filtered } from "../expression/filtered";
import { ifNumber } from "../expression/if-number";
import { arithmetic, iff, is } from "../expression/operators";
import { asOf, input } from "../expression/places";

export const DAY = ISO_DATE;
/** A list without a day has 0 for its first. */
export const DAY_OR_NONE = `${ISO_DATE};;"no day"`;

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

/** The last day of a series that an input names. A cell that refers to a blank one would show 0. */
export function lastOfSeries(name: string): Expression {
  return iff(is(input(name), "=", ""), "", input(name));
}

/** As a worksheet function takes them: it says itself that one is blank. */
export const from = input("from");
export const to = input("to");

/** The day in an input, or what is worked out from it; a cell that was cleared is no day, though a comparison would take it for one before all. */
export function dayIn(name: string, label: string, value: Expression = input(name)): Expression {
  return ifNumber(input(name), value, `${label} is blank or no day: write a date.`);
}

/** As comparisons and sums take them. */
export const fromDay = dayIn("from", "From");
export const toDay = dayIn("to", "To");

/** Rows of a dated list that lie in the period. */
export function inPeriod(table: string): readonly Condition[] {
  const date = column(table, "date");
  return [
    { column: date, is: ">=", than: fromDay },
    { column: date, is: "<=", than: toDay },
  ];
}

/** A column of the findings of the period. */
export function findingsOfPeriod(cells: Expression): Expression {
  return filtered(cells, ...inPeriod("Findings"));
}
