import { removeLastSheet } from "../../xlsx/edit/remove-sheet";
import type { CellPosition } from "../cell-address";
import {
  filledCells,
  refuseChangedBlock,
  type StandingCell,
  standingCells,
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
    bytes: book.bytes,
    edit: () => {
      for (const { at } of filled) cells.put(at.row, at.column, { value: null });
      return [];
    },
    finish: (bytes) => (goes ? removeLastSheet(bytes) : bytes),
  };
}
