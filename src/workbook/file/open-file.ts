import { changed, packed } from "../../xlsx/change-package";
import { calculateOnLoad } from "../../xlsx/edit/calculate-on-load";
import { markCells } from "../../xlsx/edit/mark-cells";
import { WorkbookFileError } from "../../xlsx/file-error";
import type { WorkbookModel } from "../../xlsx/model";
import { openPackage, type WorkbookPackage } from "../../xlsx/package";
import { type Protection, readProtection } from "../../xlsx/protection";
import { readPackage } from "../../xlsx/read";
import { putEdits } from "../../xlsx/save-edits";
import type { Unwatch } from "../port";
import { hostFailed, hostUncertain, notRead, TableError, workbookClosed } from "../table-error";
import type { WorkbookChange } from "../table-port";
import { FileBook } from "./file-book";
import type { Making } from "./make";
import { FileChanged, FileGone, FileRefused, type FileStore } from "./store";

/** How often a save is tried on what someone else has just put in the file's place. */
const TRIES = 8;

export interface FileHostOptions {
  /** Ids of the worksheet functions, by which their stored names are told apart. */
  readonly ids: readonly string[];
  /** Computes the formulas of a file anew. Without it Excel does so when it opens the file. */
  readonly recompute?: (bytes: Uint8Array) => Promise<Uint8Array>;
}

/** A workbook file. A change replaces it whole, and only if nobody else has replaced it meanwhile. */
export class OpenFile {
  private readonly ownVersions = new Set<string>();
  private writing: Promise<unknown> = Promise.resolve();
  /** What was read last: reading a large file anew takes seconds. */
  private known: { readonly version: string; readonly parsed: ParsedFile } | undefined;

  constructor(
    private readonly store: FileStore,
    readonly options: FileHostOptions,
  ) {}

  watchChanges(listener: (change: WorkbookChange) => void): Unwatch {
    let stopped = false;
    const unwatch = this.store.watch((version) => {
      void this.writing.then(() => {
        if (!stopped) listener({ source: this.ownVersions.has(version) ? "local" : "remote" });
      });
    });
    return () => {
      stopped = true;
      unwatch();
    };
  }

  /** Reads the file, changes it, and puts it back; begins again where someone else was faster. */
  async change(makingOf: (book: FileBook) => Making): Promise<void> {
    for (let left = TRIES; ; left--) {
      const { book, version } = await this.load();
      const making = makingOf(book);
      const bytes = await this.made(book, making);
      if (await this.put(bytes, version)) return;
      if (left === 1) throw new TableError("changed", "Others keep changing the file: nothing was saved. Try again.");
    }
  }

  private async made(start: FileBook, { file, book: own, edit, finish }: Making): Promise<Uint8Array> {
    try {
      const book = own ?? (file === start.file ? start : bookOf(this.parse(file)));
      const marks = edit(book);
      const { ids, recompute } = this.options;
      const made = changed(book.file, (changing) => {
        markCells(changing, marks);
        if (recompute === undefined) calculateOnLoad(changing);
        putEdits(changing, book.model, ids, book.editedSheets);
        finish?.(changing);
      });
      const saved = packed(made);
      return (await recompute?.(saved)) ?? saved;
    } catch (error) {
      throw error instanceof TableError ? error : hostFailed(error);
    }
  }

  /** Whether the bytes are in their place; false where someone else's are. */
  private async put(bytes: Uint8Array, version: string): Promise<boolean> {
    const replacing = this.store.replace(bytes, version).then((own) => this.ownVersions.add(own));
    this.writing = replacing.catch(() => undefined);
    try {
      await replacing;
      return true;
    } catch (error) {
      if (error instanceof FileChanged) return false;
      if (error instanceof FileGone) throw workbookClosed(error);
      throw error instanceof FileRefused ? hostFailed(error) : hostUncertain(error);
    }
  }

  async load(): Promise<{ readonly book: FileBook; readonly version: string }> {
    try {
      const { bytes, version } = await this.store.read();
      if (this.known?.version !== version) this.known = { version, parsed: this.parse(openPackage(bytes)) };
      return { book: bookOf(this.known.parsed), version };
    } catch (error) {
      if (error instanceof FileGone) throw workbookClosed(error);
      if (error instanceof WorkbookFileError)
        throw new TableError("failed", `The file cannot be read: ${error.message}.`);
      throw notRead(error);
    }
  }

  private parse(file: WorkbookPackage): ParsedFile {
    return { file, model: readPackage(file, this.options.ids), protection: readProtection(file) };
  }
}

interface ParsedFile {
  readonly file: WorkbookPackage;
  readonly model: WorkbookModel;
  readonly protection: Protection;
}

function bookOf({ file, model, protection }: ParsedFile): FileBook {
  return new FileBook(file, model, protection);
}
