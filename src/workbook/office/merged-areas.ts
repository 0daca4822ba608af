import { SHEET_COLUMNS, SHEET_ROWS } from "../cell-address";
import type { PlainArea } from "../plain-book";
import { knownError } from "./tables/errors";

const WHOLE_SHEET: PlainArea = {
  firstRow: 0,
  firstColumn: 0,
  lastRow: SHEET_ROWS - 1,
  lastColumn: SHEET_COLUMNS - 1,
};

/**
 * The merged cells that meet an area of a sheet. Excel answers only where there are not more than 512 of them (Office
 * JavaScript API, Range.getMergedAreasOrNullObject): an area for which it does not is asked for half by half.
 */
export async function mergedAreas(
  context: Excel.RequestContext,
  sheet: string,
  area: PlainArea = WHOLE_SHEET,
): Promise<PlainArea[]> {
  const found = new Map<string, PlainArea>();
  const open = [area];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const merged = askMerged(context, sheet, next);
    try {
      // An area is halved only where Excel does not answer for the whole.
      await context.sync();
    } catch (error) {
      const halves = halvesOf(next);
      if (knownError(error) !== undefined || halves === undefined) throw error;
      open.push(...halves);
      continue;
    }
    // Merged cells that lie across the border of two halves are told by both.
    for (const one of mergedIn(merged)) found.set(Object.values(one).join(), one);
  }
  return [...found.values()];
}

/**
 * The merged cells of each of several sheets: all in one question where Excel answers it. No other question may be
 * waiting, since it would be lost with the first try.
 */
export async function mergedAreasOf(
  context: Excel.RequestContext,
  sheets: readonly string[],
): Promise<ReadonlyMap<string, readonly PlainArea[]>> {
  const asked = sheets.map((sheet) => [sheet, askMerged(context, sheet, WHOLE_SHEET)] as const);
  try {
    await context.sync();
    return new Map(asked.map(([sheet, merged]) => [sheet, mergedIn(merged)]));
  } catch (error) {
    if (knownError(error) !== undefined) throw error;
  }
  const found = new Map<string, readonly PlainArea[]>();
  // One sheet with more merged cells than Excel tells must not keep the others from being read.
  for (const sheet of sheets) found.set(sheet, await mergedAreas(context, sheet));
  return found;
}

export function areaOf(range: Pick<Excel.Range, "rowIndex" | "columnIndex" | "rowCount" | "columnCount">): PlainArea {
  const { rowIndex, columnIndex, rowCount, columnCount } = range;
  return {
    firstRow: rowIndex,
    firstColumn: columnIndex,
    lastRow: rowIndex + rowCount - 1,
    lastColumn: columnIndex + columnCount - 1,
  };
}

function askMerged(context: Excel.RequestContext, sheet: string, area: PlainArea): Excel.RangeAreas {
  const { firstRow, firstColumn, lastRow, lastColumn } = area;
  const range = context.workbook.worksheets
    .getItem(sheet)
    .getRangeByIndexes(firstRow, firstColumn, lastRow - firstRow + 1, lastColumn - firstColumn + 1);
  const merged = range.getMergedAreasOrNullObject();
  merged.load("areas/items/rowIndex,areas/items/columnIndex,areas/items/rowCount,areas/items/columnCount");
  return merged;
}

function mergedIn(merged: Excel.RangeAreas): PlainArea[] {
  return merged.isNullObject ? [] : merged.areas.items.map(areaOf);
}

/** Upper and lower half, or of a single row the left and right one; undefined for a single cell. */
function halvesOf(area: PlainArea): PlainArea[] | undefined {
  const { firstRow, lastRow, firstColumn, lastColumn } = area;
  if (lastRow > firstRow) {
    const middle = Math.floor((firstRow + lastRow) / 2);
    return [
      { ...area, lastRow: middle },
      { ...area, firstRow: middle + 1 },
    ];
  }
  if (lastColumn === firstColumn) return undefined;
  const middle = Math.floor((firstColumn + lastColumn) / 2);
  return [
    { ...area, lastColumn: middle },
    { ...area, firstColumn: middle + 1 },
  ];
}
