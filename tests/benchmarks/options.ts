import { cpus } from "node:os";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import type { Limits } from "./contender-process";

export const SECTIONS = ["long", "scalar", "memory", "script"] as const;
export type Section = (typeof SECTIONS)[number];

export interface BenchOptions {
  readonly sizes: readonly number[];
  readonly rounds: number;
  readonly limits: Limits;
  readonly sections: readonly Section[];
  /** Functions that are measured on long columns; all where empty. */
  readonly functions: readonly string[];
  /** Path of the results without .md and .json. */
  readonly out: string;
}

export const USAGE = `npm run bench -- [--sizes 10000,100000,1000000] [--rounds 7] [--seconds 120] [--gigabytes 8]
  --sizes      rows of the long columns
  --rounds     samples of each, of which the median counts
  --seconds    the longest that one computation of a contender may take
  --gigabytes  the most memory that a contender may take
  --sections   ${SECTIONS.join(",")}: what is measured
  --functions  such as LESION.TABLE,CELL.HERDLOSS: the functions measured on long columns
  --out        path of the results without their endings`;

export function benchOptions(args: readonly string[]): BenchOptions {
  const { values } = parseArgs({
    args: [...args],
    options: {
      sizes: { type: "string", default: "10000,100000,1000000" },
      rounds: { type: "string", default: "7" },
      seconds: { type: "string", default: "120" },
      gigabytes: { type: "string", default: "8" },
      sections: { type: "string", default: SECTIONS.join(",") },
      functions: { type: "string", default: "" },
      out: { type: "string", default: resolve(__dirname, "results") },
    },
  });
  const runSeconds = numberOf("seconds", values.seconds);
  return {
    sizes: values.sizes.split(",").map((size) => numberOf("sizes", size)),
    rounds: numberOf("rounds", values.rounds),
    // Opening reads the rows and computes them once, twice where a base is measured.
    limits: { runSeconds, openSeconds: 3 * runSeconds, gigabytes: numberOf("gigabytes", values.gigabytes) },
    sections: SECTIONS.filter((section) => values.sections.split(",").includes(section)),
    functions: values.functions === "" ? [] : values.functions.split(","),
    out: resolve(process.env["INIT_CWD"] ?? process.cwd(), values.out),
  };
}

function numberOf(name: string, text: string): number {
  const number = Number(text);
  if (Number.isInteger(number) && number > 0) return number;
  throw new Error(`--${name} must be a whole number above 0; got ${text}`);
}

/** What the figures depend on. */
export interface Machine {
  readonly node: string;
  readonly system: string;
  readonly processors: string;
}

export function machine(): Machine {
  const all = cpus();
  return {
    node: process.version,
    system: `${process.platform} ${process.arch}`,
    processors: `${all.length} × ${all[0]?.model.trim() ?? "unknown"}`,
  };
}
