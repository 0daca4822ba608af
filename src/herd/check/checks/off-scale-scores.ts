import { isOnScale, type MobilityScale, mobilityScales } from "../../../core/claws/mobility";
import type { Check } from "../checked-herd";

/** Mobility scores that their scale does not have. */
export const offScaleScores: Check = {
  id: "score off the scale",
  about: "mobility scores off the scale",
  run(herd, report) {
    for (const table of herd.named("Scores")) {
      if (!table.has("score")) continue;
      const scale: MobilityScale = table.column("score")?.unit === "1-5" ? "1-5" : "0-3";
      const { lowest, highest } = mobilityScales[scale];
      for (let row = 0; row < table.rowCount; row++) {
        const cell = table.cell("score", row);
        if (typeof cell !== "number" || isOnScale(cell, scale)) continue;
        report.cell(table, "score", row, {
          level: "wrong",
          wrong: `A score of ${cell} is not on the scale ${lowest} to ${highest}${Number.isInteger(cell) ? "" : " in its steps"}.`,
          touches: "The share of lame cows; the two scales cannot be converted into each other.",
        });
      }
    }
  },
};
