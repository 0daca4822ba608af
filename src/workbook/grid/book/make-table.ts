import { FormulaDataModel } from "@univerjs/engine-formula";
import type { TableRange } from "../../book-host";
import { namesTable } from "../../herd-formula";
import { areaText, type PlainArea } from "../../plain-book";
import { meets } from "../../plain-room";
import { cellsOccupied, nameTaken, sheetFiltered, sheetProtected, tableGone, tableInUse } from "../../table-error";
import { hasFormula, shownValue } from "../tables/cells";
import { knownTables } from "../tables/known-table";
import { addTable, type Change } from "../tables/mutations";
import type { OpenGrid } from "../tables/open-grid";
import { sheetOf } from "./edit-cells";
import { areaOf } from "./read-sheet";

export function tableChange(grid: OpenGrid, { sheet: sheetName, area, name }: TableRange): Change {
  const sheet = sheetOf(grid, sheetName);
  if (grid.protectedSheets.has(sheetName)) throw sheetProtected(sheetName);
  // A filter of the sheet and that of a table may not meet: Excel would mend the saved file by taking one away.
  if (grid.filteredSheets?.has(sheetName) === true) throw sheetFiltered(sheetName);
  const tables = knownTables(grid);
  if (tables.some(({ info }) => info.name.toLowerCase() === name.toLowerCase())) throw nameTaken(name);
  const met = tables.find((table) => table.sheet === sheet && meets(area)(areaOf(table)));
  if (met !== undefined) throw cellsOccupied(sheetName, areaText(areaOf(met)));
  const width = area.lastColumn - area.firstColumn + 1;
  const headings = Array.from({ length: width }, (_, right) =>
    String(shownValue(sheet.getCellRaw(area.firstRow, area.firstColumn + right)) ?? ""),
  );
  return addTable(grid, { id: `table-${name}`, sheetId: sheet.getSheetId(), name, range: rangeOf(area), headings });
}

export function plainRangeChange(grid: OpenGrid, name: string): Change {
  const table = knownTables(grid).find(({ info }) => info.name === name);
  if (table === undefined) throw tableGone(name);
  if (grid.protectedSheets.has(table.info.sheet)) throw sheetProtected(table.info.sheet);
  const user = sheetNaming(grid, name);
  if (user !== undefined) throw tableInUse(name, user);
  const headings = table.info.columns.map(({ heading }) => heading);
  const sheetId = table.sheet.getSheetId();
  const { redo, undo } = addTable(grid, { id: table.id, sheetId, name, range: rangeOf(areaOf(table)), headings });
  return { redo: undo!, undo: redo };
}

function rangeOf({ firstRow, firstColumn, lastRow, lastColumn }: PlainArea) {
  return { startRow: firstRow, startColumn: firstColumn, endRow: lastRow, endColumn: lastColumn };
}

/** Name of a sheet with a formula that names the table. */
function sheetNaming({ workbook, injector }: OpenGrid, table: string): string | undefined {
  const formulas = injector.get(FormulaDataModel);
  const unitId = workbook.getUnitId();
  for (const sheet of workbook.getSheets()) {
    let found = false;
    sheet.getCellMatrix().forValue((row, column, cell) => {
      if (found || !hasFormula(cell)) return;
      const formula = formulas.getFormulaStringByCell(row, column, sheet.getSheetId(), unitId) ?? "";
      found = namesTable(formula, table);
    });
    if (found) return sheet.getName();
  }
  return undefined;
}
