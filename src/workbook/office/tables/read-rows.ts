import type { PlainCell } from "../../port";
import { plainRow } from "./cells";
import type { ExcelTable } from "./describe";
import { isTooLarge } from "./errors";

/** Excel on the web answers at most 5 MB at once; cells with longer notes than usual take some 100 bytes each. */
const CELLS_AT_ONCE = 50_000;

export interface RowsRead {
  readonly rows: PlainCell[][];
  /** Whether the table kept its length while it was read. */
  readonly steady: boolean;
}

/** Reads the filled rows of a table, in as many answers as it takes. */
export async function readRows(context: Excel.RequestContext, { id, info, bodyRows }: ExcelTable): Promise<RowsRead> {
  const count = info.rowCount;
  const rows: PlainCell[][] = [];
  let steady = true;
  let atOnce = Math.max(1, Math.floor(CELLS_AT_ONCE / info.columns.length));
  while (rows.length < count) {
    const size = Math.min(atOnce, count - rows.length);
    const body = context.workbook.tables.getItem(id).getDataBodyRange();
    const block = body.getRow(rows.length).getResizedRange(size - 1, 0);
    block.load("values");
    body.load("rowCount");
    try {
      // A large table must be cut into several answers.
      await context.sync();
    } catch (error) {
      if (!isTooLarge(error) || size === 1) throw error;
      atOnce = Math.ceil(size / 2);
      continue;
    }
    for (const row of block.values) rows.push(plainRow(row));
    steady &&= body.rowCount === bodyRows;
  }
  return { rows, steady };
}
