import { worksheetName } from "../../functions/names";
import type { Expression, Run } from "./expression";
import type { Value } from "./values";
import { Fault } from "./fault";

/** A call of one of our worksheet functions; undefined stands for an argument that is left out. */
export function call(id: string, ...given: readonly (Expression | undefined)[]): Expression {
  const expression: Expression = {
    text(names) {
      const texts = given.map((argument) => argument?.text(names) ?? "");
      while (texts.at(-1) === "") texts.pop();
      return `${worksheetName(id)}(${texts.join(",")})`;
    },
    compute(run) {
      const values = given.map((argument) => (argument === undefined ? null : argumentValue(argument, run)));
      return run.call(id, values, expression);
    },
  };
  return expression;
}

/** A function is not run on an error: it then shows #VALUE!, whatever the error was. */
function argumentValue(argument: Expression, run: Run): Value {
  try {
    return argument.compute(run);
  } catch (error) {
    if (error instanceof Fault) throw new Fault("#VALUE!", error.sentence);
    throw error;
  }
}
