import { soundCell } from "./broken-cell";
import { elementwise, orFault, rowsOf, single } from "./elementwise";
import { bracketed, type Expression } from "./expression";
import { Fault } from "./fault";
import { stepsOf } from "./steps";

/** INDEX: one cell of what a formula fills; rows and columns counted from 1, the headings being row 1. */
export function cellAt(table: Expression, row: number, column: number): Expression {
  return {
    steps: stepsOf(table),
    text: (names) => `INDEX(${table.text(names)},${row},${column})`,
    compute(run) {
      const cell = rowsOf(table.compute(run))[row - 1]?.[column - 1];
      if (cell === undefined) throw new Fault("#REF!", "The list has no such row.");
      return orFault(cell);
    },
  };
}

/** A column of what a formula fills, its heading included; counted from 1. */
export function columnOfTable(table: Expression, column: number): Expression {
  return {
    steps: stepsOf(table),
    text: (names) => `INDEX(${table.text(names)},0,${column})`,
    compute: (run) => rowsOf(table.compute(run)).map((row) => [row[column - 1] ?? null]),
  };
}

/** SUM: of the numbers in cells; texts and blanks count nothing. */
export function sum(cells: Expression): Expression {
  return {
    steps: stepsOf(cells),
    text: (names) => `SUM(${cells.text(names)})`,
    compute(run) {
      let total = 0;
      for (const [row, [cell = null]] of rowsOf(cells.compute(run)).entries())
        if (typeof soundCell(cell, row, cells, run) === "number") total += Number(cell);
      return total;
    },
  };
}

/** The cells as texts, as functions give the names of cows back: &"". */
export function asTexts(cells: Expression): Expression {
  return {
    isOpen: true,
    steps: stepsOf(cells),
    text: (names) => `${bracketed(cells, names)}&""`,
    compute: (run) => elementwise([cells.compute(run)], (cell) => String(cell ?? "")),
  };
}

/** LARGE: the number that so many are as high as, or higher than. Where there are fewer numbers, the lowest of them. */
export function largest(cells: Expression, place: Expression): Expression {
  return {
    steps: stepsOf(cells),
    text(names) {
      const column = cells.text(names);
      return `LARGE(${column},MAX(1,MIN(${place.text(names)},COUNT(${column}))))`;
    },
    compute(run) {
      const rows = rowsOf(cells.compute(run));
      rows.forEach(([cell = null], row) => soundCell(cell, row, cells, run));
      const numbers = Float64Array.from(rows.flatMap(([cell]) => (typeof cell === "number" ? [cell] : []))).sort();
      const wanted = single(place.compute(run));
      if (wanted !== null && typeof wanted !== "number") throw new Fault("#VALUE!", "A number of cows is needed.");
      const rank = Math.ceil(Math.max(1, Math.min(wanted ?? 0, numbers.length)));
      if (numbers.length === 0) throw new Fault("#NUM!", "There is no number to choose from.");
      return numbers[numbers.length - rank]!;
    },
  };
}

/** MEDIAN of the numbers in cells. */
export function median(cells: Expression): Expression {
  return {
    steps: stepsOf(cells),
    text: (names) => `MEDIAN(${cells.text(names)})`,
    compute(run) {
      const numbers = rowsOf(cells.compute(run)).flatMap(([cell = null], row) => {
        const found = soundCell(cell, row, cells, run);
        return typeof found === "number" ? [found] : [];
      });
      if (numbers.length === 0) throw new Fault("#NUM!", "There is no number to take the middle of.");
      const sorted = Float64Array.from(numbers).sort();
      const middle = sorted.length / 2;
      return (sorted[Math.ceil(middle) - 1]! + sorted[Math.floor(middle)]!) / 2;
    },
  };
}

/** Blank cells as empty texts, for functions that a host would hand a blank as 0 where 0 is real. */
export function blanksAsText(cells: Expression): Expression {
  const expression: Expression = {
    isKept: true,
    steps: stepsOf(cells),
    text(names) {
      const column = cells.text(names);
      return `IF(${column}="","",${column})`;
    },
    compute: (run) =>
      run.once(expression, () => rowsOf(cells.compute(run)).map((row) => (row[0] === null ? EMPTY : row))),
  };
  return expression;
}

const EMPTY = [""] as const;
