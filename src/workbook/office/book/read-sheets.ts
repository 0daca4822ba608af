import { ColumnRuns } from "../../column-runs";
import { isDateFormat } from "../../number-format";
import { cellAt, holds, type PlainArea, type PlainSheet, type PlainTable } from "../../plain-book";
import type { PlainCell } from "../../port";
import { plainCell } from "../../saving/row-match";
import { areaOf, mergedAreasOf } from "../merged-areas";
import { isFormula } from "../tables/cells";
import { describeTables, type ExcelTable } from "../tables/describe";
import { readPages } from "./read-pages";

/** Formulas that are asked at once how far they spill. */
const FORMULAS_AT_ONCE = 1000;

/** The sheets of these names, or all of them, as plain values. One that is gone is left out. */
export async function readSheets(context: Excel.RequestContext, wanted?: readonly string[]): Promise<PlainSheet[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name,items/visibility");
  await context.sync();
  const tables = await describeTables(context);
  const read = worksheets.items.filter(({ name }) => wanted?.includes(name) ?? true);
  const names = read.map(({ name }) => name);
  const merges = await mergedAreasOf(context, names);
  const asked = read.map(({ name, visibility }) => ({
    name,
    hidden: visibility !== "Visible",
    used: askUsed(context, name),
  }));
  await context.sync();
  const sheets: PlainSheet[] = [];
  for (const { name, hidden, used } of asked) {
    const own = tables.filter(({ info }) => info.sheet === name).map(plainTable);
    const cells = used.isNullObject ? NOTHING : await readCells(context, name, areaOf(used), own);
    sheets.push({ name, ...cells, tables: own, merges: merges.get(name) ?? [], ...(hidden ? { hidden } : {}) });
  }
  return sheets;
}

const NOTHING = { rows: [], days: [], formulas: [] };

function askUsed(context: Excel.RequestContext, name: string): Excel.Range {
  const used = context.workbook.worksheets.getItem(name).getUsedRangeOrNullObject();
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  return used;
}

export function plainTable({ info, row, column, bodyRows }: ExcelTable): PlainTable {
  return {
    name: info.name,
    area: {
      firstRow: row - 1,
      firstColumn: column,
      lastRow: row - 1 + bodyRows,
      lastColumn: column + info.columns.length - 1,
    },
    calculated: info.columns.filter(({ calculated }) => calculated).map(({ heading }) => heading),
  };
}

async function readCells(
  context: Excel.RequestContext,
  name: string,
  used: PlainArea,
  tables: readonly PlainTable[],
): Promise<Pick<PlainSheet, "rows" | "days" | "formulas">> {
  const rows: PlainCell[][] = Array.from({ length: used.firstRow }, () => []);
  const days = new ColumnRuns();
  const formulas = new ColumnRuns();
  const blanks: null[] = Array.from({ length: used.firstColumn }, () => null);
  const isDay = dayFormats();
  const anchors: { readonly row: number; readonly column: number }[] = [];
  for await (const page of readPages(context, name, used, "values,formulas,numberFormat")) {
    const { values, formulas: entered, numberFormat } = page;
    values.forEach((line, down) => {
      const row = rows.length;
      rows.push([...blanks, ...line.map(plainCell)]);
      line.forEach((value, right) => {
        const column = used.firstColumn + right;
        if (typeof value === "number" && isDay(numberFormat[down]?.[right])) days.add(row, column);
        if (!isFormula(entered[down]?.[right], value)) return;
        formulas.add(row, column);
        if (!tables.some(({ area }) => holds(area, row, column))) anchors.push({ row, column });
      });
    });
  }
  const areas = [...formulas.areas];
  const isFormulaAt = (row: number, column: number): boolean => areas.some((area) => holds(area, row, column));
  // A formula spills only where a value without a formula stands right beside or below it. In a table none does.
  const spilling = anchors.filter(({ row, column }) =>
    [[row + 1, column] as const, [row, column + 1] as const].some(
      ([down, right]) => cellAt({ rows }, down, right) !== null && !isFormulaAt(down, right),
    ),
  );
  return { rows, days: days.areas, formulas: [...areas, ...(await spills(context, name, spilling))] };
}

function dayFormats(): (format: unknown) => boolean {
  const known = new Map<unknown, boolean>();
  return (format) => {
    let isDay = known.get(format);
    if (isDay === undefined) {
      isDay = typeof format === "string" && isDateFormat(format);
      known.set(format, isDay);
    }
    return isDay;
  };
}

/** The cells that formulas fill beyond their own. */
async function spills(
  context: Excel.RequestContext,
  name: string,
  anchors: readonly { readonly row: number; readonly column: number }[],
): Promise<PlainArea[]> {
  const areas: PlainArea[] = [];
  for (let from = 0; from < anchors.length; from += FORMULAS_AT_ONCE) {
    const sheet = context.workbook.worksheets.getItem(name);
    const asked = anchors.slice(from, from + FORMULAS_AT_ONCE).map(({ row, column }) => {
      const spill = sheet.getRangeByIndexes(row, column, 1, 1).getSpillingToRangeOrNullObject();
      spill.load("rowIndex,columnIndex,rowCount,columnCount");
      return spill;
    });
    // eslint-disable-next-line office-addins/no-context-sync-in-loop -- so many at once
    await context.sync();
    for (const spill of asked) if (!spill.isNullObject) areas.push(areaOf(spill));
  }
  return areas;
}
