import type { ContenderName } from "./contenders/contender";
import type { Cost } from "./cost";
import type { Duel } from "./duel";
import type { CallMemory } from "./memory-worker";
import type { Machine } from "./options";
import type { ScalarCalls } from "./scalar-worker";
import { FUNCTIONS_SCRIPT, type LoadedScripts } from "./script-size";

export interface Results {
  readonly machine: Machine;
  readonly sizes: readonly number[];
  readonly rounds: number;
  /** Work waiting for the processors before and after, beside this. */
  readonly loadBefore: number;
  readonly loadAfter: number;
  readonly libreOffice: string;
  readonly duels: readonly Duel[];
  readonly scalar: readonly ScalarCalls[];
  readonly memory: readonly CallMemory[];
  readonly script?: LoadedScripts;
  /** What could not be measured, and why. */
  readonly failures: readonly string[];
}

/** A figure that is to be reached, and what was measured. */
export interface Verdict {
  readonly figure: string;
  readonly target: string;
  readonly measured: string;
  readonly reached: boolean;
}

const FASTER_THAN_FORMULAS = 50;
const FASTER_AT_ROWS = 100_000;
const SLOWEST_TO_LOOP = 3;
const LARGEST_GROWTH = 11;
const LARGEST_SCRIPT_BYTES = 60 * 1024;
const LARGEST_OVERHEAD_MICROSECONDS = 2;
const MOST_MEMORY_MB = 500;

/** How many times as long the other took, by the clock and by the processors. */
export function timesTheFunction({ own, other }: Duel): Cost | undefined {
  if (own === undefined || other === undefined) return undefined;
  return { wallMs: other.median.wallMs / own.median.wallMs, cpuMs: other.median.cpuMs / own.median.cpuMs };
}

/** Growth of the cost for ten times the rows, brought to a tenfold where the sizes lie otherwise. */
export function growth(from: Duel | undefined, to: Duel | undefined): Cost | undefined {
  const [before, after] = [from && costOf(from), to && costOf(to)];
  if (before === undefined || after === undefined || from === undefined || to === undefined) return undefined;
  const tenfolds = Math.log10(to.rows / from.rows);
  return {
    wallMs: (after.wallMs / before.wallMs) ** (1 / tenfolds),
    cpuMs: (after.cpuMs / before.cpuMs) ** (1 / tenfolds),
  };
}

function costOf({ contender, own, other }: Duel): Cost | undefined {
  return (contender === "function" ? own : other)?.median;
}

export function verdicts(results: Results): Verdict[] {
  return [
    ...formulaVerdicts(results),
    ...loopVerdicts(results),
    ...growthVerdicts(results),
    ...(results.script === undefined ? [] : [scriptVerdict(results.script)]),
    ...results.scalar.map(overheadVerdict),
    ...results.memory.map(memoryVerdict),
  ];
}

function formulaVerdicts({ duels }: Results): Verdict[] {
  return duels
    .filter(
      ({ task, contender, rows }) => task === "LESION.TABLE" && rows === FASTER_AT_ROWS && /^formulas/.test(contender),
    )
    .map((duel) => {
      const times = timesTheFunction(duel);
      const least = times === undefined ? NaN : Math.min(times.wallMs, times.cpuMs);
      return {
        figure: `LESION.TABLE over ${thousands(duel.rows)} findings against ${duel.contender}`,
        target: `at least ${FASTER_THAN_FORMULAS} times faster`,
        measured: times === undefined ? (duel.givenUp ?? "") : inWords(times),
        reached:
          times === undefined
            ? duel.givenUp !== undefined && /more than/.test(duel.givenUp)
            : least >= FASTER_THAN_FORMULAS,
      };
    });
}

function loopVerdicts({ duels }: Results): Verdict[] {
  return duels
    .filter(({ task, contender }) => task === "CELL.HERDLOSS" && contender === "bare loop")
    .map((duel) => {
      const times = timesTheFunction(duel);
      const most = times === undefined ? NaN : Math.max(1 / times.wallMs, 1 / times.cpuMs);
      return {
        figure: `CELL.HERDLOSS over ${thousands(duel.rows)} cows against the bare loop`,
        target: `no slower than ${SLOWEST_TO_LOOP} times`,
        measured: `${short(most)} times`,
        reached: most <= SLOWEST_TO_LOOP,
      };
    });
}

function growthVerdicts({ duels, sizes }: Results): Verdict[] {
  const tasks = duels.filter(({ contender }) => contender === "function").map(({ task }) => task);
  return [...new Set(tasks)].flatMap((task) =>
    sizes.slice(1).flatMap((rows, index) => {
      const growthOf = (name: ContenderName): Cost | undefined => {
        const at = (size: number): Duel | undefined =>
          duels.find((duel) => duel.task === task && duel.contender === name && duel.rows === size);
        return growth(at(sizes[index]!), at(rows));
      };
      const [grown, reading] = [growthOf("function"), growthOf("reading the cells")];
      if (grown === undefined) return [];
      return [
        {
          figure: `${task}, growth from ${thousands(sizes[index]!)} to ${thousands(rows)} rows`,
          target: `at most ${LARGEST_GROWTH} times a tenfold`,
          measured: `${inWords(grown)}${reading === undefined ? "" : `; looking at the cells alone ${inWords(reading)}`}`,
          reached: grown.cpuMs <= LARGEST_GROWTH,
        },
      ];
    }),
  );
}

function inWords({ wallMs, cpuMs }: Cost): string {
  return `${short(cpuMs)} times by the processors, ${short(wallMs)} by the clock`;
}

function scriptVerdict({ files }: LoadedScripts): Verdict {
  const { gzipBytes } = files.find(({ name }) => name === FUNCTIONS_SCRIPT)!;
  return {
    figure: "Script of all worksheet functions, gzip",
    target: `under ${LARGEST_SCRIPT_BYTES / 1024} KB`,
    measured: `${short(gzipBytes / 1024)} KB`,
    reached: gzipBytes < LARGEST_SCRIPT_BYTES,
  };
}

function overheadVerdict({ id, overheadMicroseconds: { wallMs, cpuMs } }: ScalarCalls): Verdict {
  return {
    figure: `Evaluator around a call of ${id}`,
    target: `under ${LARGEST_OVERHEAD_MICROSECONDS} microseconds`,
    measured: `${short(wallMs)} by the clock, ${short(cpuMs)} by the processors`,
    reached: Math.max(wallMs, cpuMs) < LARGEST_OVERHEAD_MICROSECONDS,
  };
}

function memoryVerdict({ id, rows, callMb, peakMb }: CallMemory): Verdict {
  return {
    figure: `${id} over ${thousands(rows)} rows, memory of the call`,
    target: `under ${MOST_MEMORY_MB} MB`,
    measured: `${short(callMb)} MB; ${short(peakMb)} MB with Node.js and the arguments`,
    reached: callMb < MOST_MEMORY_MB,
  };
}

export function thousands(number: number): string {
  return number.toLocaleString("en-US");
}

/** Three figures are as many as a measurement bears. */
export function short(number: number): string {
  const rounded = Number(number.toPrecision(3));
  return rounded >= 1000 ? thousands(rounded) : String(rounded);
}
