import type { PlainCell } from "../../../workbook/port";
import { isOwnName, isWordAmongFigures } from "../../own-text";
import type { Check } from "../checked-herd";

/** Cells that hold no value of their column's kind and of which no other check has said anything. */
export const unreadableCells: Check = {
  id: "unreadable cell",
  about: "other cells that do not fit their column",
  run({ tables }, report) {
    for (const table of tables) {
      for (const { index, heading, cell, expected } of table.unreadable) {
        const key = table.keyOf(heading);
        if (key === undefined || !table.has(key) || report.hasAny(table, key, index)) continue;
        const { holds } = table.mapped.definition.columns.find((column) => column.key === key)!;
        if (isWordAmongFigures(holds, cell) || isOwnName(key, cell)) continue;
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
