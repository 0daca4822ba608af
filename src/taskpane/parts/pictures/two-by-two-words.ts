import { plainNumber } from "../../format";
import type { TwoByTwoRow } from "./picture-data";

/** What a two-by-two shows: of each group how many have the thing. */
export function twoByTwoSentence(rows: readonly TwoByTwoRow[], having: string): string {
  const told = rows.map((row) => {
    const all = row.having + row.not;
    if (all === 0) return `There are no ${row.name}.`;
    const share = Math.round((100 * row.having) / all);
    return `Of ${plainNumber(all)} ${row.name}, ${plainNumber(row.having)} (${share} %) have a ${having}.`;
  });
  return [...told, "What causes what, the counts cannot tell."].join(" ");
}
