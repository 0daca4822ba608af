import {
  initialLiveState,
  type LiveEvent,
  type LiveState,
  nextLiveState,
} from "../../../../src/taskpane/parts/live-blocks/state";
import { inSlices } from "../../../../src/taskpane/parts/in-slices";
import { blockOf } from "../../../../src/blocks/gallery";

const herd = { tables: new Map(), asOf: 45_371, scale: "0-3" } as const;
const block = { block: blockOf("yearly-bill"), inputs: [], parts: [] };

function after(...events: readonly LiveEvent[]): LiveState {
  return events.reduce(nextLiveState, initialLiveState());
}

test("a workbook that was read is computed, one that changed is read again", () => {
  const read = after({ type: "read", wanted: 1, herd });
  expect(read).toMatchObject({ work: 1, working: true });
  expect(after({ type: "read", wanted: 1, herd }, { type: "workbook changed" }).wanted).toBe(2);
});

test("what comes too late changes nothing", () => {
  const state = after({ type: "read", wanted: 1, herd }, { type: "typed", field: "days", text: "30" });
  expect(state.work).toBe(2);
  expect(nextLiveState(state, { type: "computed", work: 1, block })).toBe(state);
  expect(nextLiveState(state, { type: "all computed", work: 1 })).toBe(state);
  expect(nextLiveState(state, { type: "not computed", work: 1, id: "yearly-bill" })).toBe(state);
  expect(nextLiveState(state, { type: "read", wanted: 0, herd })).toBe(state);
  expect(nextLiveState(state, { type: "read failed", wanted: 0, message: "gone" })).toBe(state);
});

test("figures stay while new ones are on their way, and go where they cannot be computed", () => {
  const computed = after({ type: "read", wanted: 1, herd }, { type: "computed", work: 1, block });
  const typed = nextLiveState(computed, { type: "typed", field: "days", text: "400" });
  expect(typed.computed.has("yearly-bill")).toBe(true);
  expect(nextLiveState(typed, { type: "not computed", work: 2, id: "yearly-bill" }).computed.size).toBe(0);
});

test("work that is no longer wanted ends without its rest", async () => {
  const done: number[] = [];
  function* work(): Generator<void, string> {
    for (let step = 0; step < 5; step++) {
      done.push(step);
      yield;
    }
    return "all";
  }
  expect(await inSlices(work(), () => done.length < 3)).toBeUndefined();
  expect(done).toEqual([0, 1, 2]);
  expect(await inSlices(work(), () => true)).toBe("all");
});

test("a workbook that cannot be read again keeps the figures of the time before, and says why", () => {
  const computed = after({ type: "read", wanted: 1, herd }, { type: "computed", work: 1, block });
  const failed = [
    { type: "workbook changed" } as const,
    { type: "read failed", wanted: 2, message: "The list is gone." } as const,
  ].reduce(nextLiveState, computed);
  expect(failed).toMatchObject({ failure: "The list is gone.", reading: { kind: "read", herd } });
  expect(failed.computed.has("yearly-bill")).toBe(true);
  const again = nextLiveState(failed, { type: "workbook changed" });
  expect(again.failure).toBeUndefined();
  expect(nextLiveState(again, { type: "read", wanted: 3, herd }).failure).toBeUndefined();
});

test("a workbook that was never read shows why, and nothing as if it were empty", () => {
  expect(after({ type: "read failed", wanted: 1, message: "Locked." })).toMatchObject({
    failure: "Locked.",
    reading: { kind: "nothing yet" },
  });
});
