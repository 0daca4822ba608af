import { cellAddress, cellPosition, type CellPosition } from "../cell-address";
import type { PlainCell } from "../port";
import { cellChanged } from "../table-error";
import type { BlockCell, CellBlock } from "../table-port";
import { plainValue } from "./row-match";

/** What a cell holds, a formula as the host spells it, without "=". */
export type StandingCell = PlainCell | { readonly formula: string };

/** What writing a block left in the workbook. Plain data. */
export interface WrittenBlock {
  readonly sheet: string;
  /** First cell. */
  readonly address: string;
  /** null where nothing was written. */
  readonly cells: readonly (readonly StandingCell[])[];
  /** The sheet was made for it. */
  readonly madeSheet: boolean;
  /** Names of the charts that were drawn. */
  readonly charts: readonly string[];
  /** Titles of the charts that this host cannot draw. */
  readonly chartsLeftOut: readonly string[];
}

/** The cells of a block in which something was written. */
export function filledCells({ address, cells }: Pick<WrittenBlock, "address" | "cells">): {
  readonly at: CellPosition;
  readonly cell: Exclude<StandingCell, null>;
}[] {
  const { row, column } = cellPosition(address);
  return cells.flatMap((line, down) =>
    line.flatMap((cell, right) => (cell === null ? [] : [{ at: { row: row + down, column: column + right }, cell }])),
  );
}

/** Throws where a cell of a block no longer holds what was written. */
export function refuseChangedBlock(block: WrittenBlock, found: (at: CellPosition) => StandingCell): void {
  for (const { at, cell } of filledCells(block)) {
    const is = found(at);
    if (!isSame(cell, is)) throw cellChanged(block.sheet, cellAddress(at), shownCell(cell), shownCell(is));
  }
}

function isSame(was: StandingCell, is: StandingCell): boolean {
  if (!isFormulaCell(was)) return was === is;
  return isFormulaCell(is) && is.formula === was.formula;
}

function isFormulaCell(cell: StandingCell): cell is { readonly formula: string } {
  return typeof cell === "object" && cell !== null;
}

function shownCell(cell: StandingCell): PlainCell {
  return isFormulaCell(cell) ? `=${cell.formula}` : cell;
}

/** What a block is to leave in its cells, as far as that is known before it is written. */
export function meantCells({ cells }: CellBlock): StandingCell[][] {
  const meant = (cell: BlockCell): StandingCell =>
    typeof cell === "object" && cell !== null && "formula" in cell ? { formula: cell.formula } : plainValue(cell);
  return cells.map((row) => row.map(meant));
}

/** The cells of a block as a host holds them; null where nothing was meant. */
export function standingCells(block: CellBlock, found: (at: CellPosition) => StandingCell): StandingCell[][] {
  const { row, column } = cellPosition(block.address);
  return meantCells(block).map((line, down) =>
    line.map((cell, right) => (cell === null ? null : found({ row: row + down, column: column + right }))),
  );
}
