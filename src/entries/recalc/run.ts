import { basename } from "node:path";
import { recalculate } from "../../engine/headless";
import type { ComputedWorkbook } from "../../engine/results";
import { registry } from "../../functions/registry";
import { WorkbookFileError } from "../../xlsx/file-error";
import { readWorkbook } from "../../xlsx/read";
import { saveValues } from "../../xlsx/save";
import { checkFile, type FileCheck } from "./check-files";
import { details, exitCode, progressLine, summaryTable } from "./check-report";
import { type CheckOptions, HELP, readCommandLine, type RecalcOptions, UsageError } from "./command-line";
import { FileError, isOpenElsewhere, isSameFile, readWholeFile, writeWholeFile } from "./files";
import { summary, valuesAsJson } from "./report";

/** Where the command says what it did, and what kept it from doing it. */
export interface Terminal {
  out(text: string): void;
  error(line: string): void;
}

/** Runs the command. Gives the exit code: 0, 1 where nothing came of it, 2 where a check found something doubtful. */
export async function runRecalc(argv: readonly string[], folder: string, terminal: Terminal): Promise<number> {
  try {
    const options = readCommandLine(argv, folder);
    if ("check" in options) return await checkAll(options, terminal);
    terminal.out("help" in options ? HELP : await recalc(options));
    return 0;
  } catch (error) {
    const { message, stack } = error as Error;
    const isExpected = error instanceof UsageError || error instanceof FileError;
    terminal.error(`recalc: ${isExpected ? message : `failed unexpectedly: ${stack ?? message}`}`);
    return 1;
  }
}

/** Checks the workbooks one after the other; one that cannot be read does not stop the rest. */
async function checkAll({ check, asOf }: CheckOptions, terminal: Terminal): Promise<number> {
  const files: FileCheck[] = [];
  for (const path of check) {
    const file = await checkFile(path, asOf);
    files.push(file);
    terminal.out(progressLine(file, files.length, check.length));
    if (!("failure" in file)) for (const line of details(file.check)) terminal.out(line);
  }
  terminal.out(`\n${summaryTable(files)}`);
  return exitCode(files);
}

async function recalc(options: RecalcOptions): Promise<string> {
  const { workbook: path, json, save } = options;
  refuseMixedUpFiles(options);
  const bytes = await readWholeFile(path);
  const workbook = await computed(path, bytes);
  if (json !== undefined) await writeWholeFile(json, `${JSON.stringify(valuesAsJson(workbook), null, 1)}\n`);
  if (save !== undefined) await writeWholeFile(save, saveValues(bytes, workbook.sheets));
  return summary(basename(path), workbook);
}

async function computed(path: string, bytes: Uint8Array): Promise<ComputedWorkbook> {
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
