import { single } from "./elementwise";
import type { Expression } from "./expression";
import { Fault } from "./fault";
import { stepsOf } from "./steps";

/** `value` unless `condition`, a single TRUE or FALSE, is met: then #N/A with `sentence`. */
export function unless(condition: Expression, sentence: string, value: Expression): Expression {
  return {
    steps: stepsOf(condition, value),
    text: (names) => `IF(${condition.text(names)},NA(),${value.text(names)})`,
    compute(run) {
      if (single(condition.compute(run)) === true) throw new Fault("#N/A", sentence);
      return value.compute(run);
    },
  };
}
