import type { CellPosition } from "../../cell-address";
import { type CellLook, pixelsOf, type Side } from "../../look";
import { GENERAL_FORMAT } from "../../number-format";
import type { PlainArea } from "../../plain-book";
import { styleOf } from "../../saving/block-cells";
import { touchedCells, wantedWidths, type WidenedColumn } from "../../saving/written-block";
import type { BlockCell, CellBlock } from "../../table-port";

const EDGES = { top: "EdgeTop", right: "EdgeRight", bottom: "EdgeBottom", left: "EdgeLeft" } as const;
/** The lines between cells that look alike. */
const INNER = { across: "InsideHorizontal", upright: "InsideVertical" } as const;

/** 96 pixels and 72 points make an inch. */
const POINTS_PER_PIXEL = 72 / 96;
/** Width of a column that nobody changed, in points: 64 pixels in the usual font. */
const USUAL_WIDTH = 48;

/** Excel keeps widths in whole pixels: a width is read back as it was set but for less than this, in points. */
const WIDTH_STEP = 1;

/** Gives the cells of a block their looks: one step for each run of cells that look alike. */
export function queueLooks(
  sheet: Excel.Worksheet,
  cells: readonly (readonly BlockCell[])[],
  first: CellPosition,
): void {
  for (const { area, look } of runsOfLooks(cells)) {
    const rows = area.lastRow - area.firstRow + 1;
    const columns = area.lastColumn - area.firstColumn + 1;
    const range = sheet.getRangeByIndexes(first.row + area.firstRow, first.column + area.firstColumn, rows, columns);
    queueLook(range.format, look, { isHigh: rows > 1, isBroad: columns > 1 });
  }
}

function queueLook(
  format: Excel.RangeFormat,
  { size, bold, italic, colour, fill, borders = {}, horizontal, vertical, wrap }: CellLook,
  { isHigh, isBroad }: { readonly isHigh: boolean; readonly isBroad: boolean },
): void {
  const { font } = format;
  if (size !== undefined) font.size = size;
  if (bold !== undefined) font.bold = bold;
  if (italic !== undefined) font.italic = italic;
  if (colour !== undefined) font.color = colour;
  if (fill !== undefined) format.fill.color = fill;
  if (horizontal !== undefined) format.horizontalAlignment = horizontal === "right" ? "Right" : "Left";
  if (vertical !== undefined) format.verticalAlignment = "Center";
  if (wrap !== undefined) format.wrapText = wrap;
  const draw = (at: Parameters<Excel.RangeBorderCollection["getItem"]>[0], ink: string): void => {
    const border = format.borders.getItem(at);
    border.style = "Continuous";
    border.color = ink;
  };
  for (const [side, { colour: ink }] of Object.entries(borders)) draw(EDGES[side as Side], ink);
  if (isHigh && borders.bottom !== undefined) draw(INNER.across, borders.bottom.colour);
  if (isBroad && borders.right !== undefined) draw(INNER.upright, borders.right.colour);
}

/** Neighbours in a row that look alike, and rows of them that stand below each other. */
function runsOfLooks(
  cells: readonly (readonly BlockCell[])[],
): { readonly area: PlainArea; readonly look: CellLook }[] {
  const runs: { area: PlainArea; look: CellLook; text: string }[] = [];
  cells.forEach((row, down) => {
    const above = runs.filter(({ area }) => area.lastRow === down - 1);
    for (const run of runsInRow(row)) {
      const { firstColumn, lastColumn, text, look } = run;
      const same = above.find(
        ({ area, ...known }) =>
          known.text === text && area.firstColumn === firstColumn && area.lastColumn === lastColumn,
      );
      if (same !== undefined) same.area = { ...same.area, lastRow: down };
      else runs.push({ area: { firstRow: down, lastRow: down, firstColumn, lastColumn }, look, text });
    }
  });
  return runs;
}

interface RowRun {
  readonly firstColumn: number;
  lastColumn: number;
  readonly look: CellLook;
  readonly text: string;
}

function runsInRow(row: readonly BlockCell[]): RowRun[] {
  const runs: RowRun[] = [];
  row.forEach((cell, column) => {
    const { look } = styleOf(cell);
    if (look === undefined) return;
    const text = JSON.stringify(look);
    const last = runs.at(-1);
    if (last?.text === text && last.lastColumn === column - 1) last.lastColumn = column;
    else runs.push({ firstColumn: column, lastColumn: column, look, text });
  });
  return runs;
}

/** The columns of a block, their widths loaded. */
export function columnsOf(sheet: Excel.Worksheet, columns: readonly { readonly column: number }[]): Excel.Range[] {
  return columns.map(({ column }) => {
    const range = sheet.getRangeByIndexes(0, column, 1, 1);
    range.load("format/columnWidth");
    return range;
  });
}

/** Columns that are narrower than the block wants. Those of a sheet that is still to be made have the usual width. */
export function widenedBy(block: CellBlock, columns: readonly Excel.Range[] | undefined): WidenedColumn[] {
  return wantedWidths(block).flatMap(({ column, characters }, index) => {
    const before = columns?.[index]!.format.columnWidth ?? null;
    const set = pixelsOf(characters) * POINTS_PER_PIXEL;
    return (before ?? USUAL_WIDTH) >= set ? [] : [{ column, before, set }];
  });
}

export function queueWidths(sheet: Excel.Worksheet, widened: readonly WidenedColumn[]): void {
  for (const { column, set } of widened) sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = set;
}

/** Narrows columns again that are still as wide as the block made them; their widths are loaded. */
export function queueWidthsBefore(widened: readonly WidenedColumn[], columns: readonly Excel.Range[]): void {
  widened.forEach(({ before, set }, index) => {
    const { format } = columns[index]!;
    if (before !== null && Math.abs(format.columnWidth - set) < WIDTH_STEP) format.columnWidth = before;
  });
}

/** Makes the cells of a block plain again, with the number formats that they had. */
export function queuePlain(sheet: Excel.Worksheet, block: Parameters<typeof touchedCells>[0]): void {
  for (const { at, formatBefore, isFilled } of touchedCells(block)) {
    const cell = sheet.getRangeByIndexes(at.row, at.column, 1, 1);
    cell.clear(isFilled ? "All" : "Formats");
    if (formatBefore !== GENERAL_FORMAT) cell.numberFormat = [[formatBefore]];
  }
}
