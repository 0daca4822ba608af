import { costOfCalls } from "../cost";
import type { Figures } from "../sheet";
import type { Contender } from "./contender";

/** Long enough that what the memory of one call costs the next is in every sample, and not in some of them. */
const SHORTEST_MS = 600;
/** So many rows together are more than processors learn by heart when they compute them again and again. */
const ROWS_TOGETHER = 100_000;

/** A contender that is a plain call in its own process; of small herds it computes several in turns. */
export function inProcess<T>(
  rows: number,
  prepare: (herd: number) => () => T,
  figures: (value: T) => Figures | undefined,
): Contender {
  const runs = Array.from({ length: Math.ceil(ROWS_TOGETHER / rows) }, (_, herd) => prepare(herd));
  let next = 0;
  return {
    shortestMs: SHORTEST_MS,
    measure: (times) => Promise.resolve(costOfCalls(() => runs[next++ % runs.length]!(), times)),
    figures: () => figures(runs[0]!()),
    close: () => Promise.resolve(),
  };
}
