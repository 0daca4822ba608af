import fc from "fast-check";
import { registry } from "../../src/functions/registry";
import { junkArgument, plausibleCall, spoiledCall } from "./arbitrary";
import { expectSound, type Outcome, outcome } from "./outcome";

/** Calls of each sort and function. RANDOM_CALLS raises it for a long run. */
const CALLS = Number(process.env["RANDOM_CALLS"] ?? 150);
const settings = { numRuns: CALLS, seed: 20_240_229 };

function expectValueOrMessage(end: Outcome): void {
  if ("value" in end) expectSound(end.value);
  else if (!["invalid", "unavailable"].includes(end.kind) || end.message.length < 10) {
    throw new Error(`an error without a proper message: ${JSON.stringify(end)}`);
  }
}

describe.each(registry.map((spec) => [spec.id, spec] as const))("HERD.%s", (_, spec) => {
  test("plausible arguments give a sound value or one of the two errors with its message", () => {
    fc.assert(
      fc.property(plausibleCall(spec), (call) => expectValueOrMessage(outcome(spec, call))),
      settings,
    );
  });

  test("arguments with junk among them do too", () => {
    fc.assert(
      fc.property(spoiledCall(spec), (call) => expectValueOrMessage(outcome(spec, call))),
      settings,
    );
  });

  test("nothing but junk does too", () => {
    const junk = fc.array(junkArgument, { maxLength: spec.parameters.length + 1 });
    fc.assert(
      fc.property(junk, (call) => expectValueOrMessage(outcome(spec, call))),
      settings,
    );
  });

  test("the same arguments give the same result, and the arguments are left as they were", () => {
    fc.assert(
      fc.property(spoiledCall(spec), (call) => {
        const before = JSON.stringify(call);
        const first = outcome(spec, call);
        expect(outcome(spec, call)).toEqual(first);
        expect(JSON.stringify(call)).toBe(before);
      }),
      settings,
    );
  });
});
