import { createHash } from "node:crypto";
import { existsSync, watch } from "node:fs";
import { open, readFile, rename, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { FileChanged, FileGone, FileRefused, type FileStore } from "../workbook/file/store";

/** A workbook file on disk. */
export function nodeFileStore(path: string): FileStore {
  const read = async (): Promise<{ readonly bytes: Uint8Array; readonly version: string }> => {
    try {
      const bytes = await readFile(path);
      return { bytes, version: versionOf(bytes) };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ENOENT") throw new FileGone(`there is no file ${path} any more`);
      throw error;
    }
  };
  return {
    read,
    async replace(bytes, version) {
      refuseOpenInExcel(path);
      const next = join(dirname(path), `.${basename(path)}.${process.pid}.next`);
      try {
        await writeWhole(next, bytes);
        if ((await read()).version !== version) throw new FileChanged(`someone else changed ${path}`);
        await rename(next, path);
      } catch (error) {
        const told = error instanceof FileChanged || error instanceof FileGone;
        throw told ? error : new FileRefused(`the file cannot be written: ${(error as Error).message}`);
      } finally {
        await rm(next, { force: true });
      }
      return versionOf(bytes);
    },
    watch(listener) {
      let last: string | undefined;
      // The folder is watched: a file that is replaced whole is another file.
      const watcher = watch(dirname(path), (_, name) => {
        if (name !== null && name !== basename(path)) return;
        read().then(
          ({ version }) => {
            if (version !== last) listener(version);
            last = version;
          },
          // Gone, or half written by someone else: the next event tells.
          () => undefined,
        );
      });
      return () => watcher.close();
    },
  };
}

function versionOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** Excel keeps a file of that name beside a workbook as long as it has it open. */
function refuseOpenInExcel(path: string): void {
  if (existsSync(join(dirname(path), `~$${basename(path)}`))) {
    throw new FileRefused("the workbook is open in Excel: close it there first");
  }
}

/** Ends when the bytes are on the disk, so that a power cut leaves the old file or the new one. */
async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, "w");
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}
