import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { DomainError } from "../../../src/core/shared/domain-error";
import type { FunctionSpec } from "../../../src/functions/define";
import { evaluate } from "../../../src/functions/evaluate";
import { registry } from "../../../src/functions/registry";

setFlagsFromString("--expose-gc");
const collectGarbage = runInNewContext("gc") as (options: { readonly type: "minor" }) => void;

const ROWS = 2_000;
const CALLS = 20;
/** What a collection of garbage in the midst of a call meets twice outlives it: the best of some rounds counts. */
const ROUNDS = 5;
/** Half of what one column of every call would be if it were kept, at a byte a row. */
const HALF_A_COLUMN = (CALLS * ROWS) / 2;

/** Memory of typed arrays after the young objects that nothing holds were thrown away. */
function bytesHeld(): number {
  // The second waits for what the first handed to another thread.
  collectGarbage({ type: "minor" });
  collectGarbage({ type: "minor" });
  return process.memoryUsage().arrayBuffers;
}

/** The arguments of the first example, its columns repeated until they are long. */
function longArguments({ examples, parameters }: FunctionSpec): readonly unknown[] {
  return examples[0]!.arguments.map((argument, index) => {
    const rows = argument as readonly unknown[];
    const isColumn = parameters[index]!.kind.shape === "column" && Array.isArray(argument);
    return isColumn ? Array.from({ length: ROWS }, (_, row) => rows[row % rows.length]) : argument;
  });
}

/** Runs the function; a list that names a cow twice is refused, after it was read. */
function run(spec: FunctionSpec, args: readonly unknown[]): void {
  try {
    evaluate(spec, args);
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
  }
}

const ofColumns = registry.filter(({ parameters }) => parameters.some(({ kind }) => kind.shape === "column"));

test.each(ofColumns.map((spec) => [spec.id, spec] as const))(
  "the columns that %s reads go with the first young garbage after its call",
  (_, spec) => {
    const args = longArguments(spec);
    run(spec, args);
    const kept = Array.from({ length: ROUNDS }, () => {
      const before = bytesHeld();
      for (let call = 0; call < CALLS; call++) run(spec, args);
      return bytesHeld() - before;
    });
    expect(Math.min(...kept)).toBeLessThan(HALF_A_COLUMN);
  },
);
