import type { AppliedCell, CellEdit } from "../../book-host";
import { cellPosition, type CellPosition } from "../../cell-address";
import { formatFor } from "../../number-format";
import { areaText, holds, type PlainArea } from "../../plain-book";
import { plainValue } from "../../saving/row-match";
import {
  cellCalculated,
  cellChanged,
  cellsMerged,
  headingInTable,
  hostFailed,
  hostUncertain,
  sheetGone,
  sheetProtected,
  TableError,
} from "../../table-error";
import { mergedAreasOf } from "../merged-areas";
import { isFormula } from "../tables/cells";
import { describeTables } from "../tables/describe";
import { knownError } from "../tables/errors";
import type { RunExcel } from "../tables/run";
import { plainTable } from "./read-sheets";
import { CELLS_AT_ONCE, type CheckedEdit, heldBy, rangeAt, undoCells, writeCells } from "./write-cells";

/** Applies all edits or none, as a BookHost does. */
export async function editCells(run: RunExcel, edits: readonly CellEdit[]): Promise<readonly AppliedCell[]> {
  let begun: readonly CheckedEdit[] | undefined;
  try {
    return await run(async (context) => {
      const checked = await checkEdits(context, edits);
      begun = checked;
      await writeCells(context, checked);
      return checked.map(appliedOf);
    });
  } catch (error) {
    const written = begun;
    // A conflict has been undone where it was found.
    if (written !== undefined && !(error instanceof TableError)) {
      await run((context) => undoCells(context, written)).catch(() => {
        throw hostUncertain(error);
      });
    }
    throw knownError(error) ?? hostFailed(error);
  }
}

function appliedOf({ edit: { sheet, address, was, set }, ownFormat, format }: CheckedEdit): AppliedCell {
  const kept = format === undefined ? {} : { formatBefore: ownFormat };
  return { sheet, address, before: was, after: plainValue(set), ...kept };
}

async function checkEdits(context: Excel.RequestContext, edits: readonly CellEdit[]): Promise<readonly CheckedEdit[]> {
  const sheets = await describeSheets(context, [...new Set(edits.map(({ sheet }) => sheet))]);
  const checked: CheckedEdit[] = [];
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
    // So many at once.
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
  const merges = await mergedAreasOf(context, names);
  const asked = names.map((name) => {
    const sheet = context.workbook.worksheets.getItem(name);
    const { protection } = sheet;
    protection.load("protected");
    return { name, protection };
  });
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
