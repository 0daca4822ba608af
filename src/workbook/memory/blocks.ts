import { cellAddress, type CellPosition } from "../cell-address";
import { filledCells, refuseChangedBlock, type StandingCell, type WrittenBlock } from "../saving/written-block";
import { sheetProtected } from "../table-error";
import type { BookState, MemorySheet } from "./book";
import { withCells } from "./cells";

/** What a cell outside tables holds. */
export function standingCell({ cells }: MemorySheet, at: CellPosition): StandingCell {
  const { value = null, formula } = cells[cellAddress(at)] ?? {};
  return formula === undefined ? value : { formula };
}

/** The state without a block; undefined where its sheet is gone. */
export function withoutBlock(state: BookState, block: WrittenBlock): BookState | undefined {
  const sheet = state.sheets.find(({ name }) => name === block.sheet);
  if (sheet === undefined) return undefined;
  if (sheet.protected) throw sheetProtected(sheet.name);
  refuseChangedBlock(block, (at) => standingCell(sheet, at));
  const taken = new Set(filledCells(block).map(({ at }) => cellAddress(at)));
  const left = Object.entries(sheet.cells).filter(([address]) => !taken.has(address));
  const isBare = left.length === 0 && !state.tables.some((table) => table.sheet === sheet.name);
  if (block.madeSheet && isBare) return { ...state, sheets: state.sheets.filter((known) => known !== sheet) };
  return withCells(state, sheet.name, Object.fromEntries(left));
}
