import type { InSteps } from "../../core/shared/steps";

/**
 * Once so long was worked, the page may answer a key: a picture of the screen lasts as long. The step that ends a slice
 * comes on top, and a typist notices 100 ms.
 */
const SLICE_MS = 16;

/**
 * Runs work that can pause between its steps, and lets the page answer keys and clicks whenever it has worked for a
 * while; also before the first step and behind the last, so that what the caller draws does not come on top. Ends with
 * undefined, without the rest, once the work is no longer wanted.
 */
export async function inSlices<T>(work: InSteps<T>, isWanted: () => boolean): Promise<T | undefined> {
  for (;;) {
    await breath();
    const began = performance.now();
    do {
      if (!isWanted()) return undefined;
      const step = work.next();
      if (step.done === true) {
        await breath();
        return isWanted() ? step.value : undefined;
      }
    } while (performance.now() - began < SLICE_MS);
  }
}

/** A message instead of a timer: timers that follow each other are each put off by 4 ms, which adds up over slices. */
function breath(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}
