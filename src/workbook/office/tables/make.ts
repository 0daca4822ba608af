import { cellPosition } from "../../cell-address";
import { plainCell, standsFor } from "../../saving/row-match";
import type { StandingCell } from "../../saving/written-block";
import { cellsOccupied, hostFailed, hostUncertain } from "../../table-error";
import { deleteIfBare } from "./blocks";
import { enteredValue, isFormula, marksMissing } from "./cells";
import { describeTables, type ExcelTable } from "./describe";
import { isTaken, knownError } from "./errors";
import type { RunExcel } from "./run";
import { freeSite, rangeOf, type Site, usedIn, WHAT_IS_USED } from "./site";

/** What is written into free cells. */
export interface Making {
  /** Throws where the workbook does not allow it. */
  check(tables: readonly ExcelTable[]): void;
  /** Reads what writing changes besides the contents of cells. */
  prepare(context: Excel.RequestContext, site: Site): Promise<void>;
  /** Called when everything was checked and writing starts. */
  begin(site: Site): void;
  queue(context: Excel.RequestContext, site: Site): void;
  /** Whether a table is the one that was queued. */
  isOwn(table: ExcelTable, site: Site): boolean;
  /** Undoes what was written besides contents, once these are cleared. */
  clearAway(context: Excel.RequestContext, site: Site): Promise<void>;
  /** What is written, row by row; null where nothing is. Text must stand as text. */
  readonly meant: readonly (readonly StandingCell[])[];
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
      const site = await readySite(context, wanted, making, (started) => {
        begun = started;
      });
      // What stands there is read in the same batch, just before it is written over: nobody can come in between unseen.
      const before = rangeOf(context, site);
      before.load(`${WHAT_IS_USED},numberFormat`);
      making.queue(context, site);
      const written = rangeOf(context, site);
      written.load("values,formulas");
      await context.sync();
      const used = usedIn(before, site);
      if (used !== undefined) {
        begun = undefined;
        await giveBack(context, site, making, { before, written });
        throw cellsOccupied(site.sheet, used);
      }
      const marked = marksMissing(written.values, making.meant);
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

/** The site, checked and on a sheet that is there. `start` is told it before anything is written. */
async function readySite(
  context: Excel.RequestContext,
  wanted: Omit<Site, "isNew">,
  making: Making,
  start: (site: Site | undefined) => void,
): Promise<Site> {
  for (;;) {
    const tables = await describeTables(context);
    making.check(tables);
    const site = await freeSite(context, wanted, tables);
    await making.prepare(context, site);
    making.begin(site);
    start(site);
    if (!site.isNew) return site;
    context.workbook.worksheets.add(site.sheet);
    try {
      // Again only where someone else made the sheet.
      await context.sync();
      return site;
    } catch (error) {
      if (!isTaken(error)) throw error;
      // Someone else has made a sheet of that name: it is theirs, and what stands on it must be looked at.
      start(undefined);
    }
  }
}

/** Only the cells that are written, without the room that must be free besides. */
function sized(site: Site, { meant }: Making): Site {
  return { ...site, rows: meant.length, columns: Math.max(...meant.map((row) => row.length)) };
}

/** Takes out what was written over cells that someone filled meanwhile, and gives these back. */
async function giveBack(
  context: Excel.RequestContext,
  site: Site,
  making: Making,
  { before, written }: { readonly before: Excel.Range; readonly written: Excel.Range },
): Promise<void> {
  const { values, formulas, numberFormat } = before;
  try {
    await clearAway(context, { ...site, isNew: false }, making, written);
    const now = rangeOf(context, site);
    now.load("values,formulas");
    await context.sync();
    values.forEach((line: readonly unknown[], down) =>
      line.forEach((value, right) => {
        const formula: unknown = formulas[down]?.[right];
        // What a formula fills from elsewhere is back already.
        const isBack = now.values[down]?.[right] !== "" || now.formulas[down]?.[right] !== "";
        if (isBack || (value === "" && formula === "")) return;
        const { row, column } = site.at;
        const cell = rangeOf(context, {
          ...site,
          at: { row: row + down, column: column + right },
          rows: 1,
          columns: 1,
        });
        cell.formulas = [[isFormula(formula, value) ? formula : enteredValue(plainCell(value))]];
        cell.numberFormat = [[numberFormat[down]?.[right]]];
      }),
    );
    await context.sync();
  } catch (error) {
    throw hostUncertain(error);
  }
}

/**
 * Clears what was written: the cells that hold it, and the sheet made for it unless something else is on it. `written`
 * is what Excel made of it, where that is known.
 */
async function clearAway(
  context: Excel.RequestContext,
  site: Site,
  making: Making,
  written?: Excel.Range,
): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(site.sheet);
  sheet.load("name");
  await context.sync();
  if (sheet.isNullObject) return;
  const table = (await describeTables(context)).find((known) => making.isOwn(known, site));
  const cells = rangeOf(context, sized(site, making));
  cells.load("values,formulas");
  await context.sync();
  if (table !== undefined) context.workbook.tables.getItem(table.id).delete();
  making.meant.forEach((line, down) =>
    line.forEach((meant, right) => {
      const isOwn =
        meant !== null &&
        (isHeld(meant, contentAt(cells, down, right)) ||
          (written !== undefined && isSame(contentAt(written, down, right), contentAt(cells, down, right))));
      if (!isOwn) return;
      const at = { row: site.at.row + down, column: site.at.column + right };
      rangeOf(context, { ...site, at, rows: 1, columns: 1 }).clear("Contents");
    }),
  );
  await making.clearAway(context, site);
  await context.sync();
  if (site.isNew) await deleteIfBare(context, site.sheet);
}

interface Content {
  readonly value: unknown;
  readonly formula: unknown;
}

function contentAt({ values, formulas }: Excel.Range, down: number, right: number): Content {
  return { value: values[down]?.[right], formula: formulas[down]?.[right] };
}

function isSame(a: Content, b: Content): boolean {
  return a.value === b.value && a.formula === b.formula;
}

function isHeld(meant: Exclude<StandingCell, null>, { value, formula }: Content): boolean {
  if (typeof meant === "object") return isFormula(formula, value);
  return !isFormula(formula, value) && standsFor(plainCell(value), meant);
}

/** Place and size of a block of cells from an address on. */
export function siteAt(sheet: string, address: string, rows: number, columns: number): Omit<Site, "isNew"> {
  return { sheet, at: cellPosition(address), rows, columns };
}
