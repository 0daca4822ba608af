import { parentCode } from "../../core/claws/disorder-key";
import { type CaseCost, checkCaseCosts } from "../../core/money/case-costs";
import type { PublishedCosts } from "../../core/money/published-costs";
import type { CellValue } from "../cell";
import { lesionCode } from "../claws/kinds";
import type { Kind } from "../kind";
import { number, scalarKind, text } from "../scalars";
import { settingsTable, type TableColumn } from "../tables";

/** Money in whatever currency the workbook keeps. A number 0 stands for a blank. */
export const money = number({ min: 0.01, max: 10_000_000, reason: "an amount of money", zeroIsBlank: true });

/** Cost of a case, or "none" for a lesion that is counted at no cost: a 0 could be a blank. */
const caseCost = scalarKind<number>({
  ...money,
  must: `${money.must}, or "none"`,
  readCell: (cell, where) => (/^none$/i.test(String(cell)) ? 0 : money.readCell(cell, where)),
});

const year = number({ min: 1990, max: 2100, whole: true, reason: "year of the prices", zeroIsBlank: true });

const COST_COLUMNS = {
  lesion: { headings: ["Lesion", "Code"], kind: lesionCode },
  cost: { headings: ["Cost per case", "Cost"], kind: caseCost },
  currency: { headings: ["Currency"], kind: { ...text("currency"), zeroIsBlank: true }, optional: true },
  year: { headings: ["Year"], kind: year, optional: true },
  source: { headings: ["Source"], kind: { ...text("source"), zeroIsBlank: true }, optional: true },
} as const satisfies Record<keyof CaseCost, TableColumn<unknown>>;

const costsTable = settingsTable("costs", COST_COLUMNS);

/** The workbook's costs a case, one row a lesion, in one currency. */
export const costs: Kind<readonly CaseCost[]> = {
  ...costsTable,
  read(raw, argument) {
    const rows = costsTable.read(raw, argument);
    checkCaseCosts(rows);
    return rows;
  },
};

/** A published set of costs as a table for a sheet, with its currency, year and source. */
export function printedCosts({
  source,
  currency,
  year: ofYear,
  byLesion,
}: PublishedCosts): readonly (readonly CellValue[])[] {
  return [
    Object.values(COST_COLUMNS).map(({ headings }) => headings[0]),
    ...Object.entries(byLesion).map(([lesion, cost]) => [lesion, cost, currency, ofYear, source.name]),
  ];
}

/** Cost of a case of a lesion: its own row, else that of the disorder of which it is a form. */
export function costOf(rows: readonly CaseCost[]): (lesion: string) => number | undefined {
  const byLesion = new Map(rows.map(({ lesion, cost }) => [lesion, cost]));
  return (lesion) => byLesion.get(lesion) ?? byLesion.get(parentCode(lesion));
}
