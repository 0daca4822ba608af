import { basename } from "node:path";
import { recalculate } from "../engine/headless";
import { registry } from "../functions/registry";
import { WorkbookFileError } from "../xlsx/file-error";
import { readWorkbook } from "../xlsx/read";
import { saveValues } from "../xlsx/save";
import { readCommandLine, type RecalcOptions, UsageError } from "./recalc/command-line";
import { FileError, isOpenElsewhere, isSameFile, readWholeFile, writeWholeFile } from "./recalc/files";
import { summary, valuesAsJson } from "./recalc/report";

/**
 * `npm run recalc` computes a workbook anew without a spreadsheet program, says what it computed and what went wrong,
 * and writes the values or the workbook with them.
 */
async function recalc(options: RecalcOptions): Promise<void> {
  const { workbook: path, json, save } = options;
  refuseMixedUpFiles(options);
  const bytes = await readWholeFile(path);
  const workbook = await computed(path, bytes);
  if (json !== undefined) await writeWholeFile(json, `${JSON.stringify(valuesAsJson(workbook), null, 1)}\n`);
  if (save !== undefined) await writeWholeFile(save, saveValues(bytes, workbook.sheets));
  console.log(summary(basename(path), workbook));
}

async function computed(path: string, bytes: Uint8Array): ReturnType<typeof recalculate> {
  try {
    const ids = registry.map(({ id }) => id);
    return await recalculate(readWorkbook(bytes, ids));
  } catch (error) {
    if (error instanceof WorkbookFileError) throw new FileError(`${path}: ${error.message}`);
    throw error;
  }
}

/** The workbook is written over only where that was asked for, and while nobody else has it open. */
function refuseMixedUpFiles({ workbook, json, save, replace }: RecalcOptions): void {
  if (json !== undefined && (isSameFile(json, workbook) || (save !== undefined && isSameFile(json, save)))) {
    throw new UsageError("--json must be a file of its own");
  }
  if (save === undefined || !isSameFile(save, workbook)) return;
  if (!replace) throw new UsageError("--save names the workbook itself: add --replace to write over it");
  if (isOpenElsewhere(workbook)) {
    throw new FileError(`${workbook}: a spreadsheet program has it open: close it there before it is written over`);
  }
}

/** npm runs scripts in the project's folder and keeps the one in which they were called here. */
const typedIn = process.env["INIT_CWD"] ?? process.cwd();

async function main(): Promise<void> {
  try {
    await recalc(readCommandLine(process.argv.slice(2), typedIn));
  } catch (error) {
    const { message, stack } = error as Error;
    const isExpected = error instanceof UsageError || error instanceof FileError;
    console.error(`recalc: ${isExpected ? message : `failed unexpectedly: ${stack ?? message}`}`);
    process.exitCode = 1;
  }
}

void main();
