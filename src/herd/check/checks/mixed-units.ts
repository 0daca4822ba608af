import { CELLS_PER_THOUSAND, MM_PER_CM } from "../../mapping/convert";
import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";
import type { Finding, Report } from "../report";

/** Counts in thousands end at the laboratory's cap of 9,999; from here on they are in cells. */
const IN_CELLS_FROM = 10_000;
/** Toes in cm and in inches; a toe in mm is far longer than either. */
const CM = [5, 20] as const;
const INCHES = [2, 5] as const;
const MM_FROM = 30;

/** Values that are in another unit than the rest of their column. */
export const mixedUnits: Check = {
  id: "mixed unit",
  about: "values in another unit than their column",
  run(herd, report) {
    for (const table of herd.named("Tests")) {
      each(table, "count", report, (value) => aboutCount(value, table.column("count")?.unit === "cells/mL"));
      each(table, "milkKg", report, aboutMilk(table));
    }
    for (const table of herd.named("Findings")) each(table, "toeMm", report, (value) => aboutToe(value, table.column("toeMm")?.unit)); // oxfmt-ignore
  },
};

function each(table: CheckedTable, key: string, report: Report, about: (value: number) => Finding | undefined): void {
  if (!table.has(key)) return;
  for (let row = 0; row < table.rowCount; row++) {
    const cell = table.cell(key, row);
    if (typeof cell !== "number") continue;
    const finding = about(cell);
    if (finding !== undefined) report.cell(table, key, row, finding);
  }
}

function aboutCount(value: number, inCells: boolean): Finding | undefined {
  const touches = "Cell scores, milk lost, averages and the tank's share would be far off.";
  if (inCells) {
    if (value <= 0 || value >= CELLS_PER_THOUSAND) return undefined;
    const to = value * CELLS_PER_THOUSAND;
    return { level: "wrong", wrong: `${value} is too low for cells/mL, the unit of its column; it is likely in thousands.`, touches, repair: { title: `write ${to}`, to } }; // oxfmt-ignore
  }
  if (value < IN_CELLS_FROM) return undefined;
  const to = Math.round(value / CELLS_PER_THOUSAND);
  return {
    level: "wrong",
    wrong: `${value} is too high for thousands, the unit of its column; it is likely in cells/mL.`,
    touches,
    ...(to < IN_CELLS_FROM ? { repair: { title: `write ${to}`, to } } : {}),
  };
}

function aboutMilk(table: CheckedTable): (value: number) => Finding | undefined {
  const unit = table.column("milkKg")?.unit ?? "kg";
  const [, most = Infinity] = table.mapped.definition.columns.find(({ key }) => key === "milkKg")?.limits ?? [];
  return (value) => {
    if (unit === "lb" || value <= most) return undefined;
    return { level: "wrong", wrong: `${value} ${unit} is more than a cow gives in a day; it may be in pounds.`, touches: "Milk lost and the herd's milk." }; // oxfmt-ignore
  };
}

function aboutToe(value: number, unit = "mm"): Finding | undefined {
  const touches = "Toe advice: a length in the wrong unit may send a knife where nothing may be cut.";
  const inside = ([low, high]: readonly [number, number]): boolean => value >= low && value < high;
  if (unit === "mm" && inside(CM)) {
    const to = Math.round(value * MM_PER_CM);
    return { level: "wrong", wrong: `${value} is too short for mm, the unit of its column; it is likely in cm.`, touches, repair: { title: `write ${to}`, to } }; // oxfmt-ignore
  }
  if (unit === "mm" && inside(INCHES)) {
    return { level: "wrong", wrong: `${value} is too short for mm, the unit of its column; it may be in inches.`, touches }; // oxfmt-ignore
  }
  if (unit === "mm" || value < MM_FROM) return undefined;
  const repair = unit === "cm" ? { repair: { title: `write ${value / MM_PER_CM}`, to: value / MM_PER_CM } } : {};
  return { level: "wrong", wrong: `${value} is too long for ${unit}, the unit of its column; it is likely in mm.`, touches, ...repair }; // oxfmt-ignore
}
