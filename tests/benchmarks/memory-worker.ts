import { readFileSync, writeFileSync } from "node:fs";
import { run, taskOf } from "./tasks";

/** Memory of one call on very many rows, in a process of its own, megabytes (10^6 bytes). */
export interface CallMemory {
  readonly id: string;
  readonly rows: number;
  /** The process before the arguments are there: Node.js and the functions. */
  readonly beforeMb: number;
  /** What the arguments take as the host hands them over. */
  readonly argumentsMb: number;
  /** The most that the call takes at its peak on top of that, its result included. */
  readonly callMb: number;
  /** The process at the peak of the call. */
  readonly peakMb: number;
}

const MEGABYTE = 1e6;

/**
 * Every text cell a string of its own, as when a range comes out of another program. Equal cells made by one program
 * would share one.
 */
function ownCells(args: readonly unknown[]): unknown[] {
  return args.map((argument) => {
    if (!Array.isArray(argument)) return argument;
    const rows = argument as (string | number | null)[][];
    for (const cells of rows) if (typeof cells[0] === "string") cells[0] = Buffer.from(cells[0]).toString("latin1");
    return rows;
  });
}

function residentMb(field: "VmRSS" | "VmHWM"): number {
  const [, kilobytes] = new RegExp(`^${field}:\\s+(\\d+) kB$`, "m").exec(readFileSync("/proc/self/status", "utf8"))!;
  return (Number(kilobytes) * 1024) / MEGABYTE;
}

function collectGarbage(): void {
  for (let time = 0; time < 3; time++) (globalThis as unknown as { gc(): void }).gc();
}

function measure(id: string, rows: number): CallMemory {
  const task = taskOf(id);
  run(task, task.arguments(100, 0));
  collectGarbage();
  const beforeMb = residentMb("VmRSS");
  const args = ownCells(task.arguments(rows, 0));
  collectGarbage();
  const withArgumentsMb = residentMb("VmRSS");
  // The call may use what the heap holds free: that is memory of the call as well.
  const { heapTotal, heapUsed } = process.memoryUsage();
  const freeMb = (heapTotal - heapUsed) / MEGABYTE;
  // Linux starts the peak anew (man 5 proc, clear_refs).
  writeFileSync("/proc/self/clear_refs", "5");
  const result = run(task, args);
  const peakMb = residentMb("VmHWM");
  if (args.length === 0 || result === undefined) throw new Error("both must live until here");
  return {
    id,
    rows,
    beforeMb,
    argumentsMb: withArgumentsMb - beforeMb,
    callMb: peakMb - withArgumentsMb + freeMb,
    peakMb,
  };
}

process.send!(measure(process.argv[2]!, Number(process.argv[3])));
