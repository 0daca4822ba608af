import type { Check } from "../checked-herd";

/** Counts of zero: milk has no such count. */
export const zeroCounts: Check = {
  id: "zero count",
  about: "cell counts of zero or below",
  run(herd, report) {
    for (const table of herd.named("Tests")) {
      if (!table.has("count")) continue;
      for (let row = 0; row < table.rowCount; row++) {
        const cell = table.cell("count", row);
        if (typeof cell !== "number" || cell > 0) continue;
        report.cell(table, "count", row, {
          level: "wrong",
          wrong: `A count of ${cell} stands for no count.`,
          touches: "Formulas refuse the row; averages would be too low.",
          ...(cell === 0 ? { repair: { title: "make the cell blank", to: null } } : {}),
        });
      }
    }
  },
};
