import type { SheetModel } from "../model";
import type { ScannedCell, ScannedSheet } from "../save/scan";
import { attributeOf } from "../save/tags";
import type { EditedCell } from "./edited-workbook";

/**
 * A file may write a formula once, in one cell, for many that share it. Where that one is edited, the others are
 * given their formula themselves.
 */
export function unshared(sheet: ScannedSheet, before: SheetModel, edits: readonly EditedCell[]): EditedCell[] {
  const edited = new Set(edits.map(placeKey));
  const cells = sheet.rows.flatMap((row) => row.cells);
  const lost = new Set(cells.filter((cell) => isShared(cell) && edited.has(placeKey(cell))).map(shareNumber));
  if (lost.size === 0) return [];
  const formulas = new Map(before.cells.map((cell) => [placeKey(cell), cell.formula]));
  return cells
    .filter((cell) => isShared(cell) && lost.has(shareNumber(cell)) && !edited.has(placeKey(cell)))
    .flatMap((cell) => {
      const formula = formulas.get(placeKey(cell));
      return formula === undefined ? [] : [{ row: cell.row, column: cell.column, formula, value: null }];
    });
}

function placeKey({ row, column }: { readonly row: number; readonly column: number }): string {
  return `${row},${column}`;
}

function isShared({ formula }: ScannedCell): boolean {
  return formula !== undefined && attributeOf(formula.attributes, "t") === "shared";
}

function shareNumber({ formula }: ScannedCell): string | undefined {
  return attributeOf(formula?.attributes ?? "", "si");
}
