import { cellAddress, type CellPosition } from "../cell-address";
import { GENERAL_FORMAT } from "../number-format";
import {
  refuseChangedBlock,
  type StandingCell,
  touchedCells,
  wantedWidths,
  type WidenedColumn,
  type WrittenBlock,
} from "../saving/written-block";
import { sheetProtected } from "../table-error";
import type { BookState, MemoryCell, MemorySheet } from "./book";
import type { CellBlock } from "../table-port";
import { sheetOf, withCells } from "./cells";

/** What a cell outside tables holds. */
export function standingCell({ cells }: MemorySheet, at: CellPosition): StandingCell {
  const { value = null, formula } = cells[cellAddress(at)] ?? {};
  return formula === undefined ? value : { formula };
}

/** The state without a block. */
export function withoutBlock(state: BookState, block: WrittenBlock): BookState {
  const sheet = sheetOf(state, block.sheet);
  if (sheet.protected) throw sheetProtected(sheet.name);
  refuseChangedBlock(block, (at) => standingCell(sheet, at));
  const touched = new Map(touchedCells(block).map((cell) => [cellAddress(cell.at), cell]));
  const left = Object.entries(sheet.cells).flatMap(([address, cell]) => {
    const { isFilled = false, formatBefore } = touched.get(address) ?? {};
    if (formatBefore === undefined) return [[address, cell] as const];
    const { value, formula }: MemoryCell = isFilled ? { value: null } : cell;
    const format = formatBefore === GENERAL_FORMAT ? {} : { numberFormat: formatBefore };
    const plain = { value, ...(formula === undefined ? {} : { formula }), ...format };
    return Object.values(plain).every((part) => part === null) ? [] : [[address, plain] as const];
  });
  const isBare = left.length === 0 && !state.tables.some((table) => table.sheet === sheet.name);
  if (block.madeSheet && isBare) return { ...state, sheets: state.sheets.filter((known) => known !== sheet) };
  return withWidths(withCells(state, sheet.name, Object.fromEntries(left)), sheet.name, (widths) => {
    const widened = (block.widened ?? []).filter(({ column, set }) => widths.get(column) === set);
    for (const { column, before } of widened) {
      if (before === null) widths.delete(column);
      else widths.set(column, before);
    }
  });
}

/** Width of a column that has none of its own, in characters. Source: ECMA-376 Part 1, 18.3.1.81 (baseColWidth). */
const USUAL_WIDTH = 8;

/** The columns that a block makes wider. */
export function widenedBy(block: CellBlock, { widths = {} }: MemorySheet): WidenedColumn[] {
  return wantedWidths(block).flatMap(({ column, characters }) => {
    const before = widths[column] ?? null;
    return (before ?? USUAL_WIDTH) >= characters ? [] : [{ column, before, set: characters }];
  });
}

export function withWidths(state: BookState, name: string, change: (widths: Map<number, number>) => void): BookState {
  const sheets = state.sheets.map((sheet) => {
    if (sheet.name !== name) return sheet;
    const widths = new Map(Object.entries(sheet.widths ?? {}).map(([column, width]) => [Number(column), width]));
    change(widths);
    return { ...sheet, widths: Object.fromEntries(widths) };
  });
  return { ...state, sheets };
}
