import { addMonths, dateOf, FIRST_DAY, LAST_DAY, serialOf } from "../../core/shared/days";
import type { PlainCell } from "../../workbook/port";
import { soundCell } from "./broken-cell";
import { rowsOf, single } from "./elementwise";
import { bracketed, type Expression, type Run } from "./expression";
import { Fault, isError } from "./fault";
import { stepsOf } from "./steps";

/** EDATE: the same day so many months on or back. */
export function monthsOn(day: Expression, months: number): Expression {
  return {
    text: (names) => `EDATE(${day.text(names)},${months})`,
    compute: (run) => addMonths(dayOf(day, run), months),
  };
}

/** The first day of the month of a day. */
export function monthStart(day: Expression): Expression {
  return {
    text(names) {
      const text = bracketed(day, names);
      return `DATE(YEAR(${text}),MONTH(${text}),1)`;
    },
    compute: (run) => serialOf({ ...dateOf(dayOf(day, run)), day: 1 }),
  };
}

function dayOf(expression: Expression, run: Run): number {
  const day = single(expression.compute(run));
  if (typeof day === "number" && day >= FIRST_DAY && day <= LAST_DAY) return Math.floor(day);
  throw new Fault("#VALUE!", `A date is needed; got ${day === null || day === "" ? "a blank" : String(day)}.`);
}

/** The latest of the days in a column that are not after `upTo`; `none` where there is no such day. */
export function latestDay(days: Expression, upTo: Expression, none: string): Expression {
  return latest(days, "<=", upTo, none);
}

/** The latest of the days in a column before `day`; `none` where there is no such day, or `day` itself is none. */
export function dayBefore(days: Expression, day: Expression, none: string): Expression {
  return latest(days, "<", day, none);
}

/** MIN: the earliest of the days in a column; 0 where it holds none. */
export function earliestDay(days: Expression): Expression {
  return {
    steps: stepsOf(days),
    text: (names) => `MIN(${days.text(names)})`,
    compute(run) {
      let earliest: number | undefined;
      for (const [row, [cell = null]] of rowsOf(days.compute(run)).entries()) {
        const day = soundCell(cell, row, days, run);
        if (typeof day === "number" && (earliest === undefined || day < earliest)) earliest = day;
      }
      return earliest ?? 0;
    },
  };
}

/**
 * `state`, worked out row by row from a column of days that may be blank. Words in it do not tell a day: the row then
 * shows #N/A, and no list or count that asks for it can be told.
 */
export function fromDays(days: Expression, state: Expression): Expression {
  return {
    isKept: true,
    steps: stepsOf(days, state),
    text(names) {
      const column = days.text(names);
      return `IF(ISNUMBER(${column})+(${column}=""),${state.text(names)},NA())`;
    },
    compute(run) {
      for (const [row, [cell = null]] of rowsOf(days.compute(run)).entries()) {
        const day = soundCell(cell, row, days, run);
        if (typeof day === "number" || day === null || day === "") continue;
        const sentence = `${days.called ?? "A list of days"}, row ${row + 1} below the headings, must be a day or blank; got "${String(day)}".`;
        throw new Fault("#N/A", sentence);
      }
      return state.compute(run);
    },
  };
}

function latest(days: Expression, operator: "<" | "<=", limit: Expression, none: string): Expression {
  const expression: Expression = {
    isKept: true,
    steps: stepsOf(days),
    text(names) {
      const criterion = `"${operator}"&${bracketed(limit, names)}`;
      const ranges = days.ranges?.(names) ?? [days.text(names)];
      const counts = ranges.map((range) => `COUNTIFS(${range},${criterion})`).join("+");
      const latestOfEach = ranges.map((range) => `MAXIFS(${range},${range},${criterion})`);
      const found = latestOfEach.length === 1 ? latestOfEach[0] : `MAX(${latestOfEach.join(",")})`;
      return `IF(${counts}=0,"${none}",${found})`;
    },
    compute: (run) =>
      run.once(expression, () => {
        const to = single(limit.compute(run));
        if (typeof to !== "number") return none;
        const found = latestIn(rowsOf(days.compute(run)), (day) => (operator === "<" ? day < to : day <= to));
        return found ?? none;
      }),
  };
  return expression;
}

function latestIn(rows: readonly (readonly PlainCell[])[], meets: (day: number) => boolean): number | undefined {
  let found: number | undefined;
  for (const [cell] of rows) {
    if (typeof cell !== "number" || isError(cell) || !meets(cell)) continue;
    if (found === undefined || cell > found) found = cell;
  }
  return found;
}
