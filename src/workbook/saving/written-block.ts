import { cellAddress, cellPosition, type CellPosition } from "../cell-address";
import { GENERAL_FORMAT } from "../number-format";
import type { PlainCell } from "../port";
import { cellChanged } from "../table-error";
import type { BlockCell, CellBlock } from "../table-port";
import { contentOf, isWritten } from "./block-cells";
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
  /** Number formats that its cells had before; null where it left the cell alone. Absent: General. */
  readonly formatsBefore?: readonly (readonly (string | null)[])[];
  /** Columns that were made wider. */
  readonly widened?: readonly WidenedColumn[];
  /** The sheet was made for it. */
  readonly madeSheet: boolean;
  /** Names of the charts that were drawn. */
  readonly charts: readonly string[];
  /** Titles of the charts that this host cannot draw. */
  readonly chartsLeftOut: readonly string[];
}

/** What writing a block is about to change besides the contents of its cells, told before it starts. */
export type BegunBlock = Omit<WrittenBlock, "sheet" | "address" | "cells">;

/** A column by its place on the sheet, its widths as the host measures them. */
export interface WidenedColumn {
  readonly column: number;
  /** null where it had no width of its own. */
  readonly before: number | null;
  readonly set: number;
}

/** The cells that a block wrote into or gave a look, and the number format that each had. */
export function touchedCells({
  address,
  cells,
  formatsBefore,
}: Pick<WrittenBlock, "address" | "cells" | "formatsBefore">): {
  readonly at: CellPosition;
  readonly formatBefore: string;
  /** It wrote into the cell; else it only gave it a look. */
  readonly isFilled: boolean;
}[] {
  const { row, column } = cellPosition(address);
  const before = formatsBefore ?? cells.map((line) => line.map((cell) => (cell === null ? null : GENERAL_FORMAT)));
  return before.flatMap((line, down) =>
    line.flatMap((formatBefore, right) =>
      formatBefore === null
        ? []
        : [{ at: { row: row + down, column: column + right }, formatBefore, isFilled: cells[down]?.[right] != null }],
    ),
  );
}

/** For each cell of a block that it changes, the number format that stands there; null for the others. */
export function formatsBefore(
  { address, cells }: CellBlock,
  found: (at: CellPosition) => string | undefined,
): (string | null)[][] {
  const { row, column } = cellPosition(address);
  return cells.map((line, down) =>
    line.map((cell, right) =>
      isWritten(cell) ? (found({ row: row + down, column: column + right }) ?? GENERAL_FORMAT) : null,
    ),
  );
}

/** The columns of a block with the width that each is to have, in characters. */
export function wantedWidths({ address, columnWidths = [] }: CellBlock): {
  readonly column: number;
  readonly characters: number;
}[] {
  const first = cellPosition(address).column;
  return columnWidths.map((characters, right) => ({ column: first + right, characters }));
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

/**
 * Throws where a cell of a block holds something else than what was written. One that is blank is taken out already:
 * by hand, or by an attempt that broke off.
 */
export function refuseChangedBlock(block: WrittenBlock, found: (at: CellPosition) => StandingCell): void {
  for (const { at, cell } of filledCells(block)) {
    const is = found(at);
    if (is !== null && !isSame(cell, is))
      throw cellChanged(block.sheet, cellAddress(at), shownCell(cell), shownCell(is));
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
  const meant = (cell: BlockCell): StandingCell => {
    const content = contentOf(cell);
    return typeof content === "object" && content !== null && "formula" in content ? content : plainValue(content);
  };
  return cells.map((row) => row.map(meant));
}

/** The cells of a block as a host holds them; null where nothing was meant. */
export function standingCells(block: CellBlock, found: (at: CellPosition) => StandingCell): StandingCell[][] {
  const { row, column } = cellPosition(block.address);
  return meantCells(block).map((line, down) =>
    line.map((cell, right) => (cell === null ? null : found({ row: row + down, column: column + right }))),
  );
}
