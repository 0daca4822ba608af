import type { PlainCell } from "../../workbook/port";
import { asNumber, cellOf, elementwise, orFault } from "./elementwise";
import { bracketed, type Expression, literal, type Run } from "./expression";
import { isRows, type Value } from "./values";
import { Fault, isError, MissingData } from "./fault";
import { compare, type Comparison } from "./order";
import { stepsOf } from "./steps";

/** A comparison: TRUE or FALSE, row by row where a side is a column. */
export function is(left: Expression, operator: Comparison, right: Expression | PlainCell): Expression {
  const other = asExpression(right);
  return {
    isOpen: true,
    steps: stepsOf(left, other),
    text: (names) => `${bracketed(left, names)}${operator}${bracketed(other, names)}`,
    compute: (run) => overRows([left, other], run, (a, b) => compare(a, operator, b)),
  };
}

/** A sum, difference, product or quotient. */
export function arithmetic(
  left: Expression | PlainCell,
  operator: "+" | "-" | "*" | "/",
  right: Expression | PlainCell,
): Expression {
  const [first, second] = [asExpression(left), asExpression(right)];
  return {
    isOpen: true,
    steps: stepsOf(first, second),
    text: (names) => `${bracketed(first, names)}${operator}${bracketed(second, names)}`,
    compute: (run) =>
      overRows([first, second], run, (a, b) => {
        const [x, y] = [asNumber(a), asNumber(b)];
        if (typeof x === "string") return x;
        if (typeof y === "string") return y;
        if (operator === "/") return y === 0 ? "#DIV/0!" : x / y;
        return operator === "+" ? x + y : operator === "-" ? x - y : x * y;
      }),
  };
}

/** A quotient of single cells; `none`, a few words, where there is nothing to divide by. */
export function quotient(left: Expression, right: Expression, none: string): Expression {
  return iff(is(right, "=", 0), none, arithmetic(left, "/", right));
}

/** IF, row by row where the condition is a column. Of single cells only the side that is taken is computed. */
export function iff(condition: Expression, yes: Expression | PlainCell, no: Expression | PlainCell): Expression {
  const [first, second] = [asExpression(yes), asExpression(no)];
  const expression: Expression = {
    isKept: true,
    steps: stepsOf(condition, first, second),
    text: (names) => `IF(${condition.text(names)},${first.text(names)},${second.text(names)})`,
    compute: (run) => run.once(expression, () => chosen(run)),
  };
  const chosen = (run: Run): Value => {
    const met = condition.compute(run);
    if (!isRows(met)) return (isMet(orFault(met)) ? first : second).compute(run);
    const sides = [valueOrFault(first, run), valueOrFault(second, run)].map(shown);
    return met.map(([cell = null], row) => [isError(cell) ? cell : cellOf(sides[isMet(cell) ? 0 : 1]!, row)]);
  };
  return expression;
}

function isMet(cell: PlainCell): boolean {
  if (typeof cell === "string") throw new Fault("#VALUE!", "A condition holds a text.");
  return Boolean(cell);
}

/** Runs a computation over cells. Beside a column an error of a single cell stays in the rows that use it. */
function overRows(operands: readonly Expression[], run: Run, compute: (...cells: PlainCell[]) => PlainCell): Value {
  const values = operands.map((operand) => valueOrFault(operand, run));
  const fault = values.find((value) => value instanceof Fault);
  if (fault !== undefined && !values.some((value) => !(value instanceof Fault) && isRows(value))) throw fault;
  return elementwise(values.map(shown), compute);
}

function valueOrFault(expression: Expression, run: Run): Value | Fault {
  try {
    return expression.compute(run);
  } catch (error) {
    if (error instanceof Fault && !(error instanceof MissingData)) return error;
    throw error;
  }
}

function shown(value: Value | Fault): Value {
  return value instanceof Fault ? value.code : value;
}

/** ISNUMBER, row by row where it is asked of a column. */
export function isNumber(value: Expression): Expression {
  return {
    steps: stepsOf(value),
    text: (names) => `ISNUMBER(${value.text(names)})`,
    compute(run) {
      const given = value.compute(run);
      if (!isRows(given)) return typeof given === "number";
      return given.map(([cell]) => [typeof cell === "number"]);
    },
  };
}

/** IFNA: what to take where a value is not there. */
export function ifNa(value: Expression, otherwise: Expression | PlainCell): Expression {
  const other = asExpression(otherwise);
  return {
    steps: stepsOf(value, other),
    text: (names) => `IFNA(${value.text(names)},${other.text(names)})`,
    compute(run) {
      try {
        return value.compute(run);
      } catch (error) {
        // What the workbook lacks is no blank: no formula stands in the sheet, whose IFNA could take the other.
        if (error instanceof Fault && error.code === "#N/A" && !(error instanceof MissingData))
          return other.compute(run);
        throw error;
      }
    },
  };
}

export function asExpression(value: Expression | PlainCell): Expression {
  return typeof value === "object" && value !== null ? value : literal(value);
}
