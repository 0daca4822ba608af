import type { PlainCell } from "../../workbook/port";
import { columns } from "./columns";
import { cellOf, rowsOf } from "./elementwise";
import type { Expression, Run } from "./expression";
import { stepsOf } from "./steps";
import type { Rows, Value } from "./values";

/** A record of an animal: its day, and the row in which it stands. */
interface DayAndRow {
  readonly day: number;
  readonly row: number;
}

/** The dated rows of each animal of a list; cows are compared as texts, as the criteria of Excel do. */
function recordsByCow(cows: Rows, dates: Rows, isMeant: (row: number) => boolean): Map<string, DayAndRow[]> {
  const records = new Map<string, DayAndRow[]>();
  for (let row = 0; row < cows.length; row++) {
    const [cow, day] = [cows[row]![0] ?? null, dates[row]?.[0]];
    if (cow === null || typeof day !== "number" || !isMeant(row)) continue;
    const known = records.get(nameOf(cow));
    if (known === undefined) records.set(nameOf(cow), [{ day, row }]);
    else known.push({ day, row });
  }
  return records;
}

function nameOf(cow: PlainCell): string {
  return typeof cow === "number" ? String(cow) : String(cow ?? "").toLowerCase();
}

/** The first day from a given one on which each cow stands under Findings with a lesion; 0, a blank, where there is none. */
export function firstFindingFrom(cows: Expression, days: Expression): Expression {
  const { cow, date, lesion } = columns("Findings", "cow", "date", "lesion");
  const expression: Expression = {
    isKept: true,
    steps: stepsOf(cow, date, lesion, cows, days),
    text(names) {
      const [c = "", d = "", l = ""] = ["cow", "date", "lesion"].map((key) => names.range("Findings", key));
      return `MINIFS(${d},${c},${cows.text(names)},${d},">="&${days.text(names)},${l},"<>none",${l},"<>")`;
    },
    compute: (run) => run.once(expression, () => firstDays(run)),
  };
  const firstDays = (run: Run): Value => {
    const lesions = rowsOf(lesion.compute(run));
    const isLesion = (row: number): boolean => {
      const found = lesions[row]?.[0] ?? null;
      return found !== null && found !== "" && String(found).toLowerCase() !== "none";
    };
    const records = recordsByCow(rowsOf(cow.compute(run)), rowsOf(date.compute(run)), isLesion);
    return eachAnimal(cows, days, run, (name, day) => {
      let first = Infinity;
      for (const record of records.get(name) ?? []) if (record.day >= day && record.day < first) first = record.day;
      return first === Infinity ? 0 : first;
    });
  };
  return expression;
}

/**
 * The count of each cow's last test before a day, or of her first from a day on; 0, which is no count, where there is
 * none. A test without a count, such as that of a dry cow, is passed over; of two counts of a day it is their mean.
 */
export function countOfTest(cows: Expression, which: "last before" | "first from", days: Expression): Expression {
  const { cow, date, count } = columns("Tests", "cow", "date", "count");
  const [pick, criterion] = which === "last before" ? (["MAXIFS", "<"] as const) : (["MINIFS", ">="] as const);
  return {
    steps: stepsOf(cow, date, count, cows, days),
    text(names) {
      const [c = "", d = "", n = ""] = ["cow", "date", "count"].map((key) => names.range("Tests", key));
      const [wanted, day] = [cows.text(names), days.text(names)];
      const counted = `${n},">0"`;
      const chosen = `${pick}(${d},${c},${wanted},${d},"${criterion}"&${day},${counted})`;
      return `IFERROR(AVERAGEIFS(${n},${c},${wanted},${d},${chosen},${counted}),0)`;
    },
    compute(run) {
      const counts = rowsOf(count.compute(run)).map(([cell]) => (typeof cell === "number" && cell > 0 ? cell : 0));
      const isCounted = (row: number): boolean => (counts[row] ?? 0) > 0;
      const records = recordsByCow(rowsOf(cow.compute(run)), rowsOf(date.compute(run)), isCounted);
      return eachAnimal(cows, days, run, (name, day) => {
        const own = records.get(name) ?? [];
        const meant = own.filter((record) => (which === "last before" ? record.day < day : record.day >= day));
        const days = meant.map((record) => record.day);
        const chosen = which === "last before" ? Math.max(...days) : Math.min(...days);
        const found = meant.filter((record) => record.day === chosen);
        return found.length === 0 ? 0 : found.reduce((sum, { row }) => sum + counts[row]!, 0) / found.length;
      });
    },
  };
}

/** Rows of cows and days, one answer each; where no cow was chosen there is none either. */
function eachAnimal(
  cows: Expression,
  days: Expression,
  run: Run,
  answer: (name: string, day: number) => number,
): Value {
  const [names, from] = [rowsOf(cows.compute(run)), days.compute(run)];
  return names.map(([cow = null], row) => {
    const day = cellOf(from, row);
    return [typeof day === "number" && cow !== null && cow !== "" ? answer(nameOf(cow), day) : 0];
  });
}
