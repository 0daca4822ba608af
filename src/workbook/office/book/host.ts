import type { AppliedCell, BookHost, CellEdit, TableRange } from "../../book-host";
import type { BrokenFormula, FunctionsAnswer } from "../../book-port";
import type { PlainBook, PlainSheet } from "../../plain-book";
import type { CellPlace } from "../../port";
import { hostFailed, notRead, notShown, sheetGone, sheetHidden, type TableError } from "../../table-error";
import { knownError } from "../tables/errors";
import { type RunExcel, runExcel } from "../tables/run";
import { editCells } from "./edit-cells";
import { enterAgain, type HerdFormula, herdFormulas, isAmong } from "./formulas";
import { makeTable, unmakeTable } from "./make-table";
import { readSheets } from "./read-sheets";

/** The sheets and cells of the workbook open in Excel. */
export class OfficeBookHost implements BookHost {
  /**
   * `ids` gives those of the worksheet functions, by which the names that files store for them are told apart. It is
   * asked only when formulas are looked for.
   */
  constructor(
    private readonly ids: () => Promise<readonly string[]>,
    private readonly run: RunExcel = runExcel,
  ) {}

  readBook(): Promise<PlainBook> {
    return this.reading(async (context) => ({ sheets: await readSheets(context) }));
  }

  readSheet(name: string): Promise<PlainSheet> {
    return this.reading(async (context) => {
      const [sheet] = await readSheets(context, [name]);
      if (sheet === undefined) throw sheetGone(name);
      return sheet;
    });
  }

  show({ sheet: name, address }: CellPlace): Promise<void> {
    return this.running(notShown, async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(name);
      sheet.load("name,visibility");
      await context.sync();
      if (sheet.isNullObject) throw sheetGone(name);
      if (sheet.visibility !== "Visible") throw sheetHidden(name);
      sheet.activate();
      sheet.getRange(address).select();
      await context.sync();
    });
  }

  editCells(edits: readonly CellEdit[]): Promise<readonly AppliedCell[]> {
    return editCells(this.run, edits);
  }

  takenNames(): Promise<readonly string[]> {
    return this.reading(async (context) => {
      const { tables, names } = context.workbook;
      tables.load("items/id,items/name,items/showTotals");
      names.load("items/name");
      await context.sync();
      return [...tables.items.map(({ name }) => name), ...names.items.map(({ name }) => name)];
    });
  }

  makeTable(table: TableRange): Promise<void> {
    return makeTable(this.run, table);
  }

  unmakeTable(name: string): Promise<void> {
    return unmakeTable(this.run, name);
  }

  brokenFormulas(): Promise<readonly BrokenFormula[]> {
    return this.reading(async (context) => broken(await herdFormulas(context, await this.ids())));
  }

  reenter(cells: readonly CellPlace[]): Promise<readonly BrokenFormula[]> {
    const isWanted = isAmong(cells);
    return this.running(hostFailed, async (context) => {
      const ids = await this.ids();
      const wanted = broken(await herdFormulas(context, ids)).filter(isWanted);
      if (wanted.length === 0) return [];
      await enterAgain(context, wanted, ids);
      return broken(await herdFormulas(context, ids)).filter(isWanted);
    });
  }

  /**
   * Excel tells nobody which functions it knows: the formulas in the sheets show it. A workbook opened without the
   * functions shows the values that were saved, until it is computed; only entering a formula again is proof.
   */
  functionsLoaded(): Promise<FunctionsAnswer> {
    return this.reading(async (context) => {
      const formulas = await herdFormulas(context, await this.ids());
      const count = broken(formulas).length;
      if (formulas.length === 0 || (count > 0 && count < formulas.length)) return "unknown";
      return count === 0 ? "yes" : "no";
    });
  }

  private reading<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
    return this.running(notRead, work);
  }

  private async running<T>(
    failed: (cause: unknown) => TableError,
    work: (context: Excel.RequestContext) => Promise<T>,
  ): Promise<T> {
    try {
      return await this.run(work);
    } catch (error) {
      throw knownError(error) ?? failed(error);
    }
  }
}

function broken(formulas: readonly HerdFormula[]): BrokenFormula[] {
  return formulas.flatMap(({ isBroken, sheet, address, formula }) => (isBroken ? [{ sheet, address, formula }] : []));
}
