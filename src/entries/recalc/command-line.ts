import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { day, type DaySerial } from "../../core/shared/days";

const RECALC = "npm run recalc -- <workbook.xlsx> [--json <file>] [--save <file.xlsx>] [--replace]";
const CHECK = "npm run recalc -- --check <workbook.xlsx> ... [--as-of <yyyy-mm-dd>]";
export const USAGE = `${RECALC}, or ${CHECK}`;

export const HELP = `${RECALC}
${CHECK}

Without --check: computes the workbook anew and says what it computed.
  --json <file>   writes every value as JSON
  --save <file>   writes the workbook with fresh values; --replace lets that be the workbook itself

With --check: lists the doubtful cells of each workbook and changes nothing.
  --as-of <day>   the day on which the workbooks are looked at; the day named AsOf in a workbook, else today
  A workbook that cannot be read is named, and the others are checked all the same.

Exit code: 0 all is well, 1 something went wrong (with --check: a workbook could not be read, or holds no list of a
herd), 2 with --check: all were read and at least one has cells that are wrong or doubtful. Notes alone leave it at 0.`;

export interface RecalcOptions {
  readonly workbook: string;
  /** Where to write every value as JSON. */
  readonly json?: string;
  /** Where to write the workbook with fresh values. */
  readonly save?: string;
  /** The workbook itself may be written over. */
  readonly replace: boolean;
}

export interface CheckOptions {
  readonly check: readonly string[];
  /** The day on which the workbooks are looked at, where it was named. */
  readonly asOf?: DaySerial;
}

export interface HelpOptions {
  readonly help: true;
}

/** A mistake on the command line. */
export class UsageError extends Error {
  override readonly name = "UsageError";
}

/** Paths are taken from the folder in which the command was typed. */
export function readCommandLine(argv: readonly string[], folder: string): RecalcOptions | CheckOptions | HelpOptions {
  const { values, positionals } = parse(argv);
  if (values.help === true) return { help: true };
  const [workbook, ...more] = positionals;
  if (workbook === undefined) throw new UsageError(`no workbook named: ${USAGE}`);
  if (values.check === true) return checkOptions(values, positionals, folder);
  if (values["as-of"] !== undefined) throw new UsageError(`--as-of goes with --check: ${USAGE}`);
  if (more.length > 0) throw new UsageError(`one workbook at a time; got also ${more.join(", ")}: ${USAGE}`);
  for (const name of ["json", "save"] as const) {
    if (values[name]?.trim() === "") throw new UsageError(`--${name} must be the path of a file: ${USAGE}`);
  }
  const { json, save, replace = false } = values;
  return {
    workbook: resolve(folder, workbook),
    replace,
    ...(json === undefined ? {} : { json: resolve(folder, json) }),
    ...(save === undefined ? {} : { save: resolve(folder, save) }),
  };
}

function checkOptions(values: Parsed["values"], files: readonly string[], folder: string): CheckOptions {
  for (const name of ["json", "save", "replace"] as const) {
    if (values[name] !== undefined) throw new UsageError(`--check changes and writes nothing; take away --${name}`);
  }
  const text = values["as-of"];
  const check = files.map((file) => resolve(folder, file));
  return text === undefined ? { check } : { check, asOf: dayOf(text) };
}

function dayOf(text: string): DaySerial {
  try {
    return day(text);
  } catch {
    throw new UsageError(`--as-of must be a day such as 2026-09-01; got "${text}"`);
  }
}

interface Parsed {
  readonly values: {
    readonly json?: string;
    readonly save?: string;
    readonly replace?: boolean;
    readonly check?: boolean;
    readonly "as-of"?: string;
    readonly help?: boolean;
  };
  readonly positionals: readonly string[];
}

function parse(argv: readonly string[]): Parsed {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        json: { type: "string" },
        save: { type: "string" },
        replace: { type: "boolean" },
        check: { type: "boolean" },
        "as-of": { type: "string" },
        help: { type: "boolean" },
      },
    });
  } catch (error) {
    throw new UsageError(`${(error as Error).message.split("\n")[0]}: ${USAGE}`);
  }
}
