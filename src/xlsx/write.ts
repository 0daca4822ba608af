import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { finishPackage } from "./write-package";
import { writeSheet } from "./write-sheet";
import { formulaForms } from "./stored-formula";
import type { ComputedValues, NewWorkbook } from "./write-model";
import { dateOfSerial } from "./write-values";

/**
 * Writes a new workbook. `ids` are the ids of the worksheet functions, whose calls are stored as add-in functions;
 * `computed` are the values saved with the formulas. The same workbook gives the same bytes on every machine.
 */
export async function writeWorkbook(
  book: NewWorkbook,
  ids: readonly string[],
  computed?: ComputedValues,
): Promise<Uint8Array> {
  installChartSupport();
  const workbook = new Workbook();
  workbook.creator = workbook.lastModifiedBy = book.author;
  workbook.created = workbook.modified = dateOfSerial(book.made);
  workbook.title = book.title;
  workbook.description = book.description;
  for (const { name, refersTo } of book.names) workbook.definedNames.add(refersTo, name);
  const { stored } = formulaForms(ids);
  const tables = book.sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name));
  const spelling = {
    stored: (formula: string, ownTable?: string) =>
      stored(formula, { tables, ...(ownTable === undefined ? {} : { ownTable }) }),
  };
  // Sheets are all there before a chart looks for the cells that it draws.
  const sheets = book.sheets.map((sheet) => writeSheet(workbook, sheet, spelling, computed));
  for (const addCharts of sheets) addCharts();
  return finishPackage(new Uint8Array(await workbook.xlsx.writeBuffer()), book);
}
