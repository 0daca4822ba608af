import type { IRange, Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { ColumnRuns } from "../../column-runs";
import { isDateFormat } from "../../number-format";
import { isSeveral, type PlainArea, type PlainSheet } from "../../plain-book";
import type { PlainCell } from "../../port";
import { hasFormula, shownValue } from "../tables/cells";
import { knownTables, type SheetTable } from "../tables/known-table";
import type { OpenGrid } from "../tables/open-grid";

/** A sheet of the grid as plain values, what formulas fill from elsewhere included. */
export function plainSheet(grid: OpenGrid, sheet: Worksheet): PlainSheet {
  const isDay = dayFormats(grid);
  const rows: PlainCell[][] = [];
  const days = new ColumnRuns();
  const formulas = new ColumnRuns();
  const put = (row: number, column: number, value: PlainCell): void => {
    while (rows.length <= row) rows.push([]);
    const line = rows[row]!;
    while (line.length < column) line.push(null);
    line[column] = value;
  };
  // The grid hands its cells over row by row.
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const value = shownValue(cell);
    const isFormula = hasFormula(cell);
    if (isFormula) formulas.add(row, column);
    if (value === null && !isFormula) return;
    put(row, column, value);
    if (typeof value === "number" && isDay(cell)) days.add(row, column);
  });
  for (const { row, column, value } of spilledCells(grid, sheet)) {
    put(row, column, value);
    formulas.add(row, column);
  }
  const tables = knownTables(grid).filter((table) => table.sheet === sheet);
  const spills = spillsOf(grid, sheet)
    .map(({ range }) => plainArea(range))
    .filter(isSeveral);
  return {
    name: sheet.getName(),
    rows,
    tables: tables.map((table) => ({
      name: table.info.name,
      area: areaOf(table),
      calculated: table.info.columns.filter(({ calculated }) => calculated).map(({ heading }) => heading),
    })),
    days: days.areas,
    formulas: formulas.areas,
    ...(spills.length === 0 ? {} : { spills }),
    merges: sheet.getMergeData().map(plainArea),
    ...(sheet.isSheetHidden() ? { hidden: true } : {}),
  };
}

export function plainArea({ startRow, startColumn, endRow, endColumn }: IRange): PlainArea {
  return { firstRow: startRow, firstColumn: startColumn, lastRow: endRow, lastColumn: endColumn };
}

export function areaOf({ firstRow, firstColumn, bodyRows, info }: SheetTable): PlainArea {
  return {
    firstRow: firstRow - 1,
    firstColumn,
    lastRow: firstRow - 1 + bodyRows,
    lastColumn: firstColumn + info.columns.length - 1,
  };
}

/** Thousands of cells share one style: each is looked up once. */
function dayFormats({ workbook }: OpenGrid): (cell: Parameters<typeof shownValue>[0]) => boolean {
  const styles = workbook.getStyles();
  const known = new Map<unknown, boolean>();
  return (cell) => {
    const style = cell?.s;
    let isDay = known.get(style);
    if (isDay === undefined) {
      isDay = isDateFormat(styles.getStyleByCell(cell)?.n?.pattern);
      known.set(style, isDay);
    }
    return isDay;
  };
}

/** What formulas fill, by the row and column of the formula. */
type Spills = Readonly<Record<number, Readonly<Record<number, IRange>>>>;

/** Cells that the formula of another cell fills. */
export function spilledCells(
  { workbook, injector }: OpenGrid,
  sheet: Worksheet,
): { readonly row: number; readonly column: number; readonly value: PlainCell }[] {
  const values = injector.get(FormulaDataModel).getArrayFormulaCellData()[workbook.getUnitId()]?.[sheet.getSheetId()];
  return spillsOf({ workbook, injector }, sheet).flatMap(({ anchorRow, anchorColumn, range }) => {
    const { startRow, startColumn, endRow, endColumn } = range;
    const cells: { row: number; column: number; value: PlainCell }[] = [];
    for (let row = startRow; row <= endRow; row++) {
      for (let column = startColumn; column <= endColumn; column++) {
        if (row === anchorRow && column === anchorColumn) continue;
        cells.push({ row, column, value: shownValue(values?.[row]?.[column]) });
      }
    }
    return cells;
  });
}

/** What each formula fills that may fill more than its own cell. */
function spillsOf(
  { workbook, injector }: Pick<OpenGrid, "workbook" | "injector">,
  sheet: Worksheet,
): { readonly anchorRow: number; readonly anchorColumn: number; readonly range: IRange }[] {
  const known = injector.get(FormulaDataModel).getArrayFormulaRange();
  const ranges: Spills = known[workbook.getUnitId()]?.[sheet.getSheetId()] ?? {};
  return Object.entries(ranges).flatMap(([row, anchors]) =>
    Object.entries(anchors).map(([column, range]) => ({
      anchorRow: Number(row),
      anchorColumn: Number(column),
      range,
    })),
  );
}
