import { cellAddress, type CellPosition } from "../../cell-address";
import { areaText, type PlainArea } from "../../plain-book";
import { areaFrom } from "../../plain-room";
import { cellsMerged, cellsOccupied, sheetProtected } from "../../table-error";
import { mergedAreas } from "../merged-areas";
import type { ExcelTable } from "./describe";

/** A block of free cells on a sheet that may have to be made. */
export interface Site {
  readonly sheet: string;
  readonly isNew: boolean;
  readonly at: CellPosition;
  readonly rows: number;
  readonly columns: number;
}

export function rangeOf(context: Excel.RequestContext, { sheet, at, rows, columns }: Omit<Site, "isNew">): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(at.row, at.column, rows, columns);
}

/** What tells of a range whether it is free. */
export const WHAT_IS_USED = "values,formulas,hasSpill";

/** The site, once it is sure that nothing stands in it. */
export async function freeSite(
  context: Excel.RequestContext,
  wanted: Omit<Site, "isNew">,
  tables: readonly ExcelTable[],
): Promise<Site> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(wanted.sheet);
  sheet.load("name");
  await context.sync();
  if (sheet.isNullObject) return { ...wanted, isNew: true };
  const site = { ...wanted, sheet: sheet.name, isNew: false };
  const { protection } = sheet;
  protection.load("protected");
  const range = rangeOf(context, site);
  range.load(WHAT_IS_USED);
  await context.sync();
  if (protection.protected) throw sheetProtected(site.sheet);
  const inTable = firstInTable(site, tables);
  const used = usedIn(range, site) ?? (inTable && cellAddress(inTable));
  if (used !== undefined) throw cellsOccupied(site.sheet, used);
  const [merge] = await mergedAreas(context, site.sheet, areaOf(site));
  if (merge !== undefined) throw cellsMerged(site.sheet, areaText(merge));
  return site;
}

/** Address of the first cell in use, or of the whole site where a formula fills cells of it from elsewhere with blanks. */
export function usedIn({ values, formulas, hasSpill }: Excel.Range, site: Site): string | undefined {
  for (let down = 0; down < site.rows; down++) {
    for (let right = 0; right < site.columns; right++) {
      const isFree = values[down]?.[right] === "" && formulas[down]?.[right] === "";
      if (!isFree) return cellAddress({ row: site.at.row + down, column: site.at.column + right });
    }
  }
  return hasSpill === false ? undefined : areaText(areaOf(site));
}

/** The first cell of a site that lies in a table. */
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

function areaOf({ at, rows, columns }: Site): PlainArea {
  return areaFrom(at, rows, columns);
}
