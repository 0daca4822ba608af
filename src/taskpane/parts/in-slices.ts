/** So long at most is worked before the page may answer a key: a third of what a typist notices (100 ms). */
const SLICE_MS = 32;

/**
 * Runs work that can pause between its steps, and lets the page answer keys and clicks whenever it has worked for a
 * while. Ends with undefined, without the rest, once the work is no longer wanted.
 */
export async function inSlices<T>(work: Iterator<void, T>, isWanted: () => boolean): Promise<T | undefined> {
  let began = performance.now();
  for (;;) {
    if (!isWanted()) return undefined;
    const step = work.next();
    if (step.done === true) return step.value;
    if (performance.now() - began < SLICE_MS) continue;
    await breath();
    began = performance.now();
  }
}

function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
