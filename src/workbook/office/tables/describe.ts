import type { ColumnInfo, TableInfo } from "../../table-port";
import { isFormula } from "./cells";

/** A table as it lies in the workbook. */
export interface ExcelTable {
  readonly id: string;
  readonly info: TableInfo;
  readonly hasTotals: boolean;
  /** Rows between headings and totals, blank ones at the end too. */
  readonly bodyRows: number;
  /** Place of the first row below the headings on its sheet, counted from 0. */
  readonly row: number;
  readonly column: number;
  /** Formulas that fill the calculated columns, in R1C1; undefined for typed columns. */
  readonly fills: readonly (string | undefined)[];
  /** Number formats of the columns. */
  readonly formats: readonly string[];
}

/** Describes all tables of the workbook, in two questions to Excel where no table ends in blank rows. */
export async function describeTables(context: Excel.RequestContext): Promise<ExcelTable[]> {
  const { tables } = context.workbook;
  tables.load("items/id,items/name,items/showTotals");
  await context.sync();
  const asked = tables.items.map((table) => ask(context, table));
  await context.sync();
  const described: ExcelTable[] = [];
  for (const table of asked) described.push(await describe(context, table));
  return described;
}

interface Asked {
  readonly id: string;
  readonly name: string;
  readonly hasTotals: boolean;
  readonly columns: Excel.TableColumnCollection;
  readonly sheet: Excel.Worksheet;
  readonly protection: Excel.WorksheetProtection;
  readonly filter: Excel.AutoFilter;
  readonly body: Excel.Range;
  readonly firstRow: Excel.Range;
  readonly lastRow: Excel.Range;
}

function ask(context: Excel.RequestContext, { id, name, showTotals }: Excel.Table): Asked {
  const table = context.workbook.tables.getItem(id);
  const { columns, worksheet: sheet, autoFilter: filter } = table;
  const { protection } = sheet;
  const body = table.getDataBodyRange();
  const firstRow = body.getRow(0);
  const lastRow = body.getLastRow();
  columns.load("items/name");
  sheet.load("name");
  protection.load("protected");
  filter.load("isDataFiltered");
  body.load("rowIndex,columnIndex,rowCount");
  firstRow.load("values,formulas,formulasR1C1,numberFormat");
  lastRow.load("values,formulas,formulasR1C1,numberFormat");
  return { id, name, hasTotals: showTotals, columns, sheet, protection, filter, body, firstRow, lastRow };
}

/** What was asked for, once it is synced. */
async function describe(context: Excel.RequestContext, asked: Asked): Promise<ExcelTable> {
  const { id, name, hasTotals, body } = asked;
  const { rowIndex, columnIndex, rowCount: bodyRows } = body;
  const { rowCount, pattern } = await lastFilledRow(context, asked);
  const [ofLast, ofFirst] = [fillsOf(pattern), fillsOf(asked.firstRow)];
  const fills = ofLast.map((fill, at) => fill ?? ofFirst[at]);
  const columns = asked.columns.items.map((column, at): ColumnInfo => ({
    heading: column.name,
    calculated: fills[at] !== undefined,
  }));
  return {
    id,
    info: {
      name,
      sheet: asked.sheet.name,
      columns,
      rowCount,
      protected: asked.protection.protected,
      filtered: asked.filter.isDataFiltered,
    },
    hasTotals,
    bodyRows,
    row: rowIndex,
    column: columnIndex,
    fills,
    formats: (pattern.numberFormat[0] ?? []).map(String),
  };
}

/** The formulas of a row, in R1C1. One is enough to tell a calculated column: a cell of it may have been typed over. */
function fillsOf({ values, formulas, formulasR1C1 }: Excel.Range): (string | undefined)[] {
  const [row = [], spelled = []]: unknown[][] = [formulas[0] ?? [], formulasR1C1[0] ?? []];
  return row.map((formula, at) => (isFormula(formula, values[0]?.[at]) ? String(spelled[at]) : undefined));
}

/** Rows looked at together in search of the last one that is not blank. */
const ROWS_AT_ONCE = 200;

/** How many rows are filled, and the row after whose pattern new ones are made: the last filled one, or the first. */
async function lastFilledRow(
  context: Excel.RequestContext,
  { id, body, firstRow, lastRow }: Asked,
): Promise<{ readonly rowCount: number; readonly pattern: Excel.Range }> {
  if (isFilled(lastRow, 0)) return { rowCount: body.rowCount, pattern: lastRow };
  for (let end = body.rowCount - 1; end > 0; end -= ROWS_AT_ONCE) {
    const start = Math.max(0, end - ROWS_AT_ONCE);
    const rows = context.workbook.tables.getItem(id).getDataBodyRange();
    const block = rows.getRow(start).getResizedRange(end - start - 1, 0);
    block.load("values,formulas");
    // The next block is read only where this one is blank.
    await context.sync();
    for (let row = end - start - 1; row >= 0; row--) {
      if (!isFilled(block, row)) continue;
      const pattern = rows.getRow(start + row);
      pattern.load("values,formulas,formulasR1C1,numberFormat");
      // Done once, on the way out.
      await context.sync();
      return { rowCount: start + row + 1, pattern };
    }
  }
  return { rowCount: 0, pattern: firstRow };
}

function isFilled({ values, formulas }: Excel.Range, row: number): boolean {
  const cells: readonly unknown[] = values[row] ?? [];
  return cells.some((value, column) => value !== "" && !isFormula(formulas[row]?.[column], value));
}
