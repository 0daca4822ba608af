import type { PlainArgument, PlainCell } from "../port";
import type { ArgumentNode } from "../written-calls";
import { type Found, type Home, lookUp } from "./look-up";

/** An argument as the function was handed it; undefined where only Excel itself knows it. */
export type ReadArgument = PlainArgument | undefined;

/**
 * Reads what a formula hands to our functions, in three questions to Excel whatever the number of arguments: where
 * each argument lies, how large it is, what it holds.
 */
export async function readArguments(nodes: readonly ArgumentNode[], home: Home): Promise<readonly ReadArgument[]> {
  const lookUps = nodes.map((node) => lookUp(node, home));
  await home.context.sync();
  const found = lookUps.map((answer) => answer());
  const extents = await readExtents(found, home.context);
  const values = await readValues(extents, home.context);
  return found.map((argument, index) =>
    argument === undefined ? undefined : "value" in argument ? argument.value : values[index],
  );
}

/** A rectangle of a sheet. */
interface Extent {
  readonly sheet: Excel.Worksheet;
  readonly rowIndex: number;
  readonly columnIndex: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

/** Whole columns are read down to the last row that the sheet uses; the rows below are blank in every column alike. */
async function readExtents(
  found: readonly Found[],
  context: Excel.RequestContext,
): Promise<readonly (Extent | undefined)[]> {
  const asked = found.map((argument) => {
    if (argument === undefined || !("range" in argument)) return undefined;
    const { range } = argument;
    range.load("rowIndex,columnIndex,rowCount,columnCount");
    const used = range.worksheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex,rowCount");
    return { range, used };
  });
  await context.sync();
  return asked.map((pair) => {
    if (pair === undefined) return undefined;
    const { rowIndex, columnIndex, rowCount, columnCount, worksheet } = pair.range;
    const usedRows = pair.used.isNullObject ? 0 : pair.used.rowIndex + pair.used.rowCount - rowIndex;
    const rows = Math.max(1, Math.min(rowCount, usedRows));
    return { sheet: worksheet, rowIndex, columnIndex, rowCount: rows, columnCount };
  });
}

/** Excel on the web answers at most 5 MB at once; a cell takes some 20 bytes on the way. */
const MOST_CELLS_AT_ONCE = 100_000;

async function readValues(
  extents: readonly (Extent | undefined)[],
  context: Excel.RequestContext,
): Promise<readonly ReadArgument[]> {
  const blocks = extents.map((extent) => (extent === undefined ? [] : blocksOf(extent)));
  let queued = 0;
  for (const block of blocks.flat()) {
    block.range.load("values");
    queued += block.cellCount;
    if (queued < MOST_CELLS_AT_ONCE) continue;
    // A large reading must be cut into several answers.
    await context.sync();
    queued = 0;
  }
  await context.sync();
  return blocks.map((parts) =>
    parts.length === 0 ? undefined : argumentOf(parts.flatMap(({ range }) => range.values)),
  );
}

interface Block {
  readonly range: Excel.Range;
  readonly cellCount: number;
}

function blocksOf({ sheet, rowIndex, columnIndex, rowCount, columnCount }: Extent): readonly Block[] {
  const rowsAtOnce = Math.max(1, Math.floor(MOST_CELLS_AT_ONCE / columnCount));
  const blocks: Block[] = [];
  for (let row = 0; row < rowCount; row += rowsAtOnce) {
    const rows = Math.min(rowsAtOnce, rowCount - row);
    const range = sheet.getRangeByIndexes(rowIndex + row, columnIndex, rows, columnCount);
    blocks.push({ range, cellCount: rows * columnCount });
  }
  return blocks;
}

/** A single cell is handed over as such; Excel gives a blank cell as empty text. */
function argumentOf(rows: readonly (readonly unknown[])[]): PlainArgument {
  const cells = rows.map((row) => row.map((cell) => (cell === "" ? null : (cell as PlainCell))));
  const [first] = cells;
  return cells.length === 1 && first?.length === 1 ? first[0]! : cells;
}
