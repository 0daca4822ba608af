import type { TableRange } from "../../book-host";
import { areaText, type PlainArea } from "../../plain-book";
import { meets } from "../../plain-room";
import {
  cellsOccupied,
  hostFailed,
  hostUncertain,
  nameTaken,
  notTakenBack,
  sheetGone,
  sheetProtected,
  tableGone,
  takeBackUncertain,
} from "../../table-error";
import { describeTables } from "../tables/describe";
import { knownError } from "../tables/errors";
import type { RunExcel } from "../tables/run";
import { plainTable } from "./read-sheets";

/** Makes a table of a range; where that breaks off the range is left as it was. */
export async function makeTable(run: RunExcel, wanted: TableRange): Promise<void> {
  const { sheet, area, name } = wanted;
  let hasBegun = false;
  try {
    await run(async (context) => {
      await refuse(context, wanted);
      hasBegun = true;
      const table = context.workbook.worksheets.getItem(sheet).tables.add(rangeOf(context, sheet, area), true);
      table.name = name;
      await context.sync();
    });
  } catch (error) {
    if (hasBegun) {
      await run((context) => unmake(context, wanted)).catch(() => {
        throw hostUncertain(error);
      });
    }
    throw knownError(error) ?? hostFailed(error);
  }
}

async function refuse(context: Excel.RequestContext, { sheet: name, area, name: table }: TableRange): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load("name");
  await context.sync();
  if (sheet.isNullObject) throw sheetGone(name);
  const { protection } = context.workbook.worksheets.getItem(name);
  protection.load("protected");
  await context.sync();
  if (protection.protected) throw sheetProtected(name);
  const tables = (await describeTables(context)).map((known) => ({ sheet: known.info.sheet, ...plainTable(known) }));
  if (tables.some((known) => known.name.toLowerCase() === table.toLowerCase())) throw nameTaken(table);
  const met = tables.find((known) => known.sheet === name && meets(area)(known.area));
  if (met !== undefined) throw cellsOccupied(name, areaText(met.area));
}

/** No table met the area before: one that does is what was begun, under its own name or one that Excel gave it. */
async function unmake(context: Excel.RequestContext, { sheet, area }: TableRange): Promise<void> {
  const made = (await describeTables(context)).find(
    (table) => table.info.sheet === sheet && meets(area)(plainTable(table).area),
  );
  if (made === undefined) return;
  context.workbook.tables.getItem(made.id).convertToRange();
  await context.sync();
}

export async function unmakeTable(run: RunExcel, name: string): Promise<void> {
  let hasBegun = false;
  try {
    await run(async (context) => {
      const table = (await describeTables(context)).find(({ info }) => info.name === name);
      if (table === undefined) throw tableGone(name);
      if (table.info.protected === true) throw sheetProtected(table.info.sheet);
      context.workbook.tables.getItem(table.id).convertToRange();
      hasBegun = true;
      await context.sync();
    });
  } catch (error) {
    throw knownError(error) ?? (hasBegun ? takeBackUncertain(error) : notTakenBack(error));
  }
}

function rangeOf(context: Excel.RequestContext, sheet: string, area: PlainArea): Excel.Range {
  const { firstRow, firstColumn, lastRow, lastColumn } = area;
  return context.workbook.worksheets
    .getItem(sheet)
    .getRangeByIndexes(firstRow, firstColumn, lastRow - firstRow + 1, lastColumn - firstColumn + 1);
}
