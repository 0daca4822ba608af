import { costOfCalls } from "../cost";
import type { Figures } from "../sheet";
import type { Contender } from "./contender";

/** Long enough that what the memory of one call costs the next is in every sample, and not in some of them. */
const SHORTEST_MS = 600;
/** How long the columns are, and how many rows there are of all herds together. */
export interface RowsAsked {
  readonly rows: number;
  readonly rowsTogether: number;
}

/**
 * A contender that is a plain call in its own process. It works through `rowsTogether` rows at every size, many small
 * herds in turns or one large: as many cells for caches to hold and for the collector of garbage to look at, so that a
 * small herd has no advantage in having been seen a moment ago.
 */
export function inProcess<T>(
  { rows, rowsTogether }: RowsAsked,
  prepare: (herd: number) => () => T,
  figures: (value: T) => Figures | undefined,
): Contender {
  const runs = Array.from({ length: Math.ceil(rowsTogether / rows) }, (_, herd) => prepare(herd));
  let next = 0;
  return {
    shortestMs: SHORTEST_MS,
    measure: (times) => Promise.resolve(costOfCalls(() => runs[next++ % runs.length]!(), times)),
    figures: () => figures(runs[0]!()),
    close: () => Promise.resolve(),
  };
}
