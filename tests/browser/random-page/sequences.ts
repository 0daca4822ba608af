import fc from "fast-check";
import { action } from "./actions";
import { Afternoon } from "./afternoon";

declare global {
  interface Window {
    /** Plays so many sequences; "" where all went well, else what failed, after which actions and from which seed. */
    runSequences(count: number, seed: number): Promise<string>;
  }
}

/** Sequences that are played beside each other: each waits for its own pane most of the time. */
const LANES = 4;

export async function runSequences(count: number, seed: number): Promise<string> {
  const lanes = Array.from({ length: LANES }, (_, lane) => play(Math.ceil(count / LANES), seed + lane));
  return (await Promise.all(lanes)).filter((failure) => failure !== "").join("\n");
}

async function play(numRuns: number, seed: number): Promise<string> {
  const frame = document.createElement("iframe");
  document.body.append(frame);
  const property = fc.asyncProperty(fc.array(action, { minLength: 3, maxLength: 15 }), async (actions) => {
    const afternoon = await Afternoon.begin(frame);
    for (const next of actions) await afternoon.do(next);
    await afternoon.end();
  });
  const { failed, counterexample, errorInstance } = await fc.check(property, { numRuns, seed, endOnFailure: true });
  if (!failed) return "";
  const error = errorInstance instanceof Error ? errorInstance.message : String(errorInstance);
  return `seed ${seed}: ${error}\nafter ${JSON.stringify(counterexample?.[0], undefined, 1)}`;
}
