import {
  DEFAULT_WORKSHEET_COLUMN_WIDTH,
  DEFAULT_WORKSHEET_ROW_HEIGHT,
  type ICellData,
  type IStyleData,
} from "@univerjs/core";
import {
  SetWorksheetColWidthMutation,
  SetWorksheetRowAutoHeightMutation,
  SetWorksheetRowAutoHeightMutationFactory,
} from "@univerjs/sheets";
import { gridStyle } from "../../../engine/snapshot/styles";
import { pixelsOf } from "../../look";
import { GENERAL_FORMAT } from "../../number-format";
import { cellPosition } from "../../cell-address";
import { type CellStyle, isWritten, styleOf } from "../../saving/block-cells";
import {
  formatsBefore,
  touchedCells,
  wantedWidths,
  type WidenedColumn,
  type WrittenBlock,
} from "../../saving/written-block";
import type { CellBlock } from "../../table-port";
import { type Cells, formatCell, isBlank, put, valueCell } from "./cells";
import { cellsChange, type Change } from "./mutations";
import type { OpenGrid } from "./open-grid";

/** What the grid takes for a look; nothing where there is none. */
export function styleCell({ look, numberFormat }: CellStyle): Pick<ICellData, "s"> {
  const { vertical, ...rest } = look ?? {};
  const style: IStyleData = gridStyle({
    ...rest,
    ...(vertical === undefined ? {} : { vertical: "center" }),
    ...(numberFormat === undefined ? {} : { numberFormat }),
  });
  return Object.keys(style).length === 0 ? {} : { s: style };
}

/** What a block finds of number formats and widths of columns. A sheet that is still to be made has none. */
export function foundBefore(
  { workbook }: OpenGrid,
  block: CellBlock,
): Required<Pick<WrittenBlock, "formatsBefore" | "widened">> {
  const sheet = workbook.getSheetBySheetName(block.sheet);
  const styles = workbook.getStyles();
  return {
    formatsBefore: formatsBefore(
      block,
      ({ row, column }) => styles.getStyleByCell(sheet?.getCellRaw(row, column))?.n?.pattern,
    ),
    widened: wantedWidths(block).flatMap(({ column, characters }) => {
      const [before, set] = [sheet?.getColumnWidth(column) ?? null, pixelsOf(characters)];
      return (before ?? DEFAULT_WORKSHEET_COLUMN_WIDTH) >= set ? [] : [{ column, before, set }];
    }),
  };
}

export function widthsChange(grid: OpenGrid, sheetId: string, widened: readonly WidenedColumn[]): Change[] {
  const { workbook } = grid;
  if (widened.length === 0) return [];
  const widths = (of: (column: WidenedColumn) => number | null) => ({
    id: SetWorksheetColWidthMutation.id,
    params: {
      unitId: workbook.getUnitId(),
      subUnitId: sheetId,
      ranges: widened.map(({ column }) => ({ startRow: 0, endRow: 0, startColumn: column, endColumn: column })),
      colWidth: Object.fromEntries(widened.map((one) => [one.column, of(one)])),
    },
  });
  const redo = widths(({ set }) => set);
  // A sheet that is still to be made goes with its columns.
  return [workbook.getSheetBySheetId(sheetId) ? { redo, undo: widths(({ before }) => before) } : { redo }];
}

/** Pixels of a line of text a point of its size: 96 pixels and 72 points an inch, and 0.3 of it between lines (common practice, no source). */
const LINE_PIXELS_PER_POINT = (96 / 72) * 1.3;

/** Rows as high as their largest text, as Excel makes them by itself. */
export function heightsChange({ workbook }: OpenGrid, sheetId: string, { address, cells }: CellBlock): Change[] {
  const { row: first } = cellPosition(address);
  const rowsAutoHeightInfo = cells.flatMap((row, down) => {
    const points = Math.max(0, ...row.map((input) => (isWritten(input) ? (styleOf(input).look?.size ?? 0) : 0)));
    const autoHeight = Math.ceil(points * LINE_PIXELS_PER_POINT);
    return autoHeight > DEFAULT_WORKSHEET_ROW_HEIGHT ? [{ row: first + down, autoHeight }] : [];
  });
  if (rowsAutoHeightInfo.length === 0) return [];
  const { id } = SetWorksheetRowAutoHeightMutation;
  const params = { unitId: workbook.getUnitId(), subUnitId: sheetId, rowsAutoHeightInfo };
  const sheet = workbook.getSheetBySheetId(sheetId);
  // A sheet that is still to be made goes with its rows.
  if (!sheet) return [{ redo: { id, params } }];
  return [{ redo: { id, params }, undo: { id, params: SetWorksheetRowAutoHeightMutationFactory(params, sheet) } }];
}

/** The changes that make the cells of a block plain again, with the number formats and widths that were there. */
export function plainChanges(grid: OpenGrid, sheetId: string, block: WrittenBlock): Change[] {
  const cleared: Cells = {};
  const formatted: Cells = {};
  for (const { at, formatBefore, isFilled } of touchedCells(block)) {
    put(cleared, at.row, at.column, { ...(isFilled ? valueCell(null) : {}), s: null });
    if (formatBefore !== GENERAL_FORMAT) put(formatted, at.row, at.column, formatCell(formatBefore));
  }
  const sheet = grid.workbook.getSheetBySheetId(sheetId);
  const narrowed = (block.widened ?? []).flatMap(({ column, before, set }) =>
    before === null || sheet?.getColumnWidth(column) !== set ? [] : [{ column, before: set, set: before }],
  );
  return [
    cellsChange(grid, sheetId, cleared),
    // Taking the first change back brings the formats back too.
    ...(isBlank(formatted) ? [] : [{ redo: cellsChange(grid, sheetId, formatted).redo }]),
    ...widthsChange(grid, sheetId, narrowed),
  ];
}
