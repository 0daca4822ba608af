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

/** One herd: hands its columns over and gives the call that works on them. */
export type HandOver<T> = () => () => T;

/**
 * A contender that is a plain call in its own process. It works through `rowsTogether` rows at every size, many small
 * herds in turns or one large: as many cells for caches to hold and for the collector of garbage to look at, so that a
 * small herd has no advantage in having been seen a moment ago. Every sample is handed columns of its own, as a host
 * makes them anew: over columns that never change V8 takes the process for one at rest and collects garbage at every
 * turn. Making them is not part of the cost.
 */
export function inProcess<T>(
  { rows, rowsTogether }: RowsAsked,
  prepare: (herd: number) => HandOver<T>,
  figures: (value: T) => Figures | undefined,
): Contender {
  const herds = Array.from({ length: Math.ceil(rowsTogether / rows) }, (_, herd) => prepare(herd));
  return {
    shortestMs: SHORTEST_MS,
    measure: (times) => {
      const calls = herds.map((handOver) => handOver());
      let next = 0;
      return Promise.resolve(costOfCalls(() => calls[next++ % calls.length]!(), times));
    },
    figures: () => figures(herds[0]!()()),
    close: () => Promise.resolve(),
  };
}

/** The same arguments in rows of their own. */
export function handedOver(args: readonly unknown[]): readonly unknown[] {
  return args.map((argument) =>
    Array.isArray(argument) ? (argument as readonly (readonly unknown[])[]).map(([cell]) => [cell]) : argument,
  );
}
