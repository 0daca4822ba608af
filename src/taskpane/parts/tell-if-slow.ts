/** What ends within this time is not told of; a user who waits longer wants to know for what. */
const SLOW_MS = 1000;

/**
 * Tells what is being done once it has taken long, and "" as soon as it is over. `undefined` stands for nothing to
 * wait for. What follows without a pause is told at once where the work before it was told of already.
 */
export function tellIfSlow(tell: (text: string) => void): (doing: string | undefined) => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let now: string | undefined;
  let told = false;
  return (doing) => {
    if (doing === now) return;
    const waiting = now !== undefined;
    now = doing;
    if (told) tell(doing ?? "");
    if (doing === undefined) {
      clearTimeout(timer);
      told = false;
    } else if (!waiting) {
      timer = setTimeout(() => {
        told = true;
        tell(now ?? "");
      }, SLOW_MS);
    }
  };
}
