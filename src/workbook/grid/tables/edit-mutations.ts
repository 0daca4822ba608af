import type { ICellData } from "@univerjs/core";
import { SetSheetTableMutation } from "@univerjs/sheets-table";
import { isDateFormat } from "../../number-format";
import type { RowWrite, TablePlan } from "../../saving/edit-plan";
import { TableError, tableFull } from "../../table-error";
import { isDay } from "../../table-port";
import { type Cells, formatCell, formulaCell, hasFormula, isBlank, put, shownValue, valueCell } from "./cells";
import type { SheetTable } from "./known-table";
import { cellsChange, type Change, followingMutations, inSequence, type Mutations, resizeChange } from "./mutations";
import type { OpenGrid } from "./open-grid";

/** The mutations that do what a plan says in one table. Throws where there is no room. */
export function editMutations(grid: OpenGrid, table: SheetTable, plan: TablePlan): Mutations {
  if (plan.remove.length > 0) return removal(grid, table, new Set(plan.remove));
  const writes = [...plan.set, ...plan.append];
  const below = plan.append.filter(({ index }) => index >= table.bodyRows).length;
  if (below > 0) refuseFull(grid, table, below);
  const cells: Cells = {};
  for (const write of writes) putValues(cells, table, write);
  const growth = grown(grid, table, below, cells);
  for (const { index } of plan.append) if (!growth.fillsDown || index < table.bodyRows) fillDown(cells, table, index);
  // All in one: the grid looks through every formula of the workbook at each change of cells.
  const own = inSequence([cellsChange(grid, table.sheet.getSheetId(), cells)]);
  return { redos: [...growth.redos, ...own.redos], undos: [...own.undos, ...growth.undos] };
}

/** Values in their cells; a day with a date format where the cell, or the one above a new row, has none. */
function putValues(cells: Cells, table: SheetTable, { index, cells: values }: RowWrite): void {
  values.forEach((value, column) => {
    if (value === undefined) return;
    const isDated = isDateFormat(table.numberFormat(Math.min(index, table.bodyRows - 1), column));
    const format = isDay(value) && !isDated ? formatCell() : {};
    put(cells, table.firstRow + index, table.firstColumn + column, { ...valueCell(value), ...format });
  });
}

/** The table takes in the rows below it. The page does so by itself where one types; elsewhere it is done here. */
function grown(
  grid: OpenGrid,
  table: SheetTable,
  below: number,
  values: Cells,
): Mutations & { readonly fillsDown: boolean } {
  if (below === 0) return { redos: [], undos: [], fillsDown: false };
  const following = followingMutations(grid, table.sheet.getSheetId(), values);
  if (following.redos.some(({ id }) => id === SetSheetTableMutation.id)) return { ...following, fillsDown: true };
  const resize = resizeChange(grid, table, table.bodyRows + below);
  const styles: Cells = {};
  table.info.columns.forEach((_, column) => {
    const style = table.cell(table.bodyRows - 1, column)?.s;
    for (let row = table.bodyRows; style && row < table.bodyRows + below; row++) {
      put(styles, table.firstRow + row, table.firstColumn + column, { s: style });
    }
  });
  const steps: Change[] = [resize];
  if (!isBlank(styles)) steps.push(cellsChange(grid, table.sheet.getSheetId(), styles));
  return { ...inSequence(steps), fillsDown: false };
}

function fillDown(cells: Cells, table: SheetTable, index: number): void {
  table.info.columns.forEach((_, column) => {
    const formula = table.formulaFor(index, column);
    if (formula === undefined || hasFormula(table.cell(index, column))) return;
    put(cells, table.firstRow + index, table.firstColumn + column, formulaCell(formula));
  });
}

function refuseFull({ workbook }: OpenGrid, table: SheetTable, rows: number): void {
  const { sheet, info, firstColumn } = table;
  const first = table.firstRow + table.bodyRows;
  const full = tableFull(info.name, info.sheet);
  if (first + rows > sheet.getRowCount()) throw full;
  for (let row = first; row < first + rows; row++) {
    for (let column = firstColumn; column < firstColumn + info.columns.length; column++) {
      const cell = workbook.getSheetBySheetId(sheet.getSheetId())?.getCellRaw(row, column);
      if (hasFormula(cell) || shownValue(cell) !== null) throw full;
    }
  }
}

/** Moves the rows below up; the rows that become free at the end leave the table. */
function removal(grid: OpenGrid, table: SheetTable, removed: ReadonlySet<number>): Mutations {
  if (table.info.filtered === true) {
    throw new TableError("filtered", `Table ${table.info.name} is filtered: clear the filter, then take back again.`);
  }
  const kept = Array.from({ length: table.bodyRows }, (_, index) => index).filter((index) => !removed.has(index));
  const cells: Cells = {};
  const first = Math.min(...removed);
  for (let index = first; index < table.bodyRows; index++) {
    const from = kept[index];
    table.info.columns.forEach((_, column) => {
      const isLeft = index < Math.max(1, kept.length);
      put(cells, table.firstRow + index, table.firstColumn + column, movedCell(table, from, index, column, isLeft));
    });
  }
  return inSequence([
    cellsChange(grid, table.sheet.getSheetId(), cells),
    resizeChange(grid, table, Math.max(1, kept.length)),
  ]);
}

function movedCell(
  table: SheetTable,
  from: number | undefined,
  to: number,
  column: number,
  isLeft: boolean,
): ICellData {
  const fill = isLeft ? table.formulaFor(to, column) : undefined;
  if (fill !== undefined) return formulaCell(fill);
  if (from === undefined) return valueCell(null);
  if (hasFormula(table.cell(from, column)) && from !== to) {
    throw new TableError(
      "failed",
      `Rows of table ${table.info.name} hold formulas and cannot be moved up: delete the row by hand.`,
    );
  }
  return valueCell(shownValue(table.cell(from, column)));
}
