import { existsSync, realpathSync, statSync } from "node:fs";
import { open, readFile, rename, stat, unlink } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** A file that cannot be read or written. Its message is one line and names the file. */
export class FileError extends Error {
  override readonly name = "FileError";
}

const READ_FAILURES: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  ENOTDIR: "there is no such file",
  EISDIR: "it is a folder, not a workbook",
  EACCES: "it may not be read",
  EPERM: "it may not be read",
  EBUSY: "another program has locked it: close it there first",
};

const WRITE_FAILURES: Readonly<Record<string, string>> = {
  ENOENT: "its folder does not exist",
  ENOTDIR: "its folder does not exist",
  EISDIR: "it is a folder",
  EACCES: "it may not be written",
  EPERM: "it may not be written",
  EROFS: "it may not be written",
  EBUSY: "another program has locked it: close it there first",
  ENOSPC: "the disk is full",
};

function failure(path: string, error: unknown, reasons: Readonly<Record<string, string>>): FileError {
  const { code = "", message } = error as NodeJS.ErrnoException;
  return new FileError(`${path}: ${reasons[code] ?? message}`);
}

export async function readWholeFile(path: string): Promise<Uint8Array> {
  try {
    return await readFile(path);
  } catch (error) {
    throw failure(path, error, READ_FAILURES);
  }
}

/**
 * Writes a file whole or not at all: into a file beside it, which then takes its place. What stood there is untouched
 * until then.
 */
export async function writeWholeFile(path: string, content: Uint8Array | string): Promise<void> {
  // A link stays a link: the file that it points to is replaced.
  const target = existsSync(path) ? realpathSync(path) : path;
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  try {
    if (existsSync(target) && statSync(target).isDirectory()) throw Object.assign(new Error(), { code: "EISDIR" });
    const file = await open(beside, "wx", await modeOf(target));
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, target);
  } catch (error) {
    await unlink(beside).catch(() => undefined);
    throw failure(path, error, WRITE_FAILURES);
  }
}

/** Who may read and write a new file, where none stands there whose rights it takes over. */
const NEW_FILE_MODE = 0o666;

async function modeOf(path: string): Promise<number> {
  return existsSync(path) ? (await stat(path)).mode : NEW_FILE_MODE;
}

/** Whether both paths lead to the same file, over links too. */
export function isSameFile(one: string, other: string): boolean {
  if (one === other) return true;
  if (!existsSync(one) || !existsSync(other)) return false;
  const [first, second] = [statSync(one), statSync(other)];
  return first.ino === second.ino && first.dev === second.dev;
}

/** Whether a spreadsheet program has the workbook open: it leaves a file of this name beside it. */
export function isOpenElsewhere(path: string): boolean {
  const name = basename(path);
  return [`~$${name}`, `.~lock.${name}#`].some((lock) => existsSync(join(dirname(path), lock)));
}
