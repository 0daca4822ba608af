import { likelyCode } from "../../codes/likely-code";
import { foldCompact } from "../../fold-words";
import type { Check } from "../checked-herd";
import type { CheckedTable } from "../checked-table";

/** Where a word stands first in a list, and how often. */
interface Place {
  readonly word: string;
  readonly row: number;
  cells: number;
}

/** Words for lesions that stand for no code: one doubt a word, since it is said once what it means. */
export const unknownLesions: Check = {
  id: "unknown lesion",
  about: "words for lesions that stand for no code",
  run({ tables, words }, report) {
    for (const table of tables) {
      if (!table.has("lesion")) continue;
      for (const { word, row, cells } of placesOf(table, (text) => words.codeOf(text) !== undefined)) {
        const finding = { level: "wrong", wrong: about(word), touches: TOUCHES } as const;
        report.cell(table, "lesion", row, finding, cells);
      }
    }
  },
};

const TOUCHES = "The findings are left out of every rate, and have no recheck date.";

function placesOf(table: CheckedTable, isKnown: (text: string) => boolean): Iterable<Place> {
  const places = new Map<string, Place | undefined>();
  const keys = new Map<string, string>();
  for (let row = 0; row < table.rowCount; row++) {
    const cell = table.cell("lesion", row);
    if (cell === null) continue;
    const text = String(cell);
    let key = keys.get(text);
    if (key === undefined) keys.set(text, (key = foldCompact(text)));
    if (!places.has(key)) places.set(key, isKnown(text) ? undefined : { word: text.trim(), row, cells: 0 });
    const place = places.get(key);
    if (place !== undefined) place.cells++;
  }
  return [...places.values()].filter((place) => place !== undefined);
}

function about(word: string): string {
  const likely = likelyCode(word);
  const proposal = likely === undefined ? "no code is near" : `the likeliest is ${likely.code}: ${likely.because}`;
  return `"${word}" stands for no code yet; ${proposal}. Say once under Words what it means.`;
}
