import type { PlainArea } from "../../plain-book";
import { areaOf } from "../merged-areas";
import { isTooLarge } from "../tables/errors";

/** Excel on the web answers at most 5 MB at once; value, formula and format of a cell take some 30 bytes. */
const CELLS_AT_ONCE = 50_000;

/** How often a sheet is read anew because it grew or shrank while it was read in parts. */
const READINGS = 3;

/** What gathers a sheet while it is read, page by page from the top down. */
export interface Gathering<Result> {
  readonly result: Result;
  take(page: Excel.Range, firstRow: number): void;
}

/** The cells of a sheet that hold something. Formats alone may reach to the last row and do not count. */
export function askUsed(context: Excel.RequestContext, sheet: string): Excel.Range {
  const used = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  return used;
}

/** Reads what a sheet holds, in as many answers as it takes; `used` was asked just before. */
export async function readUsed<Result>(
  context: Excel.RequestContext,
  sheet: string,
  used: Excel.Range,
  what: string,
  start: (used: PlainArea | undefined) => Gathering<Result>,
): Promise<Result> {
  let area = usedArea(used);
  for (let left = READINGS; ; left--) {
    const gathering = start(area);
    const now: PlainArea | undefined =
      area === undefined ? undefined : await readPages(context, sheet, area, what, gathering, left === 1);
    if (left === 1 || isSame(area, now)) return gathering.result;
    area = now;
  }
}

/** Reads an area and tells which one the sheet uses by then. Unless it must be read to its end, it ends where they differ. */
async function readPages(
  context: Excel.RequestContext,
  sheet: string,
  area: PlainArea,
  what: string,
  { take }: Gathering<unknown>,
  toItsEnd: boolean,
): Promise<PlainArea | undefined> {
  const { firstRow, firstColumn, lastRow, lastColumn } = area;
  const columns = lastColumn - firstColumn + 1;
  let atOnce = Math.max(1, Math.floor(CELLS_AT_ONCE / columns));
  let now: PlainArea | undefined = area;
  for (let row = firstRow; row <= lastRow && (toItsEnd || isSame(area, now));) {
    const size = Math.min(atOnce, lastRow - row + 1);
    const page = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, firstColumn, size, columns);
    page.load(what);
    const used = askUsed(context, sheet);
    try {
      // A large sheet must be cut into answers.
      await context.sync();
    } catch (error) {
      if (!isTooLarge(error) || size === 1) throw error;
      atOnce = Math.ceil(size / 2);
      continue;
    }
    take(page, row);
    now = usedArea(used);
    row += size;
  }
  return now;
}

function usedArea(used: Excel.Range): PlainArea | undefined {
  return used.isNullObject ? undefined : areaOf(used);
}

function isSame(a: PlainArea | undefined, b: PlainArea | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
