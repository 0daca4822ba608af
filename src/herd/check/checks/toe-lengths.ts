import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";
import type { Finding, Report } from "../report";

/** A toe of a grown cow before trimming lies well inside these, mm. Common practice, no source. */
const USUAL_MM = [55, 140] as const;

/** Toe lengths that are hardly possible, or that do not say where they were measured from. */
export const toeLengths: Check = {
  id: "toe length",
  about: "toe lengths outside reason or without a landmark",
  run(herd, report) {
    for (const table of herd.named("Findings")) if (table.has("toeMm")) checkToes(table, report);
  },
};

const WITHOUT_LANDMARK: Finding = {
  level: "doubtful",
  wrong: "The toe length does not say where it was measured from: at the hard horn or at the skin.",
  touches: "Toe advice: lengths from the two places differ by more than a cut.",
};

function checkToes(table: CheckedTable, report: Report): void {
  const unplaced: number[] = [];
  let measured = 0;
  const landmark = table.has("measuredFrom") ? "measuredFrom" : "toeMm";
  for (let row = 0; row < table.rowCount; row++) {
    const length = table.number("toeMm", row);
    if (length === null || report.has(table, "toeMm", row)) continue;
    measured++;
    if (length < USUAL_MM[0] || length > USUAL_MM[1]) {
      report.cell(table, "toeMm", row, {
        level: "doubtful",
        wrong: `A toe of ${Math.round(length)} mm is outside ${USUAL_MM[0]} to ${USUAL_MM[1]} mm; it may be mistyped.`,
        touches: "Toe advice: a wrong length may send a knife where nothing may be cut.",
      });
    } else if (table.value("measuredFrom", row) === null && table.cell("measuredFrom", row) === null) {
      unplaced.push(row);
    }
  }
  report.column(table, landmark, unplaced, measured, () => WITHOUT_LANDMARK, {
    ...WITHOUT_LANDMARK,
    wrong:
      "The toe lengths do not say where they were measured from: at the hard horn or at the skin. Say so once under Set up.",
  });
}
