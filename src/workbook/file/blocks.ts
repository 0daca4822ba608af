import { setWidths } from "../../xlsx/edit/column-widths";
import { removeLastSheet } from "../../xlsx/edit/remove-sheet";
import type { SheetModel } from "../../xlsx/model";
import type { CellPosition } from "../cell-address";
import { GENERAL_FORMAT } from "../number-format";
import {
  filledCells,
  formatsBefore,
  refuseChangedBlock,
  type StandingCell,
  standingCells,
  touchedCells,
  wantedWidths,
  type WrittenBlock,
} from "../saving/written-block";
import { sheetGone, sheetProtected } from "../table-error";
import type { CellBlock } from "../table-port";
import type { FileBook } from "./file-book";
import type { Making } from "./make";
import type { SheetCells } from "./sheet-cells";

/** The cells of a block as they stand; undefined where its sheet is gone. */
export function blockCells(book: FileBook, block: CellBlock): StandingCell[][] | undefined {
  const sheet = book.model.sheets.find(({ name }) => name === block.sheet);
  if (sheet === undefined) return undefined;
  const cells = book.cells(sheet);
  return standingCells(block, (at) => standingCell(cells, at));
}

function standingCell(cells: SheetCells, { row, column }: CellPosition): StandingCell {
  const formula = cells.at(row, column)?.formula;
  return formula === undefined ? cells.plain(row, column) : { formula };
}

/** What a block changes besides the contents of its cells, as it was before. */
type BlockBefore = Required<Pick<WrittenBlock, "formatsBefore" | "widened">>;

/** Width of a column that has none of its own, in characters. Source: ECMA-376 Part 1, 18.3.1.81 (baseColWidth). */
const USUAL_WIDTH = 8;

export function foundBefore(book: FileBook, block: CellBlock): BlockBefore {
  const { sheets, styles } = book.model;
  const sheet = sheets.find(({ name }) => name === block.sheet);
  const cells = sheet && book.cells(sheet);
  return {
    formatsBefore: formatsBefore(block, ({ row, column }) => styles[cells?.at(row, column)?.style ?? 0]?.numberFormat),
    widened: wantedWidths(block).flatMap(({ column, characters }) => {
      const before = widthOf(sheet, column);
      return (before ?? sheet?.defaultColumnWidth ?? USUAL_WIDTH) >= characters
        ? []
        : [{ column, before, set: characters }];
    }),
  };
}

function widthOf(sheet: SheetModel | undefined, at: number): number | null {
  return sheet?.columns.find(({ first, last }) => first <= at && at <= last)?.width ?? null;
}

/** Takes a block out of a file. */
export function removalMaking(book: FileBook, block: WrittenBlock): Making {
  const sheet = book.model.sheets.find(({ name }) => name === block.sheet);
  if (sheet === undefined) throw sheetGone(block.sheet);
  if (book.isProtected(sheet.name)) throw sheetProtected(sheet.name);
  const cells = book.cells(sheet);
  refuseChangedBlock(block, (at) => standingCell(cells, at));
  const filled = filledCells(block);
  const taken = new Set(filled.map(({ at }) => `${at.row},${at.column}`));
  const isBare =
    sheet.tables.length === 0 &&
    sheet.cells.every(
      ({ row, column, value, formula, spilled }) =>
        taken.has(`${row},${column}`) || spilled === true || (value === null && formula === undefined),
    );
  const goes = block.madeSheet && isBare && book.model.sheets.at(-1) === sheet;
  return {
    file: book.file,
    edit: () => {
      for (const { at } of filled) cells.put(at.row, at.column, { value: null });
      return touchedCells(block).map(({ at, formatBefore: numberFormat }) => ({
        sheet: sheet.name,
        ...at,
        plain: true,
        ...(numberFormat === GENERAL_FORMAT ? {} : { numberFormat }),
      }));
    },
    finish: (file) => {
      if (goes) return removeLastSheet(file);
      const narrowed = (block.widened ?? []).filter(({ column, set }) => widthOf(sheet, column) === set);
      return setWidths(
        file,
        sheet.name,
        narrowed.map(({ column, before }) => ({ column, set: before })),
      );
    },
  };
}
