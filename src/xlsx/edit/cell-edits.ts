import { cellNumber } from "../address";
import type { Area, CellModel, SheetModel } from "../model";
import type { EditedCell } from "./edited-workbook";

/** What is to be written: the cells whose content is not that of the file, and those to be emptied. */
export function cellEdits(before: SheetModel, contents: readonly EditedCell[]): EditedCell[] {
  const old = new Map<number, CellModel>();
  for (const cell of before.cells) old.set(numberOf(cell), cell);
  const kept = new Set<number>();
  const edits = new Map<number, EditedCell>();
  for (const cell of contents) {
    const number = numberOf(cell);
    kept.add(number);
    if (!holdsTheSame(old.get(number), cell)) edits.set(number, cell);
  }
  for (const [number, cell] of old)
    if (!kept.has(number) && hasContent(cell)) edits.set(number, { ...placeOf(cell), value: null });
  for (const cell of before.cells) {
    if (!cell.array || !edits.has(numberOf(cell))) continue;
    // What the former formula filled is nobody's any more; what the new one fills is written with the values.
    for (const filled of cellsOf(cell.array.area)) {
      const number = numberOf(filled);
      if (old.get(number)?.spilled && !kept.has(number)) edits.set(number, { ...filled, value: null });
    }
  }
  return [...edits.values()];
}

interface Place {
  readonly row: number;
  readonly column: number;
}

function numberOf({ row, column }: Place): number {
  return cellNumber(row, column);
}

function placeOf({ row, column }: Place): Place {
  return { row, column };
}

function cellsOf({ firstRow, lastRow, firstColumn, lastColumn }: Area): Place[] {
  const cells: Place[] = [];
  for (let row = firstRow; row <= lastRow; row++)
    for (let column = firstColumn; column <= lastColumn; column++) cells.push({ row, column });
  return cells;
}

function hasContent({ value, formula, spilled }: CellModel): boolean {
  return !spilled && (formula !== undefined || (value !== null && value !== ""));
}

function holdsTheSame(old: CellModel | undefined, { formula, value }: EditedCell): boolean {
  if (old === undefined || old.spilled) return false;
  if (old.formula !== undefined) return old.formula === formula;
  // An error that was typed as a value stands in the grid as a formula.
  if (typeof old.value === "object" && old.value !== null) return formula === old.value.error;
  return formula === undefined && old.value === value;
}
