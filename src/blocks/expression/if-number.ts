import type { PlainCell } from "../../workbook/port";
import { single } from "./elementwise";
import type { Expression, Run } from "./expression";
import { Fault, MissingData } from "./fault";
import { stepsOf } from "./steps";

/**
 * `value` where a single cell holds a number, `lowest` or more; else #N/A with `sentence`. A cell that was cleared
 * would go into a comparison or product as 0: a blank is no 0.
 */
export function ifNumber(given: Expression, value: Expression, sentence: string, lowest?: number): Expression {
  return {
    steps: stepsOf(value),
    text(names) {
      const [cell, then] = [given.text(names), value.text(names)];
      const inRange = lowest === undefined ? then : `IF(${cell}>=${lowest},${then},NA())`;
      return `IF(ISNUMBER(${cell}),${inRange},NA())`;
    },
    compute(run) {
      const number = cellOrFault(given, run);
      if (typeof number === "number" && number >= (lowest ?? -Infinity)) return value.compute(run);
      throw new Fault("#N/A", sentence);
    },
  };
}

/** ISNUMBER is false of every error: whichever it is, the cell then shows #N/A. Why it is there is still said. */
function cellOrFault(given: Expression, run: Run): PlainCell {
  try {
    return single(given.compute(run));
  } catch (error) {
    if (error instanceof Fault && !(error instanceof MissingData)) throw new Fault("#N/A", error.sentence);
    throw error;
  }
}
