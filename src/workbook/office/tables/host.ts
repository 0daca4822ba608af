import type { Unwatch } from "../../port";
import type { BegunBlock, StandingCell, WrittenBlock } from "../../saving/written-block";
import { notRead, tableGone } from "../../table-error";
import type { AppliedEdit, Edit, RowCounts, TableHost } from "../../table-host";
import type { CellBlock, NewTable, TableContent, TableInfo, WorkbookChange } from "../../table-port";
import { applyEdits } from "./apply-edits";
import { describeTables } from "./describe";
import { knownError } from "./errors";
import { readBlock, removeBlock } from "./blocks";
import { createTable } from "./create-table";
import { readRows } from "./read-rows";
import { type RunExcel, runExcel } from "./run";
import { watchChanges } from "./watch";
import { writeBlock } from "./write-block";

/** How often a table is read anew because it grew or shrank while it was read in parts. */
const READINGS = 3;

/** The tables of the workbook open in Excel. */
export class OfficeHost implements TableHost {
  constructor(private readonly run: RunExcel = runExcel) {}

  listTables(): Promise<readonly TableInfo[]> {
    return this.reading(async (context) => (await describeTables(context)).map(({ info }) => info));
  }

  readTable(name: string): Promise<TableContent> {
    return this.reading(async (context) => {
      for (let left = READINGS; ; left--) {
        const table = (await describeTables(context)).find(({ info }) => info.name === name);
        if (table === undefined) throw tableGone(name);
        const { rows, steady } = await readRows(context, table);
        if (steady || left === 1) return { ...table.info, rows };
      }
    });
  }

  applyEdits(edits: readonly Edit[], begin: (rowCounts: RowCounts) => void): Promise<readonly AppliedEdit[]> {
    return applyEdits(this.run, edits, begin);
  }

  createTable(table: NewTable): Promise<void> {
    return createTable(this.run, table);
  }

  writeBlock(block: CellBlock, begin: (begun: BegunBlock) => void): Promise<WrittenBlock> {
    return writeBlock(this.run, block, begin);
  }

  readBlock(block: CellBlock): Promise<readonly (readonly StandingCell[])[] | undefined> {
    return this.reading((context) => readBlock(context, block));
  }

  removeBlock(block: WrittenBlock): Promise<void> {
    return removeBlock(this.run, block);
  }

  watchChanges(listener: (change: WorkbookChange) => void): Unwatch {
    return watchChanges(this.run, listener);
  }

  private async reading<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
    try {
      return await this.run(work);
    } catch (error) {
      throw knownError(error) ?? notRead(error);
    }
  }
}
