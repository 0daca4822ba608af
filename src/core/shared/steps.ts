/** Work that can pause between its steps, such as to let a page answer a key, and what it comes to. */
export type InSteps<T> = Generator<void, T, void>;

/** Rows of a table that are looked at in a step: some milliseconds of work. */
export const ROWS_A_STEP = 5_000;

/** The work without a pause: where nobody waits at the keyboard. */
export function atOnce<T>(work: InSteps<T>): T {
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
  }
}
