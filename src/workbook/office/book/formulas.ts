import type { BrokenFormula } from "../../book-port";
import { cellAddress, cellPosition } from "../../cell-address";
import { callsHerd, NAME_ERROR, typedHerdCalls } from "../../herd-formula";
import type { CellPlace } from "../../port";
import { sheetProtected } from "../../table-error";
import { areaOf } from "../merged-areas";
import { isFormula } from "../tables/cells";
import { readPages } from "./read-pages";

/** A formula of ours, and whether it shows #NAME?. */
export interface HerdFormula extends BrokenFormula {
  readonly isBroken: boolean;
}

/** All formulas that call functions of ours. `ids` are the ids of the functions. */
export async function herdFormulas(context: Excel.RequestContext, ids: readonly string[]): Promise<HerdFormula[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const asked = worksheets.items.map(({ name }) => {
    const used = worksheets.getItem(name).getUsedRangeOrNullObject();
    used.load("rowIndex,columnIndex,rowCount,columnCount");
    return { name, used };
  });
  await context.sync();
  const found: HerdFormula[] = [];
  for (const { name, used } of asked) {
    if (used.isNullObject) continue;
    const { firstColumn } = areaOf(used);
    for await (const { values, formulas, firstRow } of readPages(context, name, areaOf(used), "values,formulas")) {
      formulas.forEach((line: readonly unknown[], down) =>
        line.forEach((formula, right) => {
          const value: unknown = values[down]?.[right];
          if (typeof formula !== "string" || !isFormula(formula, value) || !callsHerd(formula)) return;
          const address = cellAddress({ row: firstRow + down, column: firstColumn + right });
          const isBroken = value === NAME_ERROR;
          found.push({ sheet: name, address, formula: typedHerdCalls(formula, ids), isBroken });
        }),
      );
    }
  }
  return found;
}

/** Enters formulas again: Excel looks up the functions of a formula when it is entered, and not again. */
export async function enterAgain(context: Excel.RequestContext, cells: readonly BrokenFormula[]): Promise<void> {
  const { worksheets } = context.workbook;
  const guards = [...new Set(cells.map(({ sheet }) => sheet))].map((sheet) => {
    const { protection } = worksheets.getItem(sheet);
    protection.load("protected");
    return { sheet, protection };
  });
  await context.sync();
  const guarded = guards.find(({ protection }) => protection.protected);
  if (guarded !== undefined) throw sheetProtected(guarded.sheet);
  for (const { sheet, address, formula } of cells) {
    const { row, column } = cellPosition(address);
    worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1).formulas = [[formula]];
  }
  await context.sync();
}

export function isAmong(cells: readonly CellPlace[]): (cell: CellPlace) => boolean {
  const places = new Set(cells.map(({ sheet, address }) => `${sheet}!${address}`));
  return ({ sheet, address }) => places.has(`${sheet}!${address}`);
}
