import { disorderOf } from "../../../core/claws/disorder-key";
import type { Check, CheckedHerd } from "../checked-herd";
import type { CheckedTable } from "../checked-table";

/** Findings that do not say on which foot, or, of the horn, on which claw. */
export const findingsWithoutPlace: Check = {
  id: "finding without foot or claw",
  about: "findings without foot or claw",
  run(herd, report) {
    for (const table of herd.named("Findings")) {
      for (let row = 0; row < table.rowCount; row++) {
        const disorder = disorderIn(herd, table, row);
        if (disorder === undefined) continue;
        if (table.has("foot") && table.cell("foot", row) === null) {
          report.cell(table, "foot", row, {
            level: "doubtful",
            wrong: `The finding ${disorder.code} has no foot.`,
            touches: "New and repeated cases are told apart by foot.",
          });
        } else if (disorder.group === "horn" && table.has("claw") && table.cell("claw", row) === null) {
          report.cell(table, "claw", row, {
            level: "doubtful",
            wrong: `The finding ${disorder.code} has no claw; it is one of the horn.`,
            touches: "Whether inner or outer claws are the worse, and where a block goes.",
          });
        }
      }
    }
  },
};

function disorderIn({ words }: CheckedHerd, table: CheckedTable, row: number): ReturnType<typeof disorderOf> {
  const text = table.text("lesion", row);
  const code = text === null ? undefined : words.codeOf(text);
  return code === undefined ? undefined : disorderOf(code);
}
