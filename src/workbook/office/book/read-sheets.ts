import { ColumnRuns } from "../../column-runs";
import { isDateFormat } from "../../number-format";
import { holds, type PlainArea, type PlainSheet, type PlainTable } from "../../plain-book";
import type { PlainCell } from "../../port";
import { plainCell } from "../../saving/row-match";
import { areaOf, mergedAreasOf } from "../merged-areas";
import { isFormula } from "../tables/cells";
import { describeTables, type ExcelTable } from "../tables/describe";
import { askUsed, type Gathering, readUsed } from "./read-pages";

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
    const cells = await readCells(context, name, used, own);
    sheets.push({ name, ...cells, tables: own, merges: merges.get(name) ?? [], ...(hidden ? { hidden } : {}) });
  }
  return sheets;
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

interface Cells {
  readonly rows: PlainCell[][];
  readonly days: ColumnRuns;
  readonly formulas: ColumnRuns;
  /** Formulas outside tables: in a table none spills. */
  readonly anchors: { readonly row: number; readonly column: number }[];
  /** Whether any cell is filled by the formula of another one. */
  hasSpill: boolean;
}

async function readCells(
  context: Excel.RequestContext,
  name: string,
  used: Excel.Range,
  tables: readonly PlainTable[],
): Promise<Pick<PlainSheet, "rows" | "days" | "formulas" | "spills">> {
  const what = "values,formulas,numberFormat,hasSpill";
  const cells = await readUsed(context, name, used, what, (area) => gathering(area, tables));
  const { rows, days, formulas } = cells;
  const spills = cells.hasSpill ? await spillsOf(context, name, cells) : [];
  return {
    rows,
    days: days.areas,
    formulas: [...formulas.areas, ...spills],
    ...(spills.length === 0 ? {} : { spills }),
  };
}

function gathering(area: PlainArea | undefined, tables: readonly PlainTable[]): Gathering<Cells> {
  const { firstRow = 0, firstColumn = 0 } = area ?? {};
  const cells: Cells = {
    rows: Array.from({ length: firstRow }, () => []),
    days: new ColumnRuns(),
    formulas: new ColumnRuns(),
    anchors: [],
    hasSpill: false,
  };
  const blanks: null[] = Array.from({ length: firstColumn }, () => null);
  const isDay = dayFormats();
  return {
    result: cells,
    take: ({ values, formulas, numberFormat, hasSpill }) => {
      if (hasSpill !== false) cells.hasSpill = true;
      values.forEach((line, down) => {
        const row = cells.rows.length;
        cells.rows.push([...blanks, ...line.map(plainCell)]);
        line.forEach((value, right) => {
          const column = firstColumn + right;
          if (typeof value === "number" && isDay(numberFormat[down]?.[right])) cells.days.add(row, column);
          if (!isFormula(formulas[down]?.[right], value)) return;
          cells.formulas.add(row, column);
          if (!tables.some((table) => holds(table.area, row, column))) cells.anchors.push({ row, column });
        });
      });
    },
  };
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

/** The cells that formulas fill beyond their own: asked only of formulas in runs of which some cell is filled so. */
async function spillsOf(
  context: Excel.RequestContext,
  name: string,
  { formulas, anchors }: Cells,
): Promise<PlainArea[]> {
  const sheet = (): Excel.Worksheet => context.workbook.worksheets.getItem(name);
  const runs: PlainArea[] = [];
  for (const some of inParts(formulas.areas)) {
    const asked = some.map((area) => {
      const { firstRow, firstColumn, lastRow } = area;
      const run = sheet().getRangeByIndexes(firstRow, firstColumn, lastRow - firstRow + 1, 1);
      run.load("hasSpill");
      return { area, run };
    });
    // So many at once.
    await context.sync();
    runs.push(...asked.filter(({ run }) => run.hasSpill !== false).map(({ area }) => area));
  }
  const areas: PlainArea[] = [];
  const spilling = anchors.filter(({ row, column }) => runs.some((run) => holds(run, row, column)));
  for (const some of inParts(spilling)) {
    const asked = some.map(({ row, column }) => {
      const spill = sheet().getRangeByIndexes(row, column, 1, 1).getSpillingToRangeOrNullObject();
      spill.load("rowIndex,columnIndex,rowCount,columnCount");
      return spill;
    });
    // So many at once.
    await context.sync();
    for (const spill of asked) if (!spill.isNullObject) areas.push(areaOf(spill));
  }
  return areas;
}

function inParts<T>(list: readonly T[]): T[][] {
  return Array.from({ length: Math.ceil(list.length / FORMULAS_AT_ONCE) }, (_, part) =>
    list.slice(part * FORMULAS_AT_ONCE, (part + 1) * FORMULAS_AT_ONCE),
  );
}
