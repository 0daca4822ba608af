import { likelyCode } from "../../codes/likely-code";
import { foldCompact } from "../../fold-words";
import type { Check } from "../checked-herd";
import type { Finding } from "../report";

/** Words for lesions that stand for no code. */
export const unknownLesions: Check = {
  id: "unknown lesion",
  about: "words for lesions that stand for no code",
  run({ tables, words }, report) {
    const said = new Map<string, Finding>();
    for (const table of tables) {
      if (!table.has("lesion")) continue;
      for (let row = 0; row < table.rowCount; row++) {
        const cell = table.cell("lesion", row);
        if (cell === null || words.codeOf(String(cell)) !== undefined) continue;
        const key = foldCompact(String(cell));
        let finding = said.get(key);
        if (finding === undefined) said.set(key, (finding = about(String(cell).trim())));
        report.cell(table, "lesion", row, finding);
      }
    }
  },
};

function about(word: string): Finding {
  const likely = likelyCode(word);
  const proposal = likely === undefined ? "no code is near" : `the likeliest is ${likely.code}: ${likely.because}`;
  return {
    level: "wrong",
    wrong: `"${word}" stands for no code yet; ${proposal}. Say once under Words what it means.`,
    touches: "The finding is left out of every rate, and has no recheck date.",
  };
}
