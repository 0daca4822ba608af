import type { RecordedCall } from "../../engine/call-log";
import type { FunctionCall, PlainArgument } from "../port";
import type { WrittenCall } from "../written-calls";

/**
 * Puts together the calls as the formula writes them, outermost first, and the runs as the engine recorded them, each
 * after the runs inside its own arguments. A branch of an IF may not have run; then its call is without values.
 */
export function matchCalls(written: readonly WrittenCall[], runs: readonly RecordedCall[]): readonly FunctionCall[] {
  const left = [...runs];
  const matched = new Map<WrittenCall, RecordedCall>();
  // A call ends in the formula where it also ends in the computation: after those inside it.
  for (const call of [...written].sort((a, b) => a.end - b.end)) {
    const found = left.findIndex(({ spec }) => spec.id === call.functionId);
    if (found < 0) continue;
    matched.set(call, left[found]!);
    left.splice(0, found + 1);
  }
  return written.map((call) => functionCall(call, matched.get(call)));
}

const NOT_RUN = "This part of the formula was not computed: nothing asked for it.";

function functionCall({ functionId, argumentTexts }: WrittenCall, run: RecordedCall | undefined): FunctionCall {
  if (run === undefined) return { functionId, argumentTexts, errorMessage: NOT_RUN };
  return {
    functionId,
    argumentTexts,
    rawArguments: run.rawArguments as readonly PlainArgument[],
    ...("error" in run.outcome ? { errorMessage: run.outcome.message } : {}),
  };
}
