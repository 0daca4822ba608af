import type { AppliedCell, CellEdit } from "../../book-host";
import { cellPosition, type CellPosition } from "../../cell-address";
import { formatFor } from "../../number-format";
import { areaText, holds, type PlainArea } from "../../plain-book";
import type { PlainCell } from "../../port";
import { plainCell, plainValue, standsFor } from "../../saving/row-match";
import {
  cellCalculated,
  cellChanged,
  cellsMerged,
  headingInTable,
  hostFailed,
  hostUncertain,
  sheetGone,
  sheetProtected,
} from "../../table-error";
import { mergedAreasOf } from "../merged-areas";
import { enteredValue, isFormula, marksMissing } from "../tables/cells";
import { describeTables } from "../tables/describe";
import { knownError } from "../tables/errors";
import type { RunExcel } from "../tables/run";
import { plainTable } from "./read-sheets";

/** Cells that are asked at once. */
const CELLS_AT_ONCE = 1000;

/** An edit with the cell's own number format. */
interface Checked {
  readonly edit: CellEdit;
  readonly at: CellPosition;
  readonly ownFormat: string;
  /** The number format to be given; undefined where the cell's own will do. */
  readonly format: string | undefined;
}

/** Applies all edits or none, as a BookHost does. */
export async function editCells(run: RunExcel, edits: readonly CellEdit[]): Promise<readonly AppliedCell[]> {
  let begun: readonly Checked[] | undefined;
  try {
    return await run(async (context) => {
      const checked = await checkEdits(context, edits);
      begun = checked;
      return await write(context, checked);
    });
  } catch (error) {
    const written = begun;
    if (written !== undefined) {
      await run((context) => undo(context, written)).catch(() => {
        throw hostUncertain(error);
      });
    }
    throw knownError(error) ?? hostFailed(error);
  }
}

async function checkEdits(context: Excel.RequestContext, edits: readonly CellEdit[]): Promise<readonly Checked[]> {
  const sheets = await describeSheets(context, [...new Set(edits.map(({ sheet }) => sheet))]);
  const checked: Checked[] = [];
  for (let from = 0; from < edits.length; from += CELLS_AT_ONCE) {
    const asked = edits.slice(from, from + CELLS_AT_ONCE).map((edit) => {
      const at = cellPosition(edit.address);
      refusePlace(sheets.get(edit.sheet)!, edit, at);
      const cell = rangeAt(context, edit.sheet, at);
      cell.load("values,formulas,numberFormat");
      const parent = rangeAt(context, edit.sheet, at).getSpillParentOrNullObject();
      parent.load("rowIndex");
      return { edit, at, cell, parent };
    });
    // eslint-disable-next-line office-addins/no-context-sync-in-loop -- so many at once
    await context.sync();
    for (const { edit, at, cell, parent } of asked) {
      const { sheet, address, was, set } = edit;
      const isFilled = isFormula(cell.formulas[0]?.[0], cell.values[0]?.[0]) || !parent.isNullObject;
      if (isFilled) throw cellCalculated(sheet, address);
      const is = heldBy(cell);
      if (is !== was) throw cellChanged(sheet, address, was, is);
      const ownFormat = String(cell.numberFormat[0]?.[0]);
      checked.push({ edit, at, ownFormat, format: edit.numberFormat ?? formatFor(set, ownFormat) });
    }
  }
  return checked;
}

interface SheetPlaces {
  readonly isProtected: boolean;
  readonly merges: readonly PlainArea[];
  readonly tables: readonly { readonly name: string; readonly area: PlainArea }[];
}

async function describeSheets(
  context: Excel.RequestContext,
  names: readonly string[],
): Promise<ReadonlyMap<string, SheetPlaces>> {
  const found = names.map((name) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name);
    sheet.load("name");
    return { name, sheet };
  });
  await context.sync();
  const gone = found.find(({ sheet }) => sheet.isNullObject);
  if (gone !== undefined) throw sheetGone(gone.name);
  const asked = names.map((name) => {
    const sheet = context.workbook.worksheets.getItem(name);
    const { protection } = sheet;
    protection.load("protected");
    return { name, protection };
  });
  const merges = await mergedAreasOf(context, names);
  const tables = (await describeTables(context)).map((table) => ({ sheet: table.info.sheet, ...plainTable(table) }));
  return new Map(
    asked.map(({ name, protection }) => [
      name,
      {
        isProtected: protection.protected,
        merges: merges.get(name) ?? [],
        tables: tables.filter(({ sheet }) => sheet === name),
      },
    ]),
  );
}

function refusePlace(
  { isProtected, merges, tables }: SheetPlaces,
  edit: CellEdit,
  { row, column }: CellPosition,
): void {
  const { sheet, address } = edit;
  if (isProtected) throw sheetProtected(sheet);
  const merge = merges.find((area) => holds(area, row, column));
  const isHidden = merge !== undefined && (merge.firstRow !== row || merge.firstColumn !== column);
  if (isHidden) throw cellsMerged(sheet, areaText(merge));
  const headed = tables.find(({ area }) => area.firstRow === row && holds(area, row, column));
  if (headed !== undefined) throw headingInTable(headed.name, address);
}

/**
 * Writes in one batch. What stands in each cell is read in the same batch, just before it is written over: nobody can
 * come in between unseen. Whoever did gets their cell back, and the edits are undone.
 */
async function write(context: Excel.RequestContext, checked: readonly Checked[]): Promise<readonly AppliedCell[]> {
  const written = checked.map(({ edit, at, format }) => {
    const before = rangeAt(context, edit.sheet, at);
    before.load("values");
    const after = rangeAt(context, edit.sheet, at);
    // The format comes first: in a cell for text a number would become text.
    if (format !== undefined) after.numberFormat = [[format]];
    after.values = [[enteredValue(edit.set)]];
    after.load("values");
    return { edit, before, after };
  });
  await context.sync();
  const conflict = written.find(({ edit, before }) => heldBy(before) !== edit.was);
  if (conflict !== undefined) {
    written.forEach(({ edit, before }, index) => putBack(context, checked[index]!, edit.sheet, heldBy(before)));
    await context.sync();
    const { sheet, address, was } = conflict.edit;
    throw cellChanged(sheet, address, was, heldBy(conflict.before));
  }
  let isMarked = false;
  for (const { edit, after } of written) {
    const marked = marksMissing(after.values, [[edit.set]]);
    if (marked === undefined) continue;
    after.values = marked;
    isMarked = true;
  }
  if (isMarked) await context.sync();
  return checked.map(({ edit: { sheet, address, was, set }, ownFormat, format }) => ({
    sheet,
    address,
    before: was,
    after: plainValue(set),
    ...(format === undefined ? {} : { formatBefore: ownFormat }),
  }));
}

/** Takes back what stands of edits that broke off; cells that someone changed since are theirs. */
async function undo(context: Excel.RequestContext, checked: readonly Checked[]): Promise<void> {
  const asked = checked.map((one) => {
    const cell = rangeAt(context, one.edit.sheet, one.at);
    cell.load("values");
    return { one, cell };
  });
  await context.sync();
  for (const { one, cell } of asked) {
    const { was, set, sheet } = one.edit;
    const is = heldBy(cell);
    if (is === was || standsFor(is, plainValue(set))) putBack(context, one, sheet, was);
  }
  await context.sync();
}

function putBack(
  context: Excel.RequestContext,
  { at, ownFormat, format }: Checked,
  sheet: string,
  was: PlainCell,
): void {
  const cell = rangeAt(context, sheet, at);
  if (format !== undefined) cell.numberFormat = [[ownFormat]];
  cell.values = [[enteredValue(was)]];
}

function rangeAt(context: Excel.RequestContext, sheet: string, { row, column }: CellPosition): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1);
}

function heldBy({ values }: Excel.Range): PlainCell {
  const cell = plainCell(values[0]?.[0]);
  return typeof cell === "string" && cell.trim() === "" ? null : cell;
}
