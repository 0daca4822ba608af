import { cellAddress, cellPosition, type CellPosition } from "../../cell-address";
import { ISO_DATE } from "../../number-format";
import { cellsOccupied, hostFailed, hostUncertain, nameTaken, sheetProtected } from "../../table-error";
import { isDay, type NewTable } from "../../table-port";
import { enteredValue, marksMissing } from "./cells";
import { describeTables, type ExcelTable } from "./describe";
import { knownError } from "./errors";
import type { RunExcel } from "./run";

/** A block of free cells on a sheet that may have to be made. */
export interface Site {
  readonly sheet: string;
  readonly isNew: boolean;
  readonly at: CellPosition;
  readonly rows: number;
  readonly columns: number;
}

export async function createTable(run: RunExcel, table: NewTable): Promise<void> {
  const { name, sheet, address = "A1", columns, rows } = table;
  const at = cellPosition(address);
  await make(
    run,
    { sheet, at, rows: Math.max(1, rows.length) + 1, columns: columns.length },
    {
      check: (tables) => {
        if (tables.some(({ info }) => info.name.toLowerCase() === name.toLowerCase())) throw nameTaken(name);
      },
      queue: (context, site) => queueTable(context, site, table),
      texts: [columns.map(({ heading }) => heading), ...rows.map((row) => columns.map(({ heading }) => row[heading]))],
    },
  );
}

export interface Making {
  /** Throws where the workbook does not allow it. */
  check(tables: readonly ExcelTable[]): void;
  /** Reads what writing changes besides the cells. */
  prepare?(context: Excel.RequestContext, site: Site): Promise<void>;
  queue(context: Excel.RequestContext, site: Site): void;
  /** Clears away what was written besides the cells, once these are cleared. */
  clearAway?(context: Excel.RequestContext): Promise<void>;
  /** What is written, row by row: text must stand as text. */
  readonly texts: readonly (readonly unknown[])[];
}

export interface Made {
  /** The sheet was made. */
  readonly isNew: boolean;
  /** The cells as they were just after writing. */
  readonly written: Excel.Range;
}

/** Checks that a block is free, writes, and clears away what was written if writing breaks off. */
export async function make(run: RunExcel, wanted: Omit<Site, "isNew">, making: Making): Promise<Made> {
  let begun: Site | undefined;
  try {
    return await run(async (context) => {
      const tables = await describeTables(context);
      making.check(tables);
      const site = await freeSite(context, wanted, tables);
      await making.prepare?.(context, site);
      begun = site;
      if (site.isNew) context.workbook.worksheets.add(site.sheet);
      making.queue(context, site);
      const written = rangeOf(context, site);
      written.load("values,formulas");
      await context.sync();
      const marked = marksMissing(written.values, making.texts);
      const made = { isNew: site.isNew, written };
      if (marked === undefined) return made;
      rangeOf(context, site).values = marked;
      await context.sync();
      return made;
    });
  } catch (error) {
    const site = begun;
    if (site !== undefined) {
      await run((context) => clearAway(context, site, making)).catch(() => {
        throw hostUncertain(error);
      });
    }
    throw knownError(error) ?? hostFailed(error);
  }
}

async function freeSite(
  context: Excel.RequestContext,
  wanted: Omit<Site, "isNew">,
  tables: readonly ExcelTable[],
): Promise<Site> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(wanted.sheet);
  sheet.load("name");
  await context.sync();
  if (sheet.isNullObject) return { ...wanted, isNew: true };
  const site = { ...wanted, isNew: false };
  const { protection } = sheet;
  protection.load("protected");
  const range = rangeOf(context, site);
  range.load("values");
  await context.sync();
  if (protection.protected) throw sheetProtected(site.sheet);
  const used = firstUsed(range.values, site.at) ?? firstInTable(site, tables);
  if (used !== undefined) throw cellsOccupied(site.sheet, cellAddress(used));
  return site;
}

function firstUsed(values: readonly (readonly unknown[])[], { row, column }: CellPosition): CellPosition | undefined {
  const down = values.findIndex((cells) => cells.some((value) => value !== ""));
  if (down < 0) return undefined;
  return { row: row + down, column: column + values[down]!.findIndex((value) => value !== "") };
}

function firstInTable({ sheet, at, rows, columns }: Site, tables: readonly ExcelTable[]): CellPosition | undefined {
  const met = tables.find(
    (table) =>
      table.info.sheet === sheet &&
      table.row - 1 < at.row + rows &&
      table.row + table.bodyRows + (table.hasTotals ? 1 : 0) > at.row &&
      table.column < at.column + columns &&
      table.column + table.info.columns.length > at.column,
  );
  return met && { row: Math.max(met.row - 1, at.row), column: Math.max(met.column, at.column) };
}

export function rangeOf(context: Excel.RequestContext, { sheet, at, rows, columns }: Omit<Site, "isNew">): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(at.row, at.column, rows, columns);
}

function queueTable(context: Excel.RequestContext, site: Site, { name, columns, rows }: NewTable): void {
  const range = rangeOf(context, site);
  const bodyRows = Math.max(1, rows.length);
  range.values = [
    columns.map(({ heading }) => enteredValue(heading)),
    ...Array.from({ length: bodyRows }, (_, at) =>
      columns.map(({ heading, formula }) =>
        formula === undefined ? enteredValue(rows[at]?.[heading] ?? undefined) : null,
      ),
    ),
  ];
  const formats = columns.map(
    ({ heading, numberFormat }) => numberFormat ?? (rows.some((row) => isDay(row[heading])) ? ISO_DATE : null),
  );
  range.numberFormat = [columns.map(() => null), ...Array.from({ length: bodyRows }, () => formats)];
  const { tables } = context.workbook.worksheets.getItem(site.sheet);
  const table = tables.add(range, true);
  table.name = name;
  if (columns.some(({ formula }) => formula !== undefined)) {
    const formulas = columns.map(({ formula }) => (formula === undefined ? null : `=${formula}`));
    table.getDataBodyRange().formulas = Array.from({ length: bodyRows }, () => formulas);
  }
}

async function clearAway(context: Excel.RequestContext, site: Site, making: Making): Promise<void> {
  const made = (await describeTables(context)).find((table) => firstInTable(site, [table]) !== undefined);
  const sheet = context.workbook.worksheets.getItemOrNullObject(site.sheet);
  sheet.load("name");
  await context.sync();
  if (sheet.isNullObject) return;
  if (site.isNew) sheet.delete();
  else {
    if (made !== undefined) context.workbook.tables.getItem(made.id).delete();
    rangeOf(context, site).clear();
    await making.clearAway?.(context);
  }
  await context.sync();
}
