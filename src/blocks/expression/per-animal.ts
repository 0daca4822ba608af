import type { PlainCell } from "../../workbook/port";
import { columns } from "./columns";
import { cellOf, rowsOf } from "./elementwise";
import type { Expression, Run } from "./expression";
import { stepsOf } from "./steps";
import type { Rows, Value } from "./values";

/**
 * The dated rows of each animal of a list; cows are compared as texts, as the criteria of Excel do. The rows of a cow
 * hang on each other in arrays of numbers: a list of very many tests needs no object for each.
 */
class RecordsByCow {
  readonly #firstRows = new Map<string, number>();
  /** The next row of the same cow behind each, and its day; `NONE` behind her last. */
  readonly #rowsBehind: Int32Array;
  readonly #days: Float64Array;

  constructor(cows: Rows, dates: Rows, isMeant: (row: number) => boolean) {
    this.#rowsBehind = new Int32Array(cows.length);
    this.#days = new Float64Array(cows.length);
    const nameOf = names();
    for (let row = cows.length - 1; row >= 0; row--) {
      const cow = cows[row]![0] ?? null;
      const day = dates[row]?.[0];
      if (cow === null || typeof day !== "number" || !isMeant(row)) continue;
      const name = nameOf(cow);
      this.#rowsBehind[row] = this.#firstRows.get(name) ?? NONE;
      this.#days[row] = day;
      this.#firstRows.set(name, row);
    }
  }

  /** Hands over the records of a cow, row by row. */
  each(name: string, see: (day: number, row: number) => void): void {
    for (let row = this.#firstRows.get(name) ?? NONE; row !== NONE; row = this.#rowsBehind[row]!)
      see(this.#days[row]!, row);
  }
}

const NONE = -1;

/** Names of cows as texts; a number that repeats is written out once. */
function names(): (cow: PlainCell) => string {
  const known = new Map<PlainCell, string>();
  return (cow) => {
    let name = known.get(cow);
    if (name === undefined) known.set(cow, (name = String(cow ?? "").toLowerCase()));
    return name;
  };
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
    const records = new RecordsByCow(rowsOf(cow.compute(run)), rowsOf(date.compute(run)), isLesion);
    return eachAnimal(cows, days, run, (name, from) => {
      let first = Infinity;
      records.each(name, (day) => {
        if (day >= from && day < first) first = day;
      });
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
  const expression: Expression = {
    isKept: true,
    steps: stepsOf(cow, date, count, cows, days),
    text(names) {
      const [c = "", d = "", n = ""] = ["cow", "date", "count"].map((key) => names.range("Tests", key));
      const [wanted, day] = [cows.text(names), days.text(names)];
      const counted = `${n},">0"`;
      const chosen = `${pick}(${d},${c},${wanted},${d},"${criterion}"&${day},${counted})`;
      return `IFERROR(AVERAGEIFS(${n},${c},${wanted},${d},${chosen},${counted}),0)`;
    },
    compute: (run) => run.once(expression, () => counts(run)),
  };
  const counts = (run: Run): Value => {
    const cells = rowsOf(count.compute(run));
    const countIn = (row: number): number => {
      const cell = cells[row]?.[0];
      return typeof cell === "number" && cell > 0 ? cell : 0;
    };
    const isCounted = (row: number): boolean => countIn(row) > 0;
    const records = new RecordsByCow(rowsOf(cow.compute(run)), rowsOf(date.compute(run)), isCounted);
    return eachAnimal(cows, days, run, (name, limit) => {
      let chosen: number | undefined;
      let [sum, tests] = [0, 0];
      records.each(name, (day, row) => {
        if (which === "last before" ? day >= limit : day < limit) return;
        if (chosen === undefined || (which === "last before" ? day > chosen : day < chosen)) {
          [chosen, sum, tests] = [day, 0, 0];
        }
        if (day !== chosen) return;
        sum += countIn(row);
        tests++;
      });
      return tests === 0 ? 0 : sum / tests;
    });
  };
  return expression;
}

/** Rows of cows and days, one answer each; where no cow was chosen there is none either. */
function eachAnimal(
  cows: Expression,
  days: Expression,
  run: Run,
  answer: (name: string, day: number) => number,
): Value {
  const [animals, from] = [rowsOf(cows.compute(run)), days.compute(run)];
  const nameOf = names();
  return animals.map(([cow = null], row) => {
    const day = cellOf(from, row);
    return [typeof day === "number" && cow !== null && cow !== "" ? answer(nameOf(cow), day) : 0];
  });
}
