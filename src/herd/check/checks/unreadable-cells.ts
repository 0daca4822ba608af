import type { PlainCell } from "../../../workbook/port";
import type { Check } from "../checked-herd";

/** Columns in which a farm writes its own names. */
const OWN_NAMES = ["group", "severity"];

/** Cells that hold no value of their column's kind and of which no other check has said anything. */
export const unreadableCells: Check = {
  id: "unreadable cell",
  about: "other cells that do not fit their column",
  run({ tables }, report) {
    for (const table of tables) {
      for (const { index, heading, cell, expected } of table.unreadable) {
        const key = table.keyOf(heading);
        if (key === undefined || !table.has(key) || report.hasAny(table, key, index)) continue;
        const isNote = typeof cell === "string" && !/\d/.test(cell);
        const numeric = table.keysHolding("number", "whole number", "day").includes(key);
        if ((isNote && numeric) || (OWN_NAMES.includes(key) && typeof cell === "string")) continue;
        report.cell(table, key, index, {
          level: "wrong",
          wrong: `${shown(table.cell(key, index))} does not fit the column; it takes ${expected}.`,
          touches: "The cell counts as blank.",
        });
      }
    }
  },
};

function shown(cell: PlainCell): string {
  return typeof cell === "string" ? `"${cell}"` : String(cell).toUpperCase();
}
