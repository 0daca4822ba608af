import type { Worksheet } from "@univerjs/core";
import type { AppliedCell, CellEdit } from "../../book-host";
import { cellPosition } from "../../cell-address";
import { formatFor, GENERAL_FORMAT } from "../../number-format";
import { areaText, holds } from "../../plain-book";
import { plainValue } from "../../saving/row-match";
import { cellCalculated, cellChanged, cellsMerged, headingInTable, sheetGone, sheetProtected } from "../../table-error";
import { type Cells, formatCell, hasFormula, put, shownValue, valueCell } from "../tables/cells";
import { knownTables, type SheetTable } from "../tables/known-table";
import { cellsChange, type Change } from "../tables/mutations";
import type { OpenGrid } from "../tables/open-grid";
import { areaOf, plainArea, spilledCells } from "./read-sheet";

export function sheetOf({ workbook }: OpenGrid, name: string): Worksheet {
  const sheet = workbook.getSheetBySheetName(name);
  if (sheet === undefined || sheet === null) throw sheetGone(name);
  return sheet;
}

/** The changes that make edits, and what they leave. Throws where one of them is refused. */
export function editChanges(
  grid: OpenGrid,
  edits: readonly CellEdit[],
): { readonly changes: readonly Change[]; readonly applied: readonly AppliedCell[] } {
  const bySheet = new Map<string, SheetEdits>();
  const applied = edits.map((edit) => {
    const known = bySheet.get(edit.sheet) ?? sheetEdits(grid, edit.sheet);
    bySheet.set(edit.sheet, known);
    return editCell(grid, known, edit);
  });
  const changes = [...bySheet.values()].map(({ sheet, cells }) => cellsChange(grid, sheet.getSheetId(), cells));
  return { changes, applied };
}

interface SheetEdits {
  readonly sheet: Worksheet;
  readonly tables: readonly SheetTable[];
  readonly spilled: ReadonlySet<string>;
  readonly cells: Cells;
}

function sheetEdits(grid: OpenGrid, name: string): SheetEdits {
  const sheet = sheetOf(grid, name);
  if (grid.protectedSheets.has(name)) throw sheetProtected(name);
  return {
    sheet,
    tables: knownTables(grid).filter((table) => table.sheet === sheet),
    spilled: new Set(spilledCells(grid, sheet).map(({ row, column }) => `${row},${column}`)),
    cells: {},
  };
}

function editCell(grid: OpenGrid, { sheet, tables, spilled, cells }: SheetEdits, edit: CellEdit): AppliedCell {
  const { sheet: name, address, was, set } = edit;
  const { row, column } = cellPosition(address);
  const merge = sheet.getMergedCell(row, column);
  if (merge && (merge.startRow !== row || merge.startColumn !== column)) {
    throw cellsMerged(name, areaText(plainArea(merge)));
  }
  const headed = tables.find((table) => table.firstRow - 1 === row && holds(areaOf(table), row, column));
  if (headed !== undefined) throw headingInTable(headed.info.name, address);
  const cell = sheet.getCellRaw(row, column);
  if (hasFormula(cell) || spilled.has(`${row},${column}`)) throw cellCalculated(name, address);
  const shown = shownValue(cell);
  const is = typeof shown === "string" && shown.trim() === "" ? null : shown;
  if (is !== was) throw cellChanged(name, address, was, is);
  const own = grid.workbook.getStyles().getStyleByCell(cell)?.n?.pattern;
  const numberFormat = edit.numberFormat ?? formatFor(set, own);
  put(cells, row, column, { ...valueCell(set), ...(numberFormat === undefined ? {} : formatCell(numberFormat)) });
  const formatBefore = numberFormat === undefined ? {} : { formatBefore: own ?? GENERAL_FORMAT };
  return { sheet: name, address, before: was, after: plainValue(set), ...formatBefore };
}
