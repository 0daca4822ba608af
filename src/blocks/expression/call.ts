import { worksheetName } from "../../functions/names";
import type { Expression } from "./expression";
import { Fault, MissingData } from "./fault";
import { stepsOf } from "./steps";
import { isRows } from "./values";

/** A call of one of our worksheet functions; undefined stands for an argument that is left out. */
export function call(id: string, ...given: readonly (Expression | undefined)[]): Expression {
  const expression: Expression = {
    isKept: true,
    steps: [
      ...stepsOf(...given.flatMap((argument) => argument ?? [])),
      ...given.flatMap((argument, place) => (argument?.isKept === true ? [reading(id, place, argument)] : [])),
    ],
    text(names) {
      const texts = given.map((argument) => argument?.text(names) ?? "");
      while (texts.at(-1) === "") texts.pop();
      return `${worksheetName(id)}(${texts.join(",")})`;
    },
    compute(run) {
      const faults: Fault[] = [];
      const values = given.map((argument) => {
        try {
          return argument === undefined ? null : argument.compute(run);
        } catch (error) {
          if (!(error instanceof Fault)) throw error;
          faults.push(error);
          return null;
        }
      });
      // What the workbook lacks altogether is told before what is wrong in it.
      const missing = faults.find((fault) => fault instanceof MissingData);
      if (missing !== undefined) throw missing;
      // A function is not run on an error: it then shows #VALUE!, whatever the error was.
      if (faults[0] !== undefined) throw new Fault("#VALUE!", faults[0].sentence);
      return run.call(id, values, expression);
    },
  };
  return expression;
}

/** The reading of one argument: half of what a call of long lists takes, and so a step of its own. */
function reading(id: string, place: number, argument: Expression): Expression {
  return {
    text: (names) => argument.text(names),
    compute(run) {
      const value = argument.compute(run);
      if (isRows(value)) run.readArgument(id, place, value);
      return value;
    },
  };
}
