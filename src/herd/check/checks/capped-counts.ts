import { CAP_THOUSAND, isCapped } from "../../../core/cells/herd-doublings";
import type { Check } from "../checked-herd";

/** ">9999" as some laboratories write it. */
const WRITTEN_CAP = /^\s*>\s*\d[\d.,\s]*$/;

/** Counts at the laboratory's cap: the true count is that or more. */
export const cappedCounts: Check = {
  id: "capped count",
  about: "cell counts at the laboratory's cap",
  run(herd, report) {
    for (const table of herd.named("Tests")) {
      if (!table.has("count")) continue;
      for (let row = 0; row < table.rowCount; row++) {
        const cell = table.cell("count", row);
        const written = typeof cell === "string" && WRITTEN_CAP.test(cell);
        const count = table.number("count", row);
        if (!written && (count === null || !isCapped(count))) continue;
        report.cell(table, "count", row, {
          level: written ? "wrong" : "note",
          wrong: written
            ? `"${String(cell)}" is text; the laboratory measured no higher.`
            : `The count stands at the laboratory's cap of ${CAP_THOUSAND} thousand; the true count is that or more.`,
          touches: "Milk lost and averages are at least what is shown.",
        });
      }
    }
  },
};
