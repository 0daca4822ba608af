import { cellPosition, type CellPosition } from "../../cell-address";
import { plainCell } from "../../saving/row-match";
import {
  meantCells,
  refuseChangedBlock,
  type StandingCell,
  standingCells,
  type WrittenBlock,
} from "../../saving/written-block";
import { notTakenBack, sheetGone, sheetProtected, takeBackUncertain } from "../../table-error";
import type { CellBlock } from "../../table-port";
import { isFormula } from "./cells";
import { knownError } from "./errors";
import { columnsOf, queuePlain, queueWidthsBefore } from "./looks";
import type { RunExcel } from "./run";

/** The cells of a block as they stand; undefined where its sheet is gone. */
export async function readBlock(
  context: Excel.RequestContext,
  block: CellBlock,
): Promise<StandingCell[][] | undefined> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(block.sheet);
  sheet.load("name");
  await context.sync();
  if (sheet.isNullObject) return undefined;
  const range = rangeOver(context, { ...block, cells: meantCells(block) });
  range.load("values,formulas");
  await context.sync();
  return standingCells(block, cellIn(range, block.address));
}

/** What the cells of a loaded range hold, by their place on the sheet. */
export function cellIn({ values, formulas }: Excel.Range, address: string): (at: CellPosition) => StandingCell {
  const first = cellPosition(address);
  return ({ row, column }) => {
    const [down, right] = [row - first.row, column - first.column];
    const [formula, value]: unknown[] = [formulas[down]?.[right], values[down]?.[right]];
    return isFormula(formula, value) ? { formula: (formula as string).slice(1) } : plainCell(value);
  };
}

/** Takes a block out whole, or refuses where one of its cells holds something else. */
export async function removeBlock(run: RunExcel, block: WrittenBlock): Promise<void> {
  let hasBegun = false;
  try {
    await run((context) =>
      takeOut(context, block, () => {
        hasBegun = true;
      }),
    );
  } catch (error) {
    if (!hasBegun) throw knownError(error) ?? notTakenBack(error);
    // Its looks cannot be put back: what is left of it goes too.
    await run((context) => takeOut(context, block, () => undefined)).catch(() => {
      throw takeBackUncertain(error);
    });
  }
}

async function takeOut(context: Excel.RequestContext, block: WrittenBlock, begin: () => void): Promise<void> {
  const { worksheets } = context.workbook;
  const found = worksheets.getItemOrNullObject(block.sheet);
  found.load("name");
  await context.sync();
  if (found.isNullObject) throw sheetGone(block.sheet);
  const sheet = worksheets.getItem(block.sheet);
  const { protection } = sheet;
  protection.load("protected");
  const range = rangeOver(context, block);
  range.load("values,formulas");
  const charts = block.charts.map((name) => {
    const chart = sheet.charts.getItemOrNullObject(name);
    chart.load("name");
    return chart;
  });
  const { widened = [] } = block;
  const columns = columnsOf(sheet, widened);
  await context.sync();
  if (protection.protected) throw sheetProtected(block.sheet);
  refuseChangedBlock(block, cellIn(range, block.address));
  begin();
  for (const chart of charts) if (!chart.isNullObject) chart.delete();
  queuePlain(sheet, block);
  queueWidthsBefore(widened, columns);
  await context.sync();
  // A bare sheet that cannot be deleted, as in a protected workbook, stays: the block itself is out.
  if (block.madeSheet) await deleteIfBare(context, block.sheet).catch(() => undefined);
}

/** Charts that others drew, tables and what else they typed keep a sheet. */
export async function deleteIfBare(context: Excel.RequestContext, name: string): Promise<void> {
  const sheet = context.workbook.worksheets.getItem(name);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex");
  const count = sheet.charts.getCount();
  await context.sync();
  // A count comes without being loaded.
  if (!used.isNullObject || count.value > 0) return;
  sheet.delete();
  await context.sync();
}

function rangeOver(
  context: Excel.RequestContext,
  { sheet, address, cells }: Pick<WrittenBlock, "sheet" | "address" | "cells">,
) {
  const { row, column } = cellPosition(address);
  const columns = Math.max(...cells.map((line) => line.length));
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, cells.length, columns);
}
