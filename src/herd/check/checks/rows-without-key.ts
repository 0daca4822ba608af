import type { Check } from "../checked-herd";

/** Rows that hold something but not the cow or the day without which they count for nothing. */
export const rowsWithoutKey: Check = {
  id: "row without cow or date",
  about: "rows without cow or date",
  run({ tables }, report) {
    for (const table of tables) {
      const required = table.mapped.definition.columns.filter(({ key, required: is }) => is === true && table.has(key));
      for (const { key, heading } of required) {
        if (key !== "cow" && key !== "date" && key !== "lesion") continue;
        for (const row of table.blanks(key)) {
          if (table.isBlankRow(row)) continue;
          report.cell(table, key, row, {
            level: "wrong",
            wrong: `The row has no ${heading.toLowerCase()}${key === "lesion" ? "; a sound cow is written as none" : ""}.`,
            touches: "The row is left out of the figures.",
          });
        }
      }
    }
  },
};
