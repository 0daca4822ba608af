import type { PlainCell } from "../../workbook/port";
import { soundCell } from "./broken-cell";
import { rowsOf, single } from "./elementwise";
import { bracketed, type Expression, type Run } from "./expression";
import type { Rows } from "./values";
import type { Names } from "./names";
import { asExpression } from "./operators";
import { compare, type Comparison } from "./order";
import { stepsOf } from "./steps";

/** What the rows of a list must meet. */
export type Condition =
  | { readonly column: Expression; readonly is: Comparison; readonly than: Expression | PlainCell }
  /** The cell must hold a number, or anything at all. */
  | { readonly column: Expression; readonly is: "a number" | "filled" };

/**
 * The cells of a column in the rows that meet all conditions: FILTER. Where none does it is an empty text, so that a
 * worksheet function says in its own words that there is nothing to work with.
 */
export function filtered(cells: Expression, ...conditions: readonly Condition[]): Expression {
  const expression: Expression = {
    isKept: true,
    steps: stepsOf(...conditions.map(({ column }) => column), cells),
    text: (names) => `FILTER(${cells.text(names)},${conditionsText(conditions, names)},"")`,
    compute: (run) =>
      run.once(expression, () => {
        const chosen = chosenRows(conditions, run);
        if (chosen.length === 0) return "";
        const rows = rowsOf(cells.compute(run));
        const picked: Rows[number][] = new Array<Rows[number]>(chosen.length);
        for (let at = 0; at < chosen.length; at++) picked[at] = rows[chosen[at]!]!;
        return picked;
      }),
  };
  return expression;
}

function conditionsText(conditions: readonly Condition[], names: Names): string {
  const alone = conditions.length === 1;
  const texts = conditions.map((condition) => {
    const column = bracketed(condition.column, names);
    if (condition.is === "a number") return `ISNUMBER(${column})`;
    const than = "than" in condition ? `${condition.is}${bracketed(asExpression(condition.than), names)}` : `<>""`;
    return alone ? `${column}${than}` : `(${column}${than})`;
  });
  return texts.join("*");
}

/** The rows that meet the conditions, counted from 0; asked for once for all columns of the list. */
function chosenRows(conditions: readonly Condition[], run: Run): readonly number[] {
  const all: Expression = { text: (names) => conditionsText(conditions, names), compute: () => null };
  return run.rowsOnce(all, () => {
    const tests = conditions.map((condition) => {
      return { cells: rowsOf(condition.column.compute(run)), meets: test(condition, run) };
    });
    const chosen: number[] = [];
    for (let row = 0; row < tests[0]!.cells.length; row++) {
      let meetsAll = true;
      for (const { cells, meets } of tests) if (!meets(cells[row]![0] ?? null, row)) meetsAll = false;
      if (meetsAll) chosen.push(row);
    }
    return chosen;
  });
}

/** An error in a cell that is asked keeps the whole list from being told. */
type Test = (cell: PlainCell, row: number) => boolean;

function test(condition: Condition, run: Run): Test {
  if (!("than" in condition)) {
    if (condition.is === "a number") return (cell) => typeof cell === "number";
    return (cell, row) => soundCell(cell, row, condition.column, run) !== null && cell !== "";
  }
  const { is } = condition;
  const than = single(asExpression(condition.than).compute(run));
  // Most lists are filtered by their days: numbers against a number.
  return (cell, row) =>
    typeof cell === "number" && typeof than === "number"
      ? compareNumbers(cell, is, than)
      : compare(soundCell(cell, row, condition.column, run), is, than);
}

function compareNumbers(left: number, operator: Comparison, right: number): boolean {
  switch (operator) {
    case "=":
      return left === right;
    case "<>":
      return left !== right;
    case "<":
      return left < right;
    case "<=":
      return left <= right;
    case ">":
      return left > right;
    case ">=":
      return left >= right;
  }
}

/** How many rows meet the conditions: SUM of the conditions' products. */
export function countOf(...conditions: readonly Condition[]): Expression {
  return {
    steps: stepsOf(...conditions.map(({ column }) => column)),
    text: (names) => `SUM(${countText(conditions, names)})`,
    compute: (run) => chosenRows(conditions, run).length,
  };
}

function countText(conditions: readonly Condition[], names: Names): string {
  const text = conditionsText(conditions, names);
  return conditions.length === 1 ? `--(${text})` : text;
}
