import type { PlainArea } from "../../plain-book";
import { isTooLarge } from "../tables/errors";

/** Excel on the web answers at most 5 MB at once; value, formula and format of a cell take some 30 bytes. */
const CELLS_AT_ONCE = 50_000;

/** Reads an area of a sheet in as many answers as it takes, from the top down. */
export async function* readPages(
  context: Excel.RequestContext,
  sheet: string,
  { firstRow, firstColumn, lastRow, lastColumn }: PlainArea,
  what: string,
): AsyncGenerator<Excel.Range & { readonly firstRow: number }> {
  const columns = lastColumn - firstColumn + 1;
  let atOnce = Math.max(1, Math.floor(CELLS_AT_ONCE / columns));
  for (let row = firstRow; row <= lastRow;) {
    const size = Math.min(atOnce, lastRow - row + 1);
    const page = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, firstColumn, size, columns);
    page.load(what);
    try {
      // eslint-disable-next-line office-addins/no-context-sync-in-loop -- a large sheet must be cut into answers
      await context.sync();
    } catch (error) {
      if (!isTooLarge(error) || size === 1) throw error;
      atOnce = Math.ceil(size / 2);
      continue;
    }
    yield Object.assign(page, { firstRow: row });
    row += size;
  }
}
