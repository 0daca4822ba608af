import { type CellMark, markCells } from "../../xlsx/edit/mark-cells";
import { calculateOnLoad } from "../../xlsx/edit/calculate-on-load";
import { WorkbookFileError } from "../../xlsx/file-error";
import type { WorkbookModel } from "../../xlsx/model";
import { type Protection, readProtection } from "../../xlsx/protection";
import { readWorkbook } from "../../xlsx/read";
import { saveEdits } from "../../xlsx/save-edits";
import type { Unwatch } from "../port";
import { type EditPlan, planEdits } from "../saving/edit-plan";
import { hostFailed, hostUncertain, TableError, tableGone, workbookClosed } from "../table-error";
import type { AppliedEdit, Edit, RowCounts, TableHost } from "../table-host";
import type { CellBlock, NewTable, TableContent, TableInfo, WorkbookChange } from "../table-port";
import { editTable } from "./edit-table";
import { FileBook } from "./file-book";
import { blockMaking, type Making, tableMaking } from "./make";
import { FileChanged, FileGone, FileRefused, type FileStore } from "./store";

/** How often a save is tried on what someone else has just put in the file's place. */
const TRIES = 8;

export interface FileHostOptions {
  /** Ids of the worksheet functions, by which their stored names are told apart. */
  readonly ids: readonly string[];
  /** Computes the formulas of a file anew. Without it Excel does so when it opens the file. */
  readonly recompute?: (bytes: Uint8Array) => Promise<Uint8Array>;
}

/** The tables of a workbook file. A save replaces the file whole, and only if nobody else has replaced it meanwhile. */
export class FileHost implements TableHost {
  private readonly ownVersions = new Set<string>();
  private writing: Promise<unknown> = Promise.resolve();
  /** What was read last: reading a large file anew takes seconds. */
  private known: { readonly version: string; readonly parsed: ParsedFile } | undefined;

  constructor(
    private readonly store: FileStore,
    private readonly options: FileHostOptions,
  ) {}

  async listTables(): Promise<readonly TableInfo[]> {
    const { book } = await this.load();
    return book.tables.map(({ info }) => info);
  }

  async readTable(name: string): Promise<TableContent> {
    const { book } = await this.load();
    const table = book.tables.find(({ info }) => info.name === name);
    if (table === undefined) throw tableGone(name);
    return table.content;
  }

  async applyEdits(edits: readonly Edit[], begin: (rowCounts: RowCounts) => void): Promise<readonly AppliedEdit[]> {
    let plan: EditPlan | undefined;
    await this.change((book) => {
      const { tables } = book;
      const planned = planEdits(edits, tables);
      plan = planned;
      return {
        bytes: book.bytes,
        edit: () => {
          begin(Object.fromEntries(planned.tables.map(({ info }) => [info.name, info.rowCount])));
          return planned.tables.flatMap((part) =>
            editTable(
              book,
              tables.find(({ info }) => info.name === part.info.name)!,
              part,
            ),
          );
        },
        finish: (bytes) => bytes,
      };
    });
    return plan!.applied();
  }

  async createTable(table: NewTable): Promise<void> {
    await this.change((book) => tableMaking(book, table, this.options.ids));
  }

  async writeBlock(block: CellBlock): Promise<void> {
    await this.change((book) => blockMaking(book, block));
  }

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
  private async change(makingOf: (book: FileBook) => Making): Promise<void> {
    for (let left = TRIES; ; left--) {
      const { book, version } = await this.load();
      const making = makingOf(book);
      const changed = await this.changed(book, making);
      if (await this.put(changed, version)) return;
      if (left === 1) throw new TableError("changed", "Others keep changing the file: nothing was saved. Try again.");
    }
  }

  private async changed(start: FileBook, { bytes, edit, finish }: Making): Promise<Uint8Array> {
    try {
      const book = bytes === start.bytes ? start : bookOf(this.parse(bytes));
      const marks: readonly CellMark[] = edit(book);
      const { ids, recompute } = this.options;
      const marked = markCells(book.bytes, marks);
      const ready = recompute === undefined ? calculateOnLoad(marked) : marked;
      const saved = finish(saveEdits(ready, book.model, ids, book.editedSheets));
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

  private async load(): Promise<{ readonly book: FileBook; readonly version: string }> {
    try {
      const { bytes, version } = await this.store.read();
      if (this.known?.version !== version) this.known = { version, parsed: this.parse(bytes) };
      return { book: bookOf(this.known.parsed), version };
    } catch (error) {
      if (error instanceof FileGone) throw workbookClosed(error);
      if (error instanceof WorkbookFileError)
        throw new TableError("failed", `The file cannot be read: ${error.message}.`);
      throw hostFailed(error);
    }
  }

  private parse(bytes: Uint8Array): ParsedFile {
    return { bytes, model: readWorkbook(bytes, this.options.ids), protection: readProtection(bytes) };
  }
}

interface ParsedFile {
  readonly bytes: Uint8Array;
  readonly model: WorkbookModel;
  readonly protection: Protection;
}

function bookOf({ bytes, model, protection }: ParsedFile): FileBook {
  return new FileBook(bytes, model, protection);
}
