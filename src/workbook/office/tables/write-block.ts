import { contentOf, styleOf } from "../../saving/block-cells";
import {
  type BegunBlock,
  formatsBefore,
  meantCells,
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
import { make, type Making, siteAt } from "./make";
import type { RunExcel } from "./run";
import { rangeOf, type Site } from "./site";

export async function writeBlock(
  run: RunExcel,
  block: CellBlock,
  begin: (begun: BegunBlock) => void,
): Promise<WrittenBlock> {
  const { sheet, address, cells, room } = block;
  const size = { rows: cells.length, columns: Math.max(...cells.map((row) => row.length)) };
  const free = { rows: Math.max(size.rows, room?.rows ?? 0), columns: Math.max(size.columns, room?.columns ?? 0) };
  const writing = new BlockWriting({ ...block, cells: cells.map((row) => filledUp(row, size.columns)) }, size, begin);
  const { isNew, written } = await make(run, siteAt(sheet, address, free.rows, free.columns), writing);
  const { before } = writing;
  const standing = writing.standing(cellIn(written, address));
  return { sheet, address, ...before, cells: standing, madeSheet: isNew };
}

/** A block that is being written, and what it changes besides the contents of its cells. */
class BlockWriting implements Making {
  private formats: readonly (readonly (string | null)[])[];
  private widened: readonly WidenedColumn[] = [];

  constructor(
    private readonly block: CellBlock,
    private readonly size: { readonly rows: number; readonly columns: number },
    private readonly noteBegun: (begun: BegunBlock) => void,
  ) {
    this.formats = formatsBefore(block, () => undefined);
  }

  get meant(): readonly (readonly StandingCell[])[] {
    return meantCells(this.block);
  }

  get before(): Omit<BegunBlock, "madeSheet"> {
    return { formatsBefore: this.formats, widened: this.widened, charts: chartNames(this.block), chartsLeftOut: [] };
  }

  check(): void {
    // A block needs nothing but its cells, which are looked at for every site.
  }

  async prepare(context: Excel.RequestContext, site: Site): Promise<void> {
    if (site.isNew) {
      this.formats = formatsBefore(this.block, () => undefined);
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

  begin({ isNew }: Site): void {
    this.noteBegun({ ...this.before, madeSheet: isNew });
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

  isOwn(): boolean {
    return false;
  }

  async clearAway(context: Excel.RequestContext): Promise<void> {
    const { sheet: name, address, cells } = this.block;
    const sheet = context.workbook.worksheets.getItem(name);
    await deleteCharts(context, name, chartNames(this.block));
    const columns = columnsOf(sheet, this.widened);
    await context.sync();
    queuePlain(sheet, { address, cells: cells.map((row) => row.map(() => null)), formatsBefore: this.formats });
    queueWidthsBefore(this.widened, columns);
  }

  /** The cells as they were written. Text that Excel took for something else is put right afterwards. */
  standing(found: Parameters<typeof standingCells>[1]): readonly (readonly StandingCell[])[] {
    return standingCells(this.block, found).map((row, down) =>
      row.map((cell, right) => {
        const meant = this.meant[down]?.[right];
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
