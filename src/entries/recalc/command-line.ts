import { resolve } from "node:path";
import { parseArgs } from "node:util";

export const USAGE = "npm run recalc -- <workbook.xlsx> [--json <file>] [--save <file.xlsx>] [--replace]";

export interface RecalcOptions {
  readonly workbook: string;
  /** Where to write every value as JSON. */
  readonly json?: string;
  /** Where to write the workbook with fresh values. */
  readonly save?: string;
  /** The workbook itself may be written over. */
  readonly replace: boolean;
}

/** A mistake on the command line. */
export class UsageError extends Error {
  override readonly name = "UsageError";
}

/** Paths are taken from the folder in which the command was typed. */
export function readCommandLine(argv: readonly string[], folder: string): RecalcOptions {
  const { values, positionals } = parse(argv);
  const [workbook, ...more] = positionals;
  if (workbook === undefined) throw new UsageError(`no workbook named: ${USAGE}`);
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

interface Parsed {
  readonly values: { readonly json?: string; readonly save?: string; readonly replace?: boolean };
  readonly positionals: readonly string[];
}

function parse(argv: readonly string[]): Parsed {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: { json: { type: "string" }, save: { type: "string" }, replace: { type: "boolean" } },
    });
  } catch (error) {
    throw new UsageError(`${(error as Error).message.split("\n")[0]}: ${USAGE}`);
  }
}
