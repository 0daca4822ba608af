import { cellPosition } from "../../cell-address";
import { contentOf, styleOf } from "../../saving/block-cells";
import {
  formatsBefore,
  type StandingCell,
  standingCells,
  wantedWidths,
  type WidenedColumn,
  type WrittenBlock,
} from "../../saving/written-block";
import type { BlockCell, CellBlock } from "../../table-port";
import { cellIn } from "./blocks";
import { enteredValue } from "./cells";
import { chartNames, deleteCharts, queueCharts } from "./charts";
import { columnsOf, queueLooks, queuePlain, queueWidths, queueWidthsBefore, widenedBy } from "./looks";
import { make, type Making, rangeOf, type Site } from "./make";
import type { RunExcel } from "./run";

export async function writeBlock(run: RunExcel, block: CellBlock): Promise<WrittenBlock> {
  const { sheet, address, cells, room } = block;
  const at = cellPosition(address);
  const size = { rows: cells.length, columns: Math.max(...cells.map((row) => row.length)) };
  const free = { rows: Math.max(size.rows, room?.rows ?? 0), columns: Math.max(size.columns, room?.columns ?? 0) };
  const writing = new BlockWriting({ ...block, cells: cells.map((row) => filledUp(row, size.columns)) }, size);
  const { isNew, written } = await make(run, { sheet, at, ...free }, writing);
  return { ...writing.before, cells: writing.standing(cellIn(written, address)), madeSheet: isNew };
}

/** A block that is being written, and what it changes besides the contents of its cells. */
class BlockWriting implements Making {
  private formats: readonly (readonly (string | null)[])[];
  private widened: readonly WidenedColumn[] = [];

  constructor(
    private readonly block: CellBlock,
    private readonly size: { readonly rows: number; readonly columns: number },
  ) {
    this.formats = formatsBefore(block, () => undefined);
  }

  get texts(): readonly (readonly unknown[])[] {
    return this.block.cells.map((row) => row.map(contentOf));
  }

  get before(): Omit<WrittenBlock, "cells" | "madeSheet"> {
    const { sheet, address } = this.block;
    const { formats, widened } = this;
    return { sheet, address, formatsBefore: formats, widened, charts: chartNames(this.block), chartsLeftOut: [] };
  }

  check(): void {
    // A block needs nothing but its cells, which are looked at for every site.
  }

  async prepare(context: Excel.RequestContext, site: Site): Promise<void> {
    if (site.isNew) {
      this.widened = widenedBy(this.block, undefined);
      return;
    }
    const range = rangeOf(context, { ...site, ...this.size });
    range.load("numberFormat");
    const sheet = context.workbook.worksheets.getItem(site.sheet);
    const wanted = columnsOf(sheet, wantedWidths(this.block));
    await context.sync();
    const formats = range.numberFormat as string[][];
    this.formats = formatsBefore(
      this.block,
      ({ row, column }) => formats[row - site.at.row]?.[column - site.at.column],
    );
    this.widened = widenedBy(this.block, wanted);
  }

  queue(context: Excel.RequestContext, site: Site): void {
    const { cells } = this.block;
    const range = rangeOf(context, { ...site, ...this.size });
    range.formulas = cells.map((row) => row.map(formulaOf));
    const formats = cells.map((row) => row.map((cell) => styleOf(cell).numberFormat ?? null));
    if (formats.some((row) => row.some((format) => format !== null))) range.numberFormat = formats;
    const sheet = context.workbook.worksheets.getItem(site.sheet);
    queueWidths(sheet, this.widened);
    queueLooks(sheet, cells, site.at);
    queueCharts(context, this.block, site.at);
  }

  async clearAway(context: Excel.RequestContext): Promise<void> {
    const sheet = context.workbook.worksheets.getItem(this.block.sheet);
    await deleteCharts(context, this.block.sheet, chartNames(this.block));
    const columns = columnsOf(sheet, this.widened);
    await context.sync();
    const blank = this.block.cells.map((row) => row.map(() => null));
    queuePlain(sheet, { ...this.before, cells: blank, madeSheet: false });
    queueWidthsBefore(this.widened, columns);
  }

  /** The cells as they were written. Text that Excel took for something else is put right afterwards. */
  standing(found: Parameters<typeof standingCells>[1]): readonly (readonly StandingCell[])[] {
    return standingCells(this.block, found).map((row, down) =>
      row.map((cell, right) => {
        const meant = this.texts[down]?.[right];
        return typeof meant === "string" ? meant : cell;
      }),
    );
  }
}

function filledUp(row: readonly BlockCell[], columns: number): BlockCell[] {
  return Array.from({ length: columns }, (_, column) => row[column] ?? null);
}

function formulaOf(cell: BlockCell): string | number | boolean | null {
  const content = contentOf(cell);
  if (typeof content === "object" && content !== null && "formula" in content) return `=${content.formula}`;
  return enteredValue(content ?? undefined);
}
