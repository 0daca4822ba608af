/** What something took: time on the clock, and time that the processors worked for it, helper threads included. */
export interface Cost {
  readonly wallMs: number;
  readonly cpuMs: number;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

export function medianCost(costs: readonly Cost[]): Cost {
  return { wallMs: median(costs.map(({ wallMs }) => wallMs)), cpuMs: median(costs.map(({ cpuMs }) => cpuMs)) };
}

/** Runs something so many times in a row and gives the cost of one. */
export async function costOf(run: () => unknown, times: number): Promise<Cost> {
  const spent = stopwatch();
  for (let time = 0; time < times; time++) await run();
  return share(spent(), times);
}

/** As `costOf`, for what is over at once: nothing waits in between. */
export function costOfCalls(run: () => unknown, times: number): Cost {
  const spent = stopwatch();
  for (let time = 0; time < times; time++) run();
  return share(spent(), times);
}

function stopwatch(): () => Cost {
  const cpu = process.cpuUsage();
  const start = performance.now();
  return () => {
    const wallMs = performance.now() - start;
    const { user, system } = process.cpuUsage(cpu);
    return { wallMs, cpuMs: (user + system) / 1000 };
  };
}

function share({ wallMs, cpuMs }: Cost, of: number): Cost {
  return { wallMs: wallMs / of, cpuMs: cpuMs / of };
}
