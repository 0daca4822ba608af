import { inspect } from "node:util";
import fc from "../random";
import { DomainError } from "../../src/core/shared/domain-error";
import type { FunctionSpec } from "../../src/functions/define";
import { explain } from "../../src/functions/evaluate";
import { registry } from "../../src/functions/registry";
import { junkArgument } from "./arbitrary/junk";
import { plausibleCall } from "./arbitrary/plausible";
import { spoiledCall } from "./arbitrary/spoiled";
import { expectMessage, expectSound, isFit, outcome } from "./outcome";

/** Calls of each sort and function. RANDOM_CALLS raises it for a long run. */
const CALLS = Number(process.env["RANDOM_CALLS"] ?? 150);
const settings = { numRuns: CALLS };

let calls = 0;
afterAll(() => {
  if (process.env["RANDOM_CALLS"] !== undefined) console.log(`${calls} random calls`);
});

/** Everything about the arguments, as text. */
function shown(call: readonly unknown[]): string {
  return inspect(call, { depth: 8, maxArrayLength: null, maxStringLength: null });
}

function expectValueOrMessage(spec: FunctionSpec, call: readonly unknown[]): boolean {
  calls++;
  const end = outcome(spec, call);
  const isValue = "value" in end;
  if (isValue) expectSound(end.value, spec.result);
  else expectMessage(end, () => shown(call));
  return isValue;
}

function junkCall({ parameters }: FunctionSpec): fc.Arbitrary<readonly unknown[]> {
  return fc.array(junkArgument, { maxLength: parameters.length + 1 });
}

describe.each(registry.map((spec) => [spec.id, spec] as const))("HERD.%s", (_, spec) => {
  test("plausible arguments give a sound value or one of the two errors with its message", () => {
    let values = 0;
    fc.assert(
      fc.property(plausibleCall(spec), (call) => {
        if (expectValueOrMessage(spec, call)) values++;
      }),
      settings,
    );
    // Otherwise these calls would try little but refusals.
    expect(values / CALLS).toBeGreaterThan(0.05);
  });

  test("arguments with junk among them do too", () => {
    fc.assert(
      fc.property(spoiledCall(spec), (call) => void expectValueOrMessage(spec, call)),
      settings,
    );
  });

  test("nothing but junk does too", () => {
    fc.assert(
      fc.property(junkCall(spec), (call) => void expectValueOrMessage(spec, call)),
      settings,
    );
  });

  test("the same arguments give the same result, and the arguments are left as they were", () => {
    fc.assert(
      fc.property(spoiledCall(spec), (call) => {
        calls += 2;
        const before = shown(call);
        const first = outcome(spec, call);
        expect(outcome(spec, call)).toEqual(first);
        expect(shown(call)).toBe(before);
      }),
      settings,
    );
  });

  test("what gives a value can be explained, in words and numbers", () => {
    fc.assert(
      fc.property(fc.oneof(plausibleCall(spec), spoiledCall(spec)), (call) => {
        calls++;
        for (const { label, working, value } of stepsOf(spec, call))
          if (label === "" || !isFit(`${label} ${working} ${value}`, () => shown(call)))
            throw new Error(`a step reads ${label} | ${working} | ${value}`);
      }),
      settings,
    );
  });
});

function stepsOf(spec: FunctionSpec, call: readonly unknown[]): ReturnType<FunctionSpec["steps"]> {
  try {
    return explain(spec, call).steps;
  } catch (error) {
    if (error instanceof DomainError) return [];
    throw error;
  }
}
