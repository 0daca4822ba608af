import type { WorkbookModel } from "../xlsx/model";
import { addSheet } from "../xlsx/edit/add-sheet";
import { addTable } from "../xlsx/edit/add-table";
import { removeLastSheet } from "../xlsx/edit/remove-sheet";
import { removeTable } from "../xlsx/edit/remove-table";
import { readWorkbook } from "../xlsx/read";
import type { EditedSheet } from "../xlsx/save-edits";

/** A workbook file and what it was read as. */
export interface WorkbookFile {
  readonly bytes: Uint8Array;
  readonly model: WorkbookModel;
}

/** The file with those sheets that the pane has added to the grid since. */
export function withAddedSheets(file: WorkbookFile, names: readonly string[], ids: readonly string[]): WorkbookFile {
  const added = names.filter((name) => !file.model.sheets.some((sheet) => sheet.name === name));
  if (added.length === 0) return file;
  const bytes = added.reduce(addSheet, file.bytes);
  return { bytes, model: readWorkbook(bytes, ids) };
}

/** The file without those sheets and tables that were taken back in the grid. Only sheets at the end can have gone. */
export function withoutTakenParts(
  file: WorkbookFile,
  sheets: readonly EditedSheet[],
  ids: readonly string[],
): WorkbookFile {
  const names = new Set(sheets.map(({ name }) => name));
  const tables = new Set(sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name)));
  const left = Math.max(...file.model.sheets.map(({ name }, index) => (names.has(name) ? index + 1 : 0)));
  const [kept, gone] = [file.model.sheets.slice(0, left), file.model.sheets.slice(left)];
  const plain = kept.flatMap((sheet) => sheet.tables).filter(({ name }) => !tables.has(name));
  if (gone.length === 0 && plain.length === 0) return file;
  const withoutSheets = gone.reduce(removeLastSheet, file.bytes);
  const bytes = plain.reduce((start, { name }) => removeTable(start, name), withoutSheets);
  return { bytes, model: readWorkbook(bytes, ids) };
}

/** Sheets with only those tables that the file knows. */
export function withoutAddedTables(sheets: readonly EditedSheet[], model: WorkbookModel): EditedSheet[] {
  const known = tableNames(model);
  return sheets.map((sheet) => ({ ...sheet, tables: sheet.tables.filter(({ name }) => known.has(name)) }));
}

/** The file with those tables that the pane has added, over cells that are in it already. */
export function withAddedTables(
  bytes: Uint8Array,
  sheets: readonly EditedSheet[],
  model: WorkbookModel,
  ids: readonly string[],
): Uint8Array {
  const known = tableNames(model);
  return sheets.reduce(
    (start, { name: sheet, tables, contents }) =>
      tables
        .filter(({ name }) => !known.has(name))
        .reduce((file, { name, area }) => {
          const columns = Array.from({ length: area.lastColumn - area.firstColumn + 1 }, (_, right) => {
            const column = area.firstColumn + right;
            const cell = contents.find((content) => content.row === area.firstRow && content.column === column);
            return { heading: String(cell?.value ?? "") };
          });
          return addTable(file, { name, sheet, area, columns }, ids);
        }, start),
    bytes,
  );
}

function tableNames(model: WorkbookModel): ReadonlySet<string> {
  return new Set(model.sheets.flatMap(({ tables }) => tables.map(({ name }) => name)));
}
