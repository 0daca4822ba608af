import type { Unwatch } from "../port";
import { type EditPlan, planEdits } from "../saving/edit-plan";
import { type BegunBlock, meantCells, type StandingCell, type WrittenBlock } from "../saving/written-block";
import { tableGone } from "../table-error";
import type { AppliedEdit, Edit, RowCounts, TableHost } from "../table-host";
import type { CellBlock, NewTable, TableContent, TableInfo, WorkbookChange } from "../table-port";
import { editTable } from "./edit-table";
import { blockCells, foundBefore, removalMaking } from "./blocks";
import { blockMaking, tableMaking } from "./make";
import { type FileHostOptions, OpenFile } from "./open-file";
import type { FileStore } from "./store";

/** The tables of a workbook file. A save replaces the file whole, and only if nobody else has replaced it meanwhile. */
export class FileHost implements TableHost {
  private readonly file: OpenFile;

  constructor(store: FileStore, options: FileHostOptions) {
    this.file = new OpenFile(store, options);
  }

  async listTables(): Promise<readonly TableInfo[]> {
    const { book } = await this.file.load();
    return book.tables.map(({ info }) => info);
  }

  async readTable(name: string): Promise<TableContent> {
    const { book } = await this.file.load();
    const table = book.tables.find(({ info }) => info.name === name);
    if (table === undefined) throw tableGone(name);
    return table.content;
  }

  async applyEdits(edits: readonly Edit[], begin: (rowCounts: RowCounts) => void): Promise<readonly AppliedEdit[]> {
    let plan: EditPlan | undefined;
    await this.file.change((book) => {
      const { tables } = book;
      const planned = planEdits(edits, tables);
      plan = planned;
      return {
        file: book.file,
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
      };
    });
    return plan!.applied();
  }

  async createTable(table: NewTable): Promise<void> {
    await this.file.change((book) => tableMaking(book, table, this.file.options.ids));
  }

  async writeBlock(block: CellBlock, begin: (begun: BegunBlock) => void): Promise<WrittenBlock> {
    const { sheet, address, charts = [] } = block;
    const chartsLeftOut = charts.map(({ title }) => title);
    let begun: BegunBlock = { madeSheet: false, charts: [], chartsLeftOut };
    await this.file.change((book) => {
      const madeSheet = !book.model.sheets.some(({ name }) => name === sheet);
      const before = foundBefore(book, block);
      begun = { ...begun, ...before, madeSheet };
      const making = blockMaking(book, block, before.widened);
      return {
        ...making,
        edit: (edited) => {
          const marks = making.edit(edited);
          begin(begun);
          return marks;
        },
      };
    });
    // The file spells some formulas otherwise than they were handed over.
    const cells = (await this.readBlock(block).catch(() => undefined)) ?? meantCells(block);
    return { sheet, address, cells, ...begun };
  }

  async readBlock(block: CellBlock): Promise<readonly (readonly StandingCell[])[] | undefined> {
    return blockCells((await this.file.load()).book, block);
  }

  async removeBlock(block: WrittenBlock): Promise<void> {
    await this.file.change((now) => removalMaking(now, block));
  }

  watchChanges(listener: (change: WorkbookChange) => void): Unwatch {
    return this.file.watchChanges(listener);
  }
}
