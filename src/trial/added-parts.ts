import { changed, type ChangingPackage } from "../xlsx/change-package";
import type { WorkbookModel } from "../xlsx/model";
import type { WorkbookPackage } from "../xlsx/package";
import { addSheet } from "../xlsx/edit/add-sheet";
import { addTable } from "../xlsx/edit/add-table";
import { removeLastSheet } from "../xlsx/edit/remove-sheet";
import { removeTable } from "../xlsx/edit/remove-table";
import { readPackage } from "../xlsx/read";
import type { EditedSheet } from "../xlsx/save-edits";

/** A workbook file and what it was read as. */
export interface WorkbookFile {
  readonly file: WorkbookPackage;
  readonly model: WorkbookModel;
}

/** The file with those sheets that the pane has added to the grid since. */
export function withAddedSheets(start: WorkbookFile, names: readonly string[], ids: readonly string[]): WorkbookFile {
  const added = names.filter((name) => !start.model.sheets.some((sheet) => sheet.name === name));
  if (added.length === 0) return start;
  const file = changed(start.file, (changing) => {
    for (const name of added) addSheet(changing, name);
  });
  return { file, model: readPackage(file, ids) };
}

/** The file without those sheets and tables that were taken back in the grid. Only sheets at the end can have gone. */
export function withoutTakenParts(
  start: WorkbookFile,
  sheets: readonly EditedSheet[],
  ids: readonly string[],
): WorkbookFile {
  const names = new Set(sheets.map(({ name }) => name));
  const tables = new Set(sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name)));
  const left = Math.max(...start.model.sheets.map(({ name }, index) => (names.has(name) ? index + 1 : 0)));
  const [kept, gone] = [start.model.sheets.slice(0, left), start.model.sheets.slice(left)];
  const plain = kept.flatMap((sheet) => sheet.tables).filter(({ name }) => !tables.has(name));
  if (gone.length === 0 && plain.length === 0) return start;
  const file = changed(start.file, (changing) => {
    for (let last = gone.length; last > 0; last--) removeLastSheet(changing);
    for (const { name } of plain) removeTable(changing, name);
  });
  return { file, model: readPackage(file, ids) };
}

/** Sheets with only those tables that the file knows. */
export function withoutAddedTables(sheets: readonly EditedSheet[], model: WorkbookModel): EditedSheet[] {
  const known = tableNames(model);
  return sheets.map((sheet) => ({ ...sheet, tables: sheet.tables.filter(({ name }) => known.has(name)) }));
}

/** Adds those tables to a file that the pane has added, over cells that are in it already. */
export function addTables(
  file: ChangingPackage,
  sheets: readonly EditedSheet[],
  model: WorkbookModel,
  ids: readonly string[],
): void {
  const known = tableNames(model);
  for (const { name: sheet, tables, contents } of sheets) {
    for (const { name, area } of tables.filter((table) => !known.has(table.name))) {
      const columns = Array.from({ length: area.lastColumn - area.firstColumn + 1 }, (_, right) => {
        const column = area.firstColumn + right;
        const cell = contents.find((content) => content.row === area.firstRow && content.column === column);
        return { heading: String(cell?.value ?? "") };
      });
      addTable(file, { name, sheet, area, columns }, ids);
    }
  }
}

function tableNames(model: WorkbookModel): ReadonlySet<string> {
  return new Set(model.sheets.flatMap(({ tables }) => tables.map(({ name }) => name)));
}
