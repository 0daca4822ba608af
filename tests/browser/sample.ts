import type { Page } from "playwright-core";

/** A table of the sample as it stands in the grid. Rows and columns as addresses name them: 1 is the first row. */
export interface SampleTable {
  /** Column letters by heading. */
  readonly columns: Readonly<Record<string, string>>;
  readonly firstRow: number;
  readonly lastRow: number;
  /** Raw values, row by row, by heading. Days are serial numbers. */
  readonly rows: readonly Readonly<Record<string, unknown>>[];
}

/** Reads a table of the open workbook. */
export async function readTable(page: Page, sheet: string, table: string): Promise<SampleTable> {
  const { range, values } = await page.evaluate(
    ([sheetName, tableName]) => {
      const worksheet = window.trialSession!.grid!.api.getActiveWorkbook()!.getSheetByName(sheetName)!;
      const { range } = worksheet.getSubTableInfos().find(({ name }) => name === tableName)!;
      const { startRow, startColumn, endRow, endColumn } = range;
      const cells = worksheet.getRange(startRow, startColumn, endRow - startRow + 1, endColumn - startColumn + 1);
      return { range, values: cells.getRawValues() as unknown[][] };
    },
    [sheet, table] as const,
  );
  const [headings = [], ...rows] = values;
  const letters = headings.map((heading, index) => [String(heading), letter(range.startColumn + index)]);
  return {
    columns: Object.fromEntries(letters) as Record<string, string>,
    firstRow: range.startRow + 2,
    lastRow: range.endRow + 1,
    rows: rows.map((row) => Object.fromEntries(row.map((value, index) => [String(headings[index]), value]))),
  };
}

/** A to Z are enough for the tables of the sample. */
function letter(column: number): string {
  return String.fromCharCode("A".charCodeAt(0) + column);
}

/** The address of a cell in a row of a table that meets a condition; the first one. */
export function cellWhere(
  { columns, firstRow, rows }: SampleTable,
  heading: string,
  condition: (row: Readonly<Record<string, unknown>>) => boolean,
): string {
  const index = rows.findIndex(condition);
  if (index < 0) throw new Error(`no row of the table meets the condition`);
  return `${columns[heading]!}${firstRow + index}`;
}

const UNIX_EPOCH_SERIAL = 25_569;
const MS_PER_DAY = 86_400_000;

/** A day so many days after a serial, as the sheet shows it. By the JS Date, which the functions do not use. */
export function dayAfter(serial: unknown, days: number): string {
  return new Date((Number(serial) + days - UNIX_EPOCH_SERIAL) * MS_PER_DAY).toISOString().slice(0, 10);
}
