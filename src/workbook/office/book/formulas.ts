import type { BrokenFormula } from "../../book-port";
import { cellAddress, cellPosition } from "../../cell-address";
import { callsHerd, NAME_ERROR, typedHerdCalls } from "../../herd-formula";
import type { PlainArea } from "../../plain-book";
import type { CellPlace } from "../../port";
import { plainCell } from "../../saving/row-match";
import { sheetProtected } from "../../table-error";
import { enteredValue, isFormula } from "../tables/cells";
import { askUsed, type Gathering, readUsed } from "./read-pages";

/** A formula of ours, and whether it shows #NAME?. */
export interface HerdFormula extends BrokenFormula {
  readonly isBroken: boolean;
}

/** All formulas that call functions of ours. `ids` are the ids of the functions. */
export async function herdFormulas(context: Excel.RequestContext, ids: readonly string[]): Promise<HerdFormula[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const asked = worksheets.items.map(({ name }) => ({ name, used: askUsed(context, name) }));
  await context.sync();
  const found: HerdFormula[] = [];
  for (const { name, used } of asked) {
    found.push(...(await readUsed(context, name, used, "values,formulas", (area) => gathering(name, area, ids))));
  }
  return found;
}

function gathering(
  sheet: string,
  area: PlainArea | undefined,
  ids: readonly string[],
): Gathering<readonly HerdFormula[]> {
  const found: HerdFormula[] = [];
  const { firstColumn = 0 } = area ?? {};
  return {
    result: found,
    take: ({ values, formulas }, firstRow) => {
      formulas.forEach((line: readonly unknown[], down) =>
        line.forEach((formula, right) => {
          const value: unknown = values[down]?.[right];
          if (typeof formula !== "string" || !isFormula(formula, value) || !callsHerd(formula)) return;
          const address = cellAddress({ row: firstRow + down, column: firstColumn + right });
          found.push({ sheet, address, formula: typedHerdCalls(formula, ids), isBroken: value === NAME_ERROR });
        }),
      );
    },
  };
}

/**
 * Enters formulas again: Excel looks up the functions of a formula when it is entered, and not again. A cell that
 * someone changed since its formula was read keeps what they put there.
 */
export async function enterAgain(
  context: Excel.RequestContext,
  cells: readonly BrokenFormula[],
  ids: readonly string[],
): Promise<void> {
  const { worksheets } = context.workbook;
  const guards = [...new Set(cells.map(({ sheet }) => sheet))].map((sheet) => {
    const { protection } = worksheets.getItem(sheet);
    protection.load("protected");
    return { sheet, protection };
  });
  await context.sync();
  const guarded = guards.find(({ protection }) => protection.protected);
  if (guarded !== undefined) throw sheetProtected(guarded.sheet);
  const entered = cells.map(({ sheet, address, formula }) => {
    const { row, column } = cellPosition(address);
    const place = (): Excel.Range => worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1);
    const before = place();
    before.load("values,formulas");
    const after = place();
    after.formulas = [[formula]];
    return { formula, before, after };
  });
  await context.sync();
  for (const { formula, before, after } of entered) {
    const [value, stood]: unknown[] = [before.values[0]?.[0], before.formulas[0]?.[0]];
    const isHere = isFormula(stood, value);
    if (isHere && typedHerdCalls(String(stood), ids) === formula) continue;
    after.formulas = [[isHere ? stood : enteredValue(plainCell(value))]];
  }
  await context.sync();
}

export function isAmong(cells: readonly CellPlace[]): (cell: CellPlace) => boolean {
  const places = new Set(cells.map(({ sheet, address }) => `${sheet}!${address}`));
  return ({ sheet, address }) => places.has(`${sheet}!${address}`);
}
