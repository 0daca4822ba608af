import { DEFAULT_WORKSHEET_COLUMN_WIDTH, type ICellData, type IStyleData } from "@univerjs/core";
import { SetWorksheetColWidthMutation } from "@univerjs/sheets";
import { gridStyle } from "../../../engine/snapshot/styles";
import { pixelsOf } from "../../look";
import { GENERAL_FORMAT } from "../../number-format";
import type { CellStyle } from "../../saving/block-cells";
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
